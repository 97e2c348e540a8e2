import { pinFeels } from '@becket/journal';
import { recordTestPin } from '@becket/tasks';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { SmallForm } from '../../parts/small-form.tsx';
import { TakeBack } from '../../piano/take-back.tsx';
import { type PinPartProps, pinPlaceFields, remarkField } from './pin-fields.ts';
import { testPinOf } from './pin-forms.ts';
import { torqueIn } from './torque-state.ts';

/** Larger pins driven for a trial, and the law that they speak for. */
export function TestPins({ choice, unit }: PinPartProps) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk } = useDesk();
  return (
    <section aria-labelledby="test-pins">
      <h3 id="test-pins">{say('Test pins')}</h3>
      <p className="faint">
        {say(
          'Drive a larger pin in the worst and in the best place, read its torque with no string on it, and do so before the set is bought.',
        )}
      </p>
      <SmallForm
        label={say('A test pin')}
        fields={[
          ...pinPlaceFields(language),
          { name: 'diameter', label: say('Diameter of the test pin ({unit})', { unit }), keys: 'decimal' },
          {
            name: 'length',
            label: say('Its length ({unit})', { unit }),
            hint: say('may stay empty'),
            keys: 'decimal',
          },
          { name: 'torque', label: say('Torque, no string'), keys: 'decimal' },
          {
            name: 'unit',
            label: say('Unit of the wrench'),
            options: [
              { value: 'in·lbf', words: 'in·lbf' },
              { value: 'N·m', words: 'N·m' },
            ],
          },
          {
            name: 'feel',
            label: say('The hand felt'),
            options: [
              { value: '', words: say('nothing to say') },
              ...pinFeels.map((value) => ({ value, words: say(value) })),
            ],
          },
          remarkField(language),
        ]}
        start={{
          note: '',
          string: '1',
          diameter: '',
          length: '',
          torque: '',
          unit: 'in·lbf',
          feel: '',
          remark: '',
        }}
        submit={say('Keep the test pin')}
        onKeep={(values) => {
          const pin = testPinOf(values, unit, language);
          const kept = desk.runHere((context, id) => recordTestPin(context, id, pin));
          return { next: { ...values, note: '', torque: '', feel: '', remark: '' }, kept };
        }}
      />
      <p>{choice.lawSentence}</p>
      {choice.testPins.length > 0 && (
        <ul aria-label={say('Test pins, kept')}>
          {choice.testPins.map(({ entry, name, diameter, torque, gripBefore, feel, leftOutBecause }) => (
            <li key={entry}>
              {sayNodes(
                '{pin}: {diameter} held {torque}{before, select, none {} other {, before {before}}}{feel, select, none {} other {; felt: {feel}}}',
                {
                  pin: <strong>{name}</strong>,
                  diameter: lengthText(diameter, unit, 'diameter', language),
                  torque: torqueIn(torque, unit, language),
                  before: gripBefore === undefined ? 'none' : torqueIn(gripBefore, unit, language),
                  feel: feel === undefined ? 'none' : say(feel),
                },
              )}
              {leftOutBecause !== undefined && <span className="question"> ? {leftOutBecause}</span>}{' '}
              <TakeBack
                entry={entry}
                spoken={say('Take back {words}', { words: say('test pin {name}', { name }) })}
              />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
