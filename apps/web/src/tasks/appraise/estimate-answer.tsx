import type { Job } from '@becket/journal';
import { answerEstimate } from '@becket/tasks';
import { type FormEvent, useState } from 'react';
import { runHere } from '../../desk/run-here.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { dayText } from './estimate-state.ts';

/** What the customer said to one version, and the way to keep it. */
export function EstimateAnswer({
  estimate,
  isLast,
}: {
  estimate: Job['estimates'][number];
  isLast: boolean;
}) {
  const { desk, job } = useDesk();
  const given = job.estimateAnswers.findLast((one) => one.estimate === estimate.entry);
  const conditional = estimate.lines.filter(({ ifFound }) => ifFound !== undefined);
  const [isOpen, setOpen] = useState(false);
  const [answer, setAnswer] = useState<'accepted' | 'declined'>('accepted');
  const [name, setName] = useState(job.customer ?? '');
  const [on, setOn] = useState(() => dayText(new Date()));
  const [agreed, setAgreed] = useState<readonly string[]>([]);
  const [note, setNote] = useState('');
  const [problem, setProblem] = useState<string>();
  const [said, setSaid] = useState<readonly string[]>([]);

  async function keep(event: FormEvent): Promise<void> {
    event.preventDefault();
    setProblem(undefined);
    try {
      const done = await runHere(desk, (context, id) => {
        if (name.trim() === '')
          throw new RangeError(
            'Cannot keep this answer: the name of whoever gave it is needed, nothing was found. Type it.',
          );
        return answerEstimate(context, id, {
          estimate: estimate.entry,
          answer,
          name: name.trim(),
          on,
          conditionalLines: answer === 'accepted' ? [...agreed] : [],
          ...(note.trim() === '' ? {} : { note: note.trim() }),
          isOlderVersionMeant: !isLast,
        });
      });
      setSaid(done.said);
      setOpen(false);
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <>
      {given === undefined ? (
        <p className="faint">No answer yet: silence is not agreement.</p>
      ) : (
        <p data-answer={given.answer}>
          <strong>{given.answer === 'accepted' ? 'Accepted' : 'Declined'}</strong> by {given.name} on{' '}
          {given.on}
          {given.conditionalLines.length > 0 &&
            `, with ${given.conditionalLines.length} conditional ${given.conditionalLines.length === 1 ? 'line' : 'lines'} agreed beforehand`}
          .{given.note !== undefined && ` ${given.note}`}
        </p>
      )}
      {said.map((sentence) => (
        <p key={sentence} role="status">
          {sentence}
        </p>
      ))}
      {!isOpen ? (
        <button
          type="button"
          className="button"
          aria-label={`Keep the answer to version ${estimate.version}`}
          onClick={() => setOpen(true)}
        >
          {given === undefined ? 'Keep the customer’s answer' : 'Keep another answer'}
        </button>
      ) : (
        <form onSubmit={keep} aria-label={`Answer to version ${estimate.version}`} className="answer-form">
          {!isLast && <p className="question">? A later version was made; this answers the older one.</p>}
          <Choice
            label="The customer"
            value={answer}
            onChange={setAnswer}
            options={[
              { value: 'accepted', words: 'accepts it' },
              { value: 'declined', words: 'declines it' },
            ]}
          />
          <div className="fields">
            <Field label="Name">
              {(ids) => (
                <input
                  {...ids}
                  className="input"
                  value={name}
                  onChange={(event) => setName(event.target.value)}
                />
              )}
            </Field>
            <Field label="On">
              {(ids) => (
                <input
                  {...ids}
                  type="date"
                  className="input"
                  value={on}
                  onChange={(event) => setOn(event.target.value)}
                />
              )}
            </Field>
            <Field label="In their words" hint="may stay empty">
              {(ids) => (
                <input
                  {...ids}
                  className="input"
                  value={note}
                  onChange={(event) => setNote(event.target.value)}
                />
              )}
            </Field>
          </div>
          {answer === 'accepted' && conditional.length > 0 && (
            <fieldset className="bare-set">
              <legend>May be done without asking again, if found</legend>
              {conditional.map(({ id, what, ifFound }) => (
                <label key={id} className="tick">
                  <input
                    type="checkbox"
                    checked={agreed.includes(id)}
                    onChange={(event) =>
                      setAgreed(event.target.checked ? [...agreed, id] : agreed.filter((one) => one !== id))
                    }
                  />
                  {ifFound}: {what}
                </label>
              ))}
            </fieldset>
          )}
          {problem !== undefined && (
            <p role="alert" className="notice bad">
              ▲ {problem}
            </p>
          )}
          <div className="button-row">
            <button type="submit" className="button strong">
              Keep the answer
            </button>
            <button type="button" className="button quiet" onClick={() => setOpen(false)}>
              Leave it
            </button>
          </div>
        </form>
      )}
    </>
  );
}
