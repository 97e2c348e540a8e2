import { setPinLimits } from '@becket/tasks';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { SmallForm } from '../../parts/small-form.tsx';
import type { PinPartProps } from './pin-fields.ts';
import { pinLimitsOf } from './pin-forms.ts';
import { lengthField } from './pins-state.ts';

/** What block and plate allow: the largest pin, and the lengths that fit. */
export function PinLimits({ choice, unit }: PinPartProps) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const { limits, lengths, lengthsNeed } = choice;
  const fields = [
    ['largest', say('Largest pin this block may take'), limits.largestDiameter],
    ['plateHole', say('Smallest hole in plate or bushing'), limits.plateHoleDiameter],
    ['holeDepth', say('Depth of the pin hole in the block'), limits.holeDepth],
    ['plate', say('Thickness of plate and bushing'), limits.plateThickness],
  ] as const;
  return (
    <section aria-labelledby="pin-limits">
      <h3 id="pin-limits">{say('Limits of block and plate')}</h3>
      <SmallForm
        key={limits.entry ?? 'none'}
        label={say('Limits of block and plate')}
        fields={fields.map(([name, label]) => ({
          name,
          label,
          hint: say('empty while not known'),
          keys: 'text' as const,
        }))}
        start={
          Object.fromEntries(
            fields.map(([name, , value]) => [name, lengthField(value, unit, language)]),
          ) as Record<(typeof fields)[number][0], string>
        }
        submit={say('Keep the limits')}
        onKeep={(values) => {
          const typed = pinLimitsOf(values, unit, language);
          const kept = desk.runHere((context, id) => setPinLimits(context, id, typed));
          return { next: values, kept };
        }}
      />
      {lengths === undefined ? (
        <p className="faint">
          {say('Which lengths fit is known once there is: {what}.', { what: lengthsNeed.join(', ') })}
        </p>
      ) : (
        <ul aria-label={say('Pin lengths')}>
          {lengths.map(({ label, fits, sentence }) => (
            <li key={label} className={fits ? undefined : 'faint'}>
              {fits ? '✓' : '▲'} {sentence}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
