import { type Verdict, verdicts } from '@becket/journal';
import { type DecisionAdvice, type DecisionReason, decisionAdvice, recordDecision } from '@becket/tasks';
import { useDeferredValue, useMemo, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { Papers } from '../../piano/papers.tsx';

const marks: Record<Verdict, string> = { go: '✓', 'go with conditions': '▲', stop: '■' };

/** Go, go with conditions, or stop: every reason with its figure, and what is still unknown. */
export function DecisionPlace() {
  const language = useLanguage();
  const { localDay, say, sayNodes } = language;
  const { desk, job } = useDesk();
  const settled = useDeferredValue(job);
  const advice = useMemo(() => decisionAdvice(settled, undefined, language), [settled, language]);
  const made = job.decisions.at(-1);
  return (
    <section aria-labelledby="decision">
      <h2 id="decision">{say('Decision')}</h2>
      <p className="verdict" data-verdict={advice.verdict}>
        {sayNodes('{mark} What is noted speaks for: {verdict}', {
          mark: <span aria-hidden="true">{marks[advice.verdict]}</span>,
          verdict: <strong>{say(advice.verdict)}</strong>,
        })}
      </p>
      <p className="faint">
        {say(
          'Rules: {source}. It advises; you decide. Plate and structure are for specialists, the maker’s data and local rules.',
          { source: advice.source },
        )}
      </p>
      {verdicts
        .toReversed()
        .map((verdict) => [verdict, advice.reasons.filter((one) => one.verdict === verdict)] as const)
        .filter(([, reasons]) => reasons.length > 0)
        .map(([verdict, reasons]) => (
          <section key={verdict} aria-label={say('Reasons for {verdict}', { verdict: say(verdict) })}>
            <h3>
              {marks[verdict]} {say(verdict)}
            </h3>
            <ul className="reasons">
              {reasons.map((reason) => (
                <Reason key={reason.about + reason.sentence} reason={reason} />
              ))}
            </ul>
          </section>
        ))}
      <Unknowns advice={advice} />
      <section aria-labelledby="cautions">
        <h3 id="cautions">{say('Cautions')}</h3>
        <ul>
          {advice.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      {made !== undefined && (
        <section className="estimate-version" aria-label={say('The decision that stands')}>
          <h3>
            {sayNodes('{mark} Decided: {verdict} {when}', {
              mark: marks[made.verdict],
              verdict: say(made.verdict),
              when: (
                <span className="faint">
                  {localDay(made.at)}, {made.by}
                </span>
              ),
            })}
          </h3>
          <p>{made.because}</p>
          {made.conditions.length > 0 && (
            <ul>
              {made.conditions.map((condition) => (
                <li key={condition}>{condition}</li>
              ))}
            </ul>
          )}
          {made.advised !== made.verdict && (
            <p className="faint">
              {say('What was noted then spoke for: {advised}.', { advised: say(made.advised) })}
            </p>
          )}
          {made.advised !== advice.verdict && (
            <p className="question">
              {say('? What is noted now speaks for {verdict}: look at it again.', {
                verdict: say(advice.verdict),
              })}
            </p>
          )}
        </section>
      )}
      <DecisionForm key={`${advice.verdict}${made?.entry}`} advice={advice} />
      <Papers
        level={3}
        offers={[
          { paper: 'appraisal-report', words: say('Appraisal report') },
          { paper: 'appraisal-annex', words: say('Technical annex') },
        ]}
      />
      <p>
        <a href={hashOf({ place: 'job', job: desk.id, task: 'appraise', part: 'estimate' })}>
          {say('Go on to the estimate.')}
        </a>
      </p>
    </section>
  );
}

function Reason({ reason }: { reason: DecisionReason }) {
  const { say } = useLanguage();
  return (
    <li>
      {reason.sentence}
      {reason.figure !== undefined && !reason.sentence.includes(reason.figure) && (
        <>
          {' '}
          <strong className="one-line">{reason.figure}</strong>
        </>
      )}
      {reason.condition !== undefined && <p>→ {reason.condition}</p>}
      <p className="faint">
        {say(
          '{about}; rests on {entries, plural, =0 {nothing noted} one {# entry} other {# entries}}{judge, select, none {} other {; to be judged by {judge}}}',
          {
            about: say(reason.about),
            entries: reason.entries.length,
            judge: reason.deferTo ?? 'none',
          },
        )}
      </p>
    </li>
  );
}

function Unknowns({ advice }: { advice: DecisionAdvice }) {
  const { say } = useLanguage();
  if (advice.unknown.length === 0) return null;
  return (
    <section aria-labelledby="unknown">
      <h3 id="unknown">{say('Still unknown, and what would settle it')}</h3>
      <ul className="reasons">
        {advice.unknown.map(({ what, wouldSettle, isNeededFirst, figure }) => (
          <li key={what}>
            {isNeededFirst && <strong>{say('First:')} </strong>}
            {what}
            {figure !== undefined && !what.includes(figure) && ` (${figure})`} <p>→ {wouldSettle}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function DecisionForm({ advice }: { advice: DecisionAdvice }) {
  const { say } = useLanguage();
  const { desk } = useDesk();
  const [verdict, setVerdict] = useState<Verdict>(advice.verdict);
  const [conditions, setConditions] = useState(advice.conditions.join('\n'));
  const [because, setBecause] = useState('');
  const [problem, setProblem] = useState<string>();

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      await desk.runHere((context, id) =>
        recordDecision(context, id, {
          verdict,
          conditions: verdict === 'go' ? [] : conditions.split('\n'),
          because,
        }),
      );
      setBecause('');
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <form onSubmit={once(keep)} aria-label={say('Decide')} className="decide-form">
      <h3>{say('Decide')}</h3>
      <Choice
        label={say('The job is a')}
        value={verdict}
        onChange={setVerdict}
        options={verdicts.map((value) => ({ value, words: `${marks[value]} ${say(value)}` }))}
      />
      {verdict !== 'go' && (
        <Field
          label={
            verdict === 'stop'
              ? say('What would have to be done first, one a line')
              : say('Conditions, one a line')
          }
        >
          {(ids) => (
            <textarea
              {...ids}
              className="input"
              rows={Math.min(10, Math.max(3, conditions.split('\n').length + 1))}
              value={conditions}
              onChange={(event) => setConditions(event.target.value)}
            />
          )}
        </Field>
      )}
      <TextField
        label={say('Why, in a sentence')}
        rows={2}
        maxLength={2000}
        value={because}
        onChange={setBecause}
      />
      <Problem says={problem} />
      <button type="submit" className="button strong">
        {say('Keep the decision')}
      </button>
    </form>
  );
}
