import { answerChange, changeOrderByAnswer } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { todayHere } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { TextField } from '../../parts/text-field.tsx';
import { moneyWords } from './estimate-state.ts';

/** The change order, line by line, with what the customer said. */
export function ChangeAnswers() {
  const language = useLanguage();
  const { day, list, plain, say, sayNodes } = language;
  const { desk, job } = useDesk();
  const [name, setName] = useState(job.customer ?? '');
  const [said, setSaid] = useState<readonly string[]>([]);
  if (job.damages.length === 0) return null;
  const totals = changeOrderByAnswer(job);
  const sum = ({ prices, withoutPrice }: (typeof totals)['agreed']) =>
    list([
      ...prices.map(({ currency, minorUnits }) => moneyWords(minorUnits, currency, language)),
      ...(withoutPrice > 0 ? [say('{count} not priced yet', { count: withoutPrice })] : []),
    ]) || say('nothing');

  const answer = (damage: string, is: 'agreed' | 'declined') =>
    desk
      .run((context, id) => {
        if (name.trim() === '')
          throw new RangeError(
            say(
              'Cannot keep this answer: the name of whoever gave it is needed, nothing was found. Type it above.',
            ),
          );
        return answerChange(context, id, { damage, answer: is, name: name.trim(), on: todayHere() });
      })
      .then((done) => done !== undefined && setSaid(done.said));

  return (
    <section aria-labelledby="change-answers">
      <h3 id="change-answers">{say('Change order')}</h3>
      <p>
        {say('Agreed: {agreed}. Declined: {declined}. Waiting: {waiting}.', {
          agreed: sum(totals.agreed),
          declined: sum(totals.declined),
          waiting: sum(totals.waiting),
        })}
      </p>
      <TextField label={say('Answered by')} value={name} onChange={setName} />
      <ul className="plain-list">
        {job.damages.map(({ entry, what, priceMinorUnits, currency, days }) => {
          const given = job.changeAnswers.find(({ damage }) => damage === entry);
          return (
            <li key={entry} className="survey-line">
              <p>
                {sayNodes('{what}, {price}{days, select, none {} other {, {days} working days}}.', {
                  what: <strong>{what}</strong>,
                  price:
                    priceMinorUnits === undefined || currency === undefined
                      ? say('not priced yet')
                      : moneyWords(priceMinorUnits, currency, language),
                  days: days === undefined ? 'none' : plain(days),
                })}{' '}
                {given === undefined
                  ? say('Waits for an answer.')
                  : say('{answer, select, agreed {Agreed} other {Declined}} by {name} on {day}.', {
                      answer: given.answer,
                      name: given.name,
                      day: day(given.on),
                    })}
              </p>
              <div className="button-row">
                <button
                  type="button"
                  className="button"
                  aria-label={say('Agreed: {what}', { what })}
                  onClick={once(() => answer(entry, 'agreed'))}
                >
                  {say('Agreed')}
                </button>
                <button
                  type="button"
                  className="button quiet"
                  aria-label={say('Declined: {what}', { what })}
                  onClick={once(() => answer(entry, 'declined'))}
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
