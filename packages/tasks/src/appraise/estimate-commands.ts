import { currencyDigits, type EstimateTotals, english, estimateTotals, type Language } from '@becket/core';
import {
  estimateStanding,
  type Fact,
  type FactOf,
  type Job,
  type MadeEstimate,
  type Ulid,
} from '@becket/journal';
import { addFacts, readJob, type TaskContext } from '../context.ts';
import { STARTING_LABOUR_STEPS } from './labour-steps.ts';

/** A version of the estimate as a person gives it; its number follows from the versions before it. */
export type EstimateToMake = Omit<FactOf<'estimate-made'>, 'kind' | 'v' | 'version'>;

/** What came of a command about the estimate. */
export interface EstimateOutcome {
  readonly job: Job;
  readonly entry: Ulid;
  /** What the person should know, although it was done; each a sentence. */
  readonly said: readonly string[];
}

/**
 * Makes a further version of the estimate. Nothing of an earlier one is changed, and no answer carries over.
 *
 * Throws: RangeError when the currency is not one, two lines have one id, an amount is too large to add up exactly, or it
 * would be valid until before today. Nothing is stored then.
 */
export async function makeEstimate(
  context: TaskContext,
  job: Ulid,
  estimate: EstimateToMake,
): Promise<EstimateOutcome & { readonly version: number; readonly totals: EstimateTotals }> {
  const { say, day } = context.language ?? english;
  const state = await readJob(context, job);
  currencyDigits(estimate.currency, context.language);
  const totals = estimateTotals(estimate);
  const today = context.now().toISOString().slice(0, 10);
  if (estimate.validUntil !== undefined && estimate.validUntil < today)
    throw new RangeError(
      say(
        'Cannot make this estimate: a last day of validity from {today} on is needed, {found} was found. Choose a later day, or leave it out.',
        { today: day(today), found: day(estimate.validUntil) },
      ),
    );
  const { latest, accepted } = estimateStanding(state);
  const version = (latest?.version ?? 0) + 1;
  const said = [
    ...(latest !== undefined && latest.currency !== estimate.currency
      ? [
          say('This version is in {currency}; version {earlier} was in {before}.', {
            currency: estimate.currency,
            earlier: latest.version,
            before: latest.currency,
          }),
        ]
      : []),
    ...(accepted === undefined
      ? []
      : [
          say(
            'Version {version} was accepted by {name} on {day}; that holds for it alone, and this version needs an answer of its own.',
            {
              version: accepted.estimate.version,
              name: accepted.answer.name,
              day: day(accepted.answer.on),
            },
          ),
        ]),
  ];
  return {
    ...(await addOne(context, job, { kind: 'estimate-made', v: 1, version, ...estimate }, said)),
    version,
    totals,
  };
}

/** What the customer said, as a person gives it. */
export type AnswerToEstimate = Omit<FactOf<'estimate-answered'>, 'kind' | 'v'> & {
  /** Set to say that an older version than the last is meant. */
  readonly isOlderVersionMeant?: boolean | undefined;
};

/**
 * Keeps what the customer said to a version of the estimate. A later answer to the same version stands in place of an
 * earlier one.
 *
 * Throws: RangeError when there is no such version, when it is not the last one and nobody said that it is meant, when a
 * conditional line is not one of that version, or when lines are agreed with an estimate that is declined. Nothing is
 * stored then.
 */
export async function answerEstimate(
  context: TaskContext,
  job: Ulid,
  { isOlderVersionMeant = false, ...answer }: AnswerToEstimate,
): Promise<EstimateOutcome> {
  const language = context.language ?? english;
  const { say, day } = language;
  const state = await readJob(context, job);
  const estimate = state.estimates.find(({ entry }) => entry === answer.estimate);
  if (estimate === undefined)
    throw new RangeError(
      state.estimates.length === 0
        ? say(
            "Cannot keep this answer: a version of this job's estimate is needed, and none was made yet, none of that id was found. Choose a version.",
          )
        : say(
            "Cannot keep this answer: a version of this job's estimate is needed ({versions}), none of that id was found. Choose a version.",
            { versions: state.estimates.map(({ version }) => version).join(', ') },
          ),
    );
  const latest = state.estimates.at(-1)!;
  if (estimate !== latest && !isOlderVersionMeant)
    throw new RangeError(
      say(
        'Cannot keep this answer: version {latest} is the last, and an answer to version {found} was found. Answer version {latest}, or say that the older one is meant.',
        { latest: latest.version, found: estimate.version },
      ),
    );
  requireConditionalLines(estimate, answer.conditionalLines, language);
  if (answer.answer === 'declined' && answer.conditionalLines.length > 0)
    throw new RangeError(
      say(
        'Cannot keep this answer: conditional lines can only be agreed with an estimate that is accepted, {count} were found with one that is declined. Leave them out.',
        { count: answer.conditionalLines.length },
      ),
    );
  const before = state.estimateAnswers.findLast(({ estimate: id }) => id === estimate.entry);
  const said = [
    ...(answer.answer === 'accepted' && estimate.validUntil !== undefined && answer.on > estimate.validUntil
      ? [
          say('The estimate was valid until {until}; it was accepted on {day}.', {
            until: day(estimate.validUntil),
            day: day(answer.on),
          }),
        ]
      : []),
    ...(before === undefined ? [] : [replacesSentence(before, language)]),
    ...(estimate === latest
      ? []
      : [
          say('This answers version {version}; version {latest} was made after it.', {
            version: estimate.version,
            latest: latest.version,
          }),
        ]),
  ];
  return addOne(context, job, { kind: 'estimate-answered', v: 1, ...answer }, said);
}

