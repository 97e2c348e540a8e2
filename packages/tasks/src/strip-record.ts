import { english, type Language } from '@becket/core';
import { type Gap, type Job, sealOf, stripCheck, type Ulid } from '@becket/journal';
import { addFacts, entriesOf, readJob, type TaskContext } from './context.ts';

/** The as-found record cannot be sealed while gaps are open. */
export class SurveyIncomplete extends Error {
  override readonly name = 'SurveyIncomplete';
  readonly openGaps: readonly Gap[];
  constructor(openGaps: readonly Gap[], { say }: Language = english) {
    const names = openGaps
      .slice(0, 5)
      .map((gap) => gap.name)
      .join(', ');
    super(
      say(
        'Cannot seal the as-found record: no open gap is needed, {count} were found ({names}). Record each, or accept it by name with a reason.',
        {
          count: openGaps.length,
          names:
            openGaps.length > 5
              ? say('{names} and {count} more', { names, count: openGaps.length - 5 })
              : names,
        },
      ),
    );
    this.openGaps = openGaps;
  }
}

/** Accepts gaps of the strip check by name, each with the same reason. Throws RangeError when one is not an open gap. */
export async function acceptGaps(
  context: TaskContext,
  job: Ulid,
  { gaps, reason }: { readonly gaps: readonly string[]; readonly reason: string },
): Promise<Job> {
  const { say } = context.language ?? english;
  const open = new Set(stripCheck(await readJob(context, job)).openGaps.map((gap) => gap.name));
  for (const name of gaps) {
    if (!open.has(name)) {
      throw new RangeError(
        say(
          "Cannot accept the gap '{name}': the strip check has no open gap of that name. Take a name from its list.",
          { name },
        ),
      );
    }
  }
  return (
    await addFacts(
      context,
      job,
      gaps.map((gap) => ({ kind: 'gap-accepted' as const, v: 1 as const, gap, reason })),
    )
  ).job;
}

/**
 * Seals the as-found record before the strip.
 * Throws: SurveyIncomplete while a gap is open; RangeError when it is sealed already.
 */
export async function sealRecord(context: TaskContext, job: Ulid): Promise<Job> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  if (state.seal !== undefined) {
    throw new RangeError(
      language.say(
        'Cannot seal this record again: it was sealed on {at} by {by}. Later changes are amendments with a reason.',
        { at: language.moment(state.seal.at), by: state.seal.by },
      ),
    );
  }
  const check = stripCheck(state, language);
  if (!check.isPassed) throw new SurveyIncomplete(check.openGaps, language);
  const seal = sealOf(await entriesOf(context, job));
  return (await addFacts(context, job, [{ kind: 'sealed', v: 1, ...seal }])).job;
}
