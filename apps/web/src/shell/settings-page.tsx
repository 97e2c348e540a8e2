import { useEffect, useState } from 'react';
import { appearances, languageChoices } from '../desk/settings.ts';
import { useDevice, useSettings } from '../desk/use-device.ts';
import { Choice } from '../parts/choice.tsx';
import { Field } from '../parts/field.tsx';
import { useObservable } from '../parts/observable.ts';
import { versions } from './versions.ts';

/** What this device remembers of its user. */
export function SettingsPage() {
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
      <h1>Settings of this device</h1>
      <div className="fields">
        <Field label="Your name, as it stands on every entry you make">
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
        <Field label="This device's name" hint="stands on every entry made here">
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
        label="Lengths are typed and shown in"
        value={settings.unit}
        onChange={(unit) => device.settings.update({ unit })}
        options={[
          { value: 'mm', words: 'millimetres' },
          { value: 'in', words: 'inches' },
        ]}
      />
      <Choice
        label="Language"
        value={settings.language}
        onChange={(language) => device.settings.update({ language })}
        options={languageChoices.map((value) => ({ value, words: value }))}
      />
      <Choice
        label="Light or dark"
        value={settings.appearance}
        onChange={(appearance) => device.settings.update({ appearance })}
        options={appearances.map((value) => ({ value, words: value }))}
      />
      <h2>What is kept here</h2>
      <dl className="facts">
        <dt>The program</dt>
        <dd>
          {isReadyOffline
            ? 'is kept on this device and starts without a network'
            : 'is not kept on this device yet; load the page once more while the network is there'}
        </dd>
        <dt>The journals</dt>
        <dd>
          {isKept === undefined
            ? 'this browser does not say whether it may remove them'
            : isKept
              ? 'the browser has promised not to remove them by itself'
              : 'the browser may remove them when space runs short: install Becket to the home screen, or save jobs as files'}
        </dd>
        {space?.usage !== undefined && space.quota !== undefined && (
          <>
            <dt>Space</dt>
            <dd>
              {(space.usage / 1e6).toFixed(1)} MB used of {(space.quota / 1e9).toFixed(1)} GB
            </dd>
          </>
        )}
      </dl>
    </main>
  );
}
