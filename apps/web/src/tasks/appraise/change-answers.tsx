import { answerChange, changeOrderByAnswer } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { Field } from '../../parts/field.tsx';
import { dayText, moneyWords } from './estimate-state.ts';

/** The change order, line by line, with what the customer said. */
export function ChangeAnswers() {
  const { desk, job } = useDesk();
  const [name, setName] = useState(job.customer ?? '');
  const [said, setSaid] = useState<readonly string[]>([]);
  if (job.damages.length === 0) return null;
  const totals = changeOrderByAnswer(job);
  const sum = ({ prices, withoutPrice }: (typeof totals)['agreed']) =>
    [
      ...prices.map(({ currency, minorUnits }) => moneyWords(minorUnits, currency)),
      ...(withoutPrice > 0 ? [`${withoutPrice} not priced yet`] : []),
    ].join(' and ') || 'nothing';

  const answer = (damage: string, is: 'agreed' | 'declined') =>
    void desk
      .run((context, id) => {
        if (name.trim() === '')
          throw new RangeError(
            'Cannot keep this answer: the name of whoever gave it is needed, nothing was found. Type it above.',
          );
        return answerChange(context, id, { damage, answer: is, name: name.trim(), on: dayText(new Date()) });
      })
      .then((done) => done !== undefined && setSaid(done.said));

  return (
    <section aria-labelledby="change-answers">
      <h3 id="change-answers">Change order</h3>
      <p>
        Agreed: {sum(totals.agreed)}. Declined: {sum(totals.declined)}. Waiting: {sum(totals.waiting)}.
      </p>
      <Field label="Answered by">
        {(ids) => (
          <input {...ids} className="input" value={name} onChange={(event) => setName(event.target.value)} />
        )}
      </Field>
      <ul className="plain-list">
        {job.damages.map(({ entry, what, priceMinorUnits, currency, days }) => {
          const given = job.changeAnswers.find(({ damage }) => damage === entry);
          return (
            <li key={entry} className="survey-line">
              <p>
                <strong>{what}</strong>,{' '}
                {priceMinorUnits === undefined || currency === undefined
                  ? 'not priced yet'
                  : moneyWords(priceMinorUnits, currency)}
                {days !== undefined && `, ${days} working days`}.{' '}
                {given === undefined
                  ? 'Waits for an answer.'
                  : `${given.answer === 'agreed' ? 'Agreed' : 'Declined'} by ${given.name} on ${given.on}.`}
              </p>
              <div className="button-row">
                <button
                  type="button"
                  className="button"
                  aria-label={`Agreed: ${what}`}
                  onClick={() => answer(entry, 'agreed')}
                >
                  Agreed
                </button>
                <button
                  type="button"
                  className="button quiet"
                  aria-label={`Declined: ${what}`}
                  onClick={() => answer(entry, 'declined')}
                >
                  Declined
                </button>
              </div>
            </li>
          );
        })}
      </ul>
      {said.map((sentence) => (
        <p key={sentence} role="status">
          {sentence}
        </p>
      ))}
      <a href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'after-strip' })}>
        Note damage found after the strip
      </a>
    </section>
  );
}
