import { inches, noteName } from '@becket/core';
import { logPinsDriven } from '@becket/tasks';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { SmallForm } from '../../parts/small-form.tsx';
import { TakeBack } from '../../piano/take-back.tsx';
import { type PinPartProps, remarkField } from './pin-fields.ts';
import { pinsDrivenOf } from './pin-forms.ts';
import { lengthField } from './pins-state.ts';

/** The log of driven pins: which are in, and which are left. */
export function PinsDriven({ choice, unit }: PinPartProps) {
  const language = useLanguage();
  const { localMoment, say, sayNodes } = language;
  const { desk } = useDesk();
  const { driving } = choice;
  const start =
    choice.counts.bySize.find(({ diameter }) => diameter !== undefined)?.diameter ?? inches(0.286);
  return (
    <section aria-labelledby="driving">
      <h3 id="driving">{say('Driven, in order')}</h3>
      <p className="faint">
        {say('{driven} of {pins} pins are driven.', { driven: driving.pinsDriven, pins: driving.pins })}
        {driving.left.length > 0 && driving.pinsDriven > 0 && (
          <>
            {' '}
            {say('Left: {notes}.', {
              notes: driving.left
                .map(({ firstKey, lastKey }) =>
                  firstKey === lastKey
                    ? noteName(firstKey)
                    : say('{first} to {last}', { first: noteName(firstKey), last: noteName(lastKey) }),
                )
                .join(', '),
            })}
          </>
        )}
      </p>
      <SmallForm
        label={say('Pins driven')}
        fields={[
          { name: 'from', label: say('From note') },
          { name: 'to', label: say('to note') },
          { name: 'diameter', label: say('Pin diameter ({unit})', { unit }), keys: 'decimal' },
          {
            name: 'length',
            label: say('Pin length ({unit})', { unit }),
            hint: say('may stay empty'),
            keys: 'decimal',
          },
          remarkField(language),
        ]}
        start={{ from: '', to: '', diameter: lengthField(start, unit, language), length: '', remark: '' }}
        submit={say('Log them')}
        onKeep={(values) => {
          const pins = pinsDrivenOf(values, unit, language);
          const kept = desk.runHere((context, id) => logPinsDriven(context, id, pins));
          return { next: { ...values, from: '', to: '', remark: '' }, kept };
        }}
      />
      {driving.lines.length > 0 && (
        <ol aria-label={say('Driving log')}>
          {driving.lines.map(({ entry, notes, pins, diameter, at, by, note }) => (
            <li key={entry}>
              {sayNodes('{notes}, {pins} pins, {diameter} {when}', {
                notes,
                pins,
                diameter: `${lengthText(diameter, unit, 'diameter', language)}${note === undefined ? '' : `; ${note}`}`,
                when: (
                  <span className="faint">
                    {localMoment(at)}, {by}
                  </span>
                ),
              })}{' '}
              <TakeBack
                entry={entry}
                spoken={say('Take back {words}', { words: say('pins {notes}', { notes }) })}
              />
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
