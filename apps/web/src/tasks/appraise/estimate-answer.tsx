import type { Job } from '@becket/journal';
import { answerEstimate } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { DayField, todayHere } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';

/** What the customer said to one version, and the way to keep it. */
export function EstimateAnswer({
  estimate,
  isLast,
}: {
  estimate: Job['estimates'][number];
  isLast: boolean;
}) {
  const { day, say, sayNodes } = useLanguage();
  const { desk, job } = useDesk();
  const given = job.estimateAnswers.findLast((one) => one.estimate === estimate.entry);
  const conditional = estimate.lines.filter(({ ifFound }) => ifFound !== undefined);
  const [isOpen, setOpen] = useState(false);
  const [answer, setAnswer] = useState<'accepted' | 'declined'>('accepted');
  const [name, setName] = useState(job.customer ?? '');
  const [on, setOn] = useState(() => todayHere());
  const [agreed, setAgreed] = useState<readonly string[]>([]);
  const [note, setNote] = useState('');
  const [problem, setProblem] = useState<string>();
  const [said, setSaid] = useState<readonly string[]>([]);

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const done = await desk.runHere((context, id) => {
        if (name.trim() === '')
          throw new RangeError(
            say(
              'Cannot keep this answer: the name of whoever gave it is needed, nothing was found. Type it.',
            ),
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
        <p className="faint">{say('No answer yet: silence is not agreement.')}</p>
      ) : (
        <p data-answer={given.answer}>
          {sayNodes(
            '{answer} by {name} on {day}{lines, plural, =0 {} one {, with # conditional line agreed beforehand} other {, with # conditional lines agreed beforehand}}.',
            {
              answer: <strong>{given.answer === 'accepted' ? say('Accepted') : say('Declined')}</strong>,
              name: given.name,
              day: day(given.on),
              lines: given.conditionalLines.length,
            },
          )}
          {given.note !== undefined && ` ${given.note}`}
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
          aria-label={say('Keep the answer to version {version}', { version: estimate.version })}
          onClick={() => setOpen(true)}
        >
          {given === undefined ? say('Keep the customer’s answer') : say('Keep another answer')}
        </button>
      ) : (
        <form
          onSubmit={once(keep)}
          aria-label={say('Answer to version {version}', { version: estimate.version })}
          className="answer-form"
        >
          {!isLast && (
            <p className="question">{say('? A later version was made; this answers the older one.')}</p>
          )}
          <Choice
            label={say('The customer')}
            value={answer}
            onChange={setAnswer}
            options={[
              { value: 'accepted', words: say('accepts it') },
              { value: 'declined', words: say('declines it') },
            ]}
          />
          <div className="fields">
            <TextField label={say('Name')} value={name} onChange={setName} />
            <DayField label={say('On')} value={on} onChange={setOn} />
            <TextField
              label={say('In their words')}
              hint={say('may stay empty')}
              maxLength={2000}
              value={note}
              onChange={setNote}
            />
          </div>
          {answer === 'accepted' && conditional.length > 0 && (
            <fieldset className="bare-set">
              <legend>{say('May be done without asking again, if found')}</legend>
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
          <Problem says={problem} />
          <div className="button-row">
            <button type="submit" className="button strong">
              {say('Keep the answer')}
            </button>
            <button type="button" className="button quiet" onClick={() => setOpen(false)}>
              {say('Leave it')}
            </button>
          </div>
        </form>
      )}
    </>
  );
}