function requireConditionalLines(
  { lines, version }: MadeEstimate,
  ids: readonly string[],
  { say }: Language,
): void {
  const conditional = lines.filter(({ ifFound }) => ifFound !== undefined).map(({ id }) => id);
  const strange = ids.find((id) => !conditional.includes(id));
  if (strange !== undefined)
    throw new RangeError(
      say(
        "Cannot keep this answer: conditional lines of version {version} are needed ({lines}), '{found}' was found. Choose among them.",
        { version, lines: conditional.join(', ') || say('it has none'), found: strange },
      ),
    );
  if (new Set(ids).size < ids.length)
    throw new RangeError(
      say(
        'Cannot keep this answer: each conditional line is needed once, one was found twice. Leave it out once.',
      ),
    );
}

/** What the customer said to a line of the change order, as a person gives it. */
export type AnswerToChange = Omit<FactOf<'change-answered'>, 'kind' | 'v'>;

/**
 * Keeps what the customer said to one line of the change order. A later answer stands in place of an earlier one.
 *
 * Throws: RangeError when there is no such line. Nothing is stored then.
 */
export async function answerChange(
  context: TaskContext,
  job: Ulid,
  answer: AnswerToChange,
): Promise<EstimateOutcome> {
  const language = context.language ?? english;
  const { say } = language;
  const state = await readJob(context, job);
  const damage = state.damages.find(({ entry }) => entry === answer.damage);
  if (damage === undefined)
    throw new RangeError(
      say(
        "Cannot keep this answer: a line of this job's change order is needed, none of that id was found among {count}. Look at the change order again.",
        { count: state.damages.length },
      ),
    );
  const before = state.changeAnswers.find((one) => one.damage === answer.damage);
  const said = [
    ...(answer.answer === 'agreed' && damage.priceMinorUnits === undefined
      ? [
          say(
            'This was agreed before anybody priced it: tell the customer the price before the work is done.',
          ),
        ]
      : []),
    ...(before === undefined ? [] : [replacesSentence(before, language)]),
  ];
  return addOne(context, job, { kind: 'change-answered', v: 1, ...answer }, said);
}

/** Time that a step took, as a person gives it. */
export type HoursToRecord = Omit<FactOf<'hours-worked'>, 'kind' | 'v'>;

/**
 * Notes time that a step of labour took. It adds to what was noted of the step before.
 *
 * Throws: RangeError when the step is neither a labour line of one of the job's estimates nor one of the usual steps: time
 * under a slip of the pen would never be learned from. Nothing is stored then.
 */
export async function recordHours(
  context: TaskContext,
  job: Ulid,
  hours: HoursToRecord,
): Promise<EstimateOutcome> {
  const { say } = context.language ?? english;
  const state = await readJob(context, job);
  const steps = new Set([
    ...STARTING_LABOUR_STEPS.map(({ id }) => id),
    ...state.estimates.flatMap(({ lines }) =>
      lines.filter(({ group }) => group === 'labour').map(({ id }) => id),
    ),
  ]);
  if (!steps.has(hours.labourStep))
    throw new RangeError(
      say(
        "Cannot note this time: a step of the work is needed ({steps}), '{found}' was found. Choose one, or add it to the estimate as a line of labour first.",
        { steps: [...steps].join(', '), found: hours.labourStep },
      ),
    );
  const wasFinished = state.hoursWorked.some(
    ({ labourStep, isFinished }) => labourStep === hours.labourStep && isFinished,
  );
  const said = wasFinished ? [say('This step was said to be finished before; the time is added to it.')] : [];
  return addOne(context, job, { kind: 'hours-worked', v: 1, ...hours }, said);
}

/** What a customer's answer stands in place of. */
const replacesSentence = (
  before: Pick<AnswerToEstimate | AnswerToChange, 'on' | 'answer' | 'name'>,
  { say, day }: Language,
): string =>
  say('This stands in place of the answer of {day}: {answer} by {name}.', {
    day: day(before.on),
    answer: say(before.answer),
    name: before.name,
  });

async function addOne(
  context: TaskContext,
  job: Ulid,
  fact: Fact,
  said: readonly string[],
): Promise<EstimateOutcome> {
  const { entries, job: changed } = await addFacts(context, job, [fact]);
  return { job: changed, entry: entries[0]!.id, said };
}
