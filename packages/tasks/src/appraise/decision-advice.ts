import { english, type Language } from '@becket/core';
import { type FactOf, type Job, type Ulid, type Verdict, verdicts } from '@becket/journal';
import { addFacts, readJob, type TaskContext } from '../context.ts';
import { compareSurveys } from './compare-surveys.ts';
import { boardReasons } from './decision-board.ts';
import { findingReasons } from './decision-findings.ts';
import { pinReasons } from './decision-pins.ts';
import type { DecisionReason } from './decision-reason.ts';
import { DECISION_CAUTIONS, DECISION_SOURCE } from './decision-rules.ts';
import { type StillUnknown, stillUnknown } from './decision-unknowns.ts';
import { type PinChoice, pinChoice } from './pin-choice.ts';

export interface DecisionAdvice {
  readonly verdict: Verdict;
  /** The gravest first. */
  readonly reasons: readonly DecisionReason[];
  /** Each once, in the order of the reasons; what a plain go would leave open. */
  readonly conditions: readonly string[];
  readonly unknown: readonly StillUnknown[];
  readonly cautions: readonly string[];
  readonly source: string;
}

/**
 * Whether to go on with the job, by what is noted: the gravest reason decides. What should have been looked at first and was
 * not makes a plain go a go with conditions. It advises; a person decides (`recordDecision`).
 *
 * The rules are plain data in `decision-rules`: common practice, no source. Plate and structure are left to specialists.
 */
export function decisionAdvice(
  job: Job,
  given: PinChoice | undefined = undefined,
  language: Language = english,
): DecisionAdvice {
  const { say } = language;
  const choice = given ?? pinChoice(job, { language });
  const survey = compareSurveys(job, { language });
  const unknown = stillUnknown(job, { choice, survey }, language);
  const source = say(DECISION_SOURCE);
  const reasons = [
    ...findingReasons(survey, language),
    ...pinReasons(choice, language),
    ...boardReasons(job, language),
    ...unknown.filter(({ isNeededFirst }) => isNeededFirst).map((one) => reasonOfUnknown(one, source)),
  ].sort((a, b) => verdicts.indexOf(b.verdict) - verdicts.indexOf(a.verdict));
  return {
    verdict: reasons[0]?.verdict ?? 'go',
    reasons,
    conditions: [...new Set(reasons.flatMap(({ condition }) => condition ?? []))],
    unknown,
    cautions: [...DECISION_CAUTIONS.map((caution) => say(caution)), ...choice.map.season.cautions],
    source,
  };
}

function reasonOfUnknown(
  { what, wouldSettle, figure, entries }: StillUnknown,
  source: string,
): DecisionReason {
  return {
    about: 'what is unknown',
    verdict: 'go with conditions',
    sentence: what,
    figure,
    entries,
    condition: wouldSettle,
    deferTo: undefined,
    source,
  };
}

/** A decision as a person gives it; what the program advised is added. */
export type DecisionToRecord = Pick<FactOf<'decision-made'>, 'verdict' | 'conditions' | 'because'>;

/**
 * Keeps what was decided, with what the program's reasons came to at that moment. The latest stands.
 *
 * Throws: RangeError when a go with conditions names none, a plain go names some, or nothing says why. Nothing is stored then.
 */
export async function recordDecision(
  context: TaskContext,
  job: Ulid,
  { verdict, conditions, because }: DecisionToRecord,
): Promise<Job> {
  const { say } = context.language ?? english;
  const state = await readJob(context, job);
  const named = conditions.map((one) => one.trim()).filter((one) => one !== '');
  if (because.trim() === '')
    throw new RangeError(
      say('Cannot keep this decision: why it was made is needed, nothing was found. Say why in a sentence.'),
    );
  if (verdict === 'go with conditions' && named.length === 0)
    throw new RangeError(
      say(
        'Cannot keep a go with conditions: at least one condition is needed, none was found. Name it, or choose go.',
      ),
    );
  if (verdict === 'go' && named.length > 0)
    throw new RangeError(
      say(
        'Cannot keep a plain go: no condition is needed, {count, plural, one {# was} other {# were}} found. Choose go with conditions, or take them out.',
        { count: named.length },
      ),
    );
  const { verdict: advised } = decisionAdvice(state);
  return (
    await addFacts(context, job, [
      { kind: 'decision-made', v: 1, verdict, conditions: named, because: because.trim(), advised },
    ])
  ).job;
}
