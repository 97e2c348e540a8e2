import { noteName } from '@becket/core';
import { recordReadings } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { SmallForm } from '../../parts/small-form.tsx';
import { type PinPartProps, pinPlaceFields } from './pin-fields.ts';
import { pinDiameterOf } from './pin-forms.ts';
import { PinGroup } from './pin-group.tsx';
import { notesOn } from './pins-state.ts';
import { ReasonHere } from './reason-here.tsx';

/** The pins as the micrometer reads them, and what the rule makes of every size among them. */
export function PinsAsFound({ choice, unit }: PinPartProps) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [reason, setReason] = useState('');
  const { scatter, groups, isMixed } = choice;
  const text = (length: number) => lengthText(length, unit, 'diameter', language);
  return (
    <section aria-labelledby="pins-found">
      <h3 id="pins-found">{say('As found, by micrometer')}</h3>
      <ReasonHere reason={reason} onChange={setReason} />
      <SmallForm
        label={say('Diameter of a pin')}
        fields={[
          ...pinPlaceFields(language),
          { name: 'value', label: say('Diameter ({unit})', { unit }), keys: 'decimal' },
        ]}
        start={{ note: noteName(job.piano?.firstKey ?? 1), string: '1', value: '' }}
        first="value"
        submit={say('Keep and go on')}
        isStrong
        onKeep={(values) => {
          const reading = pinDiameterOf(values, unit, reason, language);
          const kept = desk.runHere((context, id) => recordReadings(context, id, [reading]));
          return { next: { ...values, value: '', note: notesOn(job, values.note, 8, language) }, kept };
        }}
      />
      {scatter === undefined ? (
        <p className="faint">
          {say('No pin was measured yet. A few in every section show whether sizes are mixed.')}
        </p>
      ) : (
        <p>
          {say(
            '{count, plural, one {# pin} other {# pins}} measured: {smallest} to {largest}, middle {median}.',
            {
              count: scatter.count,
              smallest: text(scatter.smallest),
              largest: text(scatter.largest),
              median: text(scatter.median),
            },
          )}{' '}
          {isMixed && <strong>{say('Sizes are mixed: each keeps its own step.')}</strong>}
        </p>
      )}
      {groups.map((group) => (
        <PinGroup key={group.asFound} group={group} unit={unit} />
      ))}
    </section>
  );
}
