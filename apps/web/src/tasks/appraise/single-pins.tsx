import { noteName } from '@becket/core';
import { pinRemedies } from '@becket/journal';
import { choosePinRemedy } from '@becket/tasks';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { once } from '../../parts/once.ts';
import { SmallForm } from '../../parts/small-form.tsx';
import { TakeBack } from '../../piano/take-back.tsx';
import { type PinPartProps, pinPlaceFields, remarkField } from './pin-fields.ts';
import { openSuggestions, pinRemedyOf } from './pin-forms.ts';

/** Pins that need something of their own: what is suggested, what was chosen, and one more. */
export function SinglePins({ choice, unit }: PinPartProps) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const open = openSuggestions(choice);
  return (
    <section aria-labelledby="single-pins">
      <h3 id="single-pins">{say('Single pins that need something of their own')}</h3>
      {open.length > 0 && (
        <ul className="plain-list" aria-label={say('Suggested')}>
          {open.map(({ key, string, name, remedy, diameter, because }) => (
            <li key={name} className="survey-line" data-gravity="clear">
              <p>
                {sayNodes('{pin}: {remedy}{diameter, select, none {} other { of {diameter}}}', {
                  pin: <strong>{name}</strong>,
                  remedy: say(remedy),
                  diameter:
                    diameter === undefined ? 'none' : lengthText(diameter, unit, 'diameter', language),
                })}
                . {because}
              </p>
              <button
                type="button"
                className="button"
                aria-label={say('Choose {remedy} for {name}', { remedy: say(remedy), name })}
                onClick={once(() =>
                  desk.run((context, id) =>
                    choosePinRemedy(context, id, {
                      key,
                      string: string ?? 1,
                      remedy,
                      ...(diameter === undefined ? {} : { pinDiameter_m: diameter }),
                    }),
                  ),
                )}
              >
                {say('Choose it')}
              </button>
            </li>
          ))}
        </ul>
      )}
      {choice.remedies.length > 0 && (
        <ul aria-label={say('Chosen')}>
          {choice.remedies.map(({ entry, key, string, remedy, pinDiameter_m, note }) => (
            <li key={entry}>
              {sayNodes('{pin}: {remedy}{diameter, select, none {} other { of {diameter}}}', {
                pin: <strong>{say('{note} string {string}', { note: noteName(key), string })}</strong>,
                remedy: say(remedy),
                diameter:
                  pinDiameter_m === undefined
                    ? 'none'
                    : lengthText(pinDiameter_m, unit, 'diameter', language),
              })}
              {note !== undefined && `; ${note}`}{' '}
              <TakeBack
                entry={entry}
                spoken={say('Take back {words}', {
                  words: say('{remedy} of {note} string {string}', {
                    remedy: say(remedy),
                    note: noteName(key),
                    string,
                  }),
                })}
              />
            </li>
          ))}
        </ul>
      )}
      <SmallForm
        label={say('A pin of its own')}
        fields={[
          ...pinPlaceFields(language),
          {
            name: 'remedy',
            label: say('It gets'),
            options: pinRemedies.map((value) => ({ value, words: say(value) })),
          },
          {
            name: 'diameter',
            label: say('Pin diameter ({unit})', { unit }),
            hint: say('may stay empty'),
            keys: 'decimal',
          },
          remarkField(language),
        ]}
        start={{ note: '', string: '1', remedy: 'larger pin', diameter: '', remark: '' }}
        submit={say('Choose it')}
        onKeep={(values) => {
          const remedy = pinRemedyOf(values, unit, language);
          const kept = desk.runHere((context, id) => choosePinRemedy(context, id, remedy));
          return { next: { ...values, note: '', remark: '' }, kept };
        }}
      />
      {job.unisons.size === 0 && (
        <p className="faint">{say('Describe the stringing first: it says which pins there are.')}</p>
      )}
    </section>
  );
}
