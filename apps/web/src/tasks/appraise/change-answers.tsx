import { answerChange, changeOrderByAnswer } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { dayText, moneyWords } from './estimate-state.ts';

/** The change order, line by line, with what the customer said. */
export function ChangeAnswers() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [name, setName] = useState(job.customer ?? '');
  const [said, setSaid] = useState<readonly string[]>([]);
  if (job.damages.length === 0) return null;
  const totals = changeOrderByAnswer(job);
  const sum = ({ prices, withoutPrice }: (typeof totals)['agreed']) =>
    [
      ...prices.map(({ currency, minorUnits }) => moneyWords(minorUnits, currency, language)),
      ...(withoutPrice > 0 ? [`${withoutPrice} not priced yet`] : []),
    ].join(' and ') || 'nothing';

  const answer = (damage: string, is: 'agreed' | 'declined') =>
    void desk
      .run((context, id) => {
        if (name.trim() === '')
          throw new RangeError(
            say(
              'Cannot keep this answer: the name of whoever gave it is needed, nothing was found. Type it above.',
            ),
          );
        return answerChange(context, id, { damage, answer: is, name: name.trim(), on: dayText(new Date()) });
      })
      .then((done) => done !== undefined && setSaid(done.said));

  return (
    <section aria-labelledby="change-answers">
      <h3 id="change-answers">{say('Change order')}</h3>
      <p>
        {say('Agreed: {sum}. Declined: {sum2}. Waiting: {sum3}.', {
          sum: sum(totals.agreed),
          sum2: sum(totals.declined),
          sum3: sum(totals.waiting),
        })}
      </p>
      <Field label={say('Answered by')}>
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
                  ? say('not priced yet')
                  : moneyWords(priceMinorUnits, currency, language)}
                {days !== undefined && say(', {days} working days', { days })}.{' '}
                {given === undefined
                  ? say('Waits for an answer.')
                  : say('{value} by {name} on {on}.', {
                      value: given.answer === 'agreed' ? say('Agreed') : say('Declined'),
                      name: given.name,
                      on: given.on,
                    })}
              </p>
              <div className="button-row">
                <button
                  type="button"
                  className="button"
                  aria-label={say('Agreed: {what}', { what })}
                  onClick={() => answer(entry, 'agreed')}
                >
                  {say('Agreed')}
                </button>
                <button
                  type="button"
                  className="button quiet"
                  aria-label={say('Declined: {what}', { what })}
                  onClick={() => answer(entry, 'declined')}
                >
                  {say('Declined')}
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
        {say('Note damage found after the strip')}
      </a>
    </section>
  );
}
