import { useEffect, useState } from 'react';
import { appearances, languageChoices } from '../desk/settings.ts';
import { useDevice, useSettings } from '../desk/use-device.ts';
import { Choice } from '../parts/choice.tsx';
import { Field } from '../parts/field.tsx';
import { useLanguage } from '../parts/language.tsx';
import { LaterFilesSign } from '../parts/later-files-sign.tsx';
import { useObservable } from '../parts/observable.ts';
import { versions } from './versions.ts';

/** What this device remembers of its user. */
export function SettingsPage() {
  const { fixed, say } = useLanguage();
  const device = useDevice();
  const settings = useSettings();
  const { isReadyOffline } = useObservable(versions);
  const [isKept, setKept] = useState<boolean>();
  const [space, setSpace] = useState<StorageEstimate>();
  useEffect(() => {
    void navigator.storage?.persisted?.().then(setKept);
    void navigator.storage?.estimate?.().then(setSpace);
  }, []);
  return (
    <main className="page" id="place" tabIndex={-1}>
      <h1>{say('Settings of this device')}</h1>
      <div className="fields">
        <Field label={say('Your name, as it stands on every entry you make')}>
          {(ids) => (
            <input
              {...ids}
              className="input"
              value={settings.name}
              maxLength={120}
              autoComplete="name"
              onChange={(event) => device.settings.update({ name: event.target.value })}
            />
          )}
        </Field>
        <Field label={say("This device's name")} hint={say('stands on every entry made here')}>
          {(ids) => (
            <input
              {...ids}
              className="input"
              defaultValue={settings.device}
              maxLength={120}
              autoComplete="off"
              onBlur={(event) => {
                const name = event.target.value.trim();
                if (name === '') event.target.value = settings.device;
                else device.settings.update({ device: name });
              }}
            />
          )}
        </Field>
      </div>
      <Choice
        label={say('Lengths are typed and shown in')}
        value={settings.unit}
        onChange={(unit) => device.settings.update({ unit })}
        options={[
          { value: 'mm', words: say('millimetres') },
          { value: 'in', words: say('inches') },
        ]}
      />
      <Choice
        label={say('Language')}
        value={settings.language}
        onChange={(language) => device.settings.update({ language })}
        options={languageChoices.map((value) => ({
          value,
          words: value === 'as the device' ? say(value) : value,
        }))}
      />
      <Choice
        label={say('Light or dark')}
        value={settings.appearance}
        onChange={(appearance) => device.settings.update({ appearance })}
        options={appearances.map((value) => ({ value, words: say(value) }))}
      />
      <h2>{say('What is kept here')}</h2>
      <dl className="facts">
        <dt>{say('The program')}</dt>
        <dd>
          {isReadyOffline
            ? say('is kept on this device and starts without a network')
            : say('is not kept on this device yet; load the page once more while the network is there')}
        </dd>
        <dt>{say('Papers')}</dt>
        <dd>
          <LaterFilesSign />
        </dd>
        <dt>{say('The journals')}</dt>
        <dd>
          {isKept === undefined
            ? say('this browser does not say whether it may remove them')
            : isKept
              ? say('the browser has promised not to remove them by itself')
              : say(
                  'the browser may remove them when space runs short: install Becket to the home screen, or save jobs as files',
                )}
        </dd>
        {space?.usage !== undefined && space.quota !== undefined && (
          <>
            <dt>{say('Space')}</dt>
            <dd>
              {say('{used} MB used of {quota} GB', {
                used: fixed(space.usage / 1e6, 1),
                quota: fixed(space.quota / 1e9, 1),
              })}
            </dd>
          </>
        )}
      </dl>
    </main>
  );
}
