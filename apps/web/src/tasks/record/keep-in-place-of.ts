import { english } from '@becket/core';
import type { Job } from '@becket/journal';
import { type FactToRecord, recordFacts, type TaskContext, takeBackEntry } from '@becket/tasks';

/**
 * Keeps a fact, and takes back the one that it corrects. Where a fact takes the place of another by its own name, nothing
 * has to be taken back: leave out `before` then.
 * Throws as `recordFacts` does; nothing is kept or taken back then.
 */
export async function keepInPlaceOf(
  context: TaskContext,
  job: string,
  fact: FactToRecord,
  before: string | undefined,
  said: { readonly reason?: string },
): Promise<Job> {
  const { say } = context.language ?? english;
  const { job: kept } = await recordFacts(context, job, [{ ...fact, ...said }]);
  if (before === undefined) return kept;
  return takeBackEntry(context, job, before, { ...said, otherwise: say('typed again while recording') });
}
