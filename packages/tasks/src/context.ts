import { english, type Language } from '@becket/core';
import {
  type Entry,
  type Fact,
  foldJob,
  type Job,
  nextStep,
  parseEntry,
  problemOfNewFact,
  type Ulid,
} from '@becket/journal';
import type { JournalStore } from '@becket/store';

/** What every task is handed: where journals are kept, the time, new ids, and who is asking on which device. */
export interface TaskContext {
  readonly store: JournalStore;
  readonly now: () => Date;
  readonly newId: () => Ulid;
  readonly by: string;
  readonly device: string;
  /** What sentences and papers are written in; English where nothing is said. */
  readonly language?: Language | undefined;
}

/** There is no job of that id in this store. */
export class JobNotFound extends Error {
  override readonly name = 'JobNotFound';
  readonly job: string;
  constructor(job: string, { say }: Language = english) {
    super(
      say(
        'Cannot find job {job}: this store has no entries of it. List the jobs and take an id from there.',
        { job },
      ),
    );
    this.job = job;
  }
}

/** The as-found record is sealed; a change to it needs a reason. */
export class RecordIsSealed extends Error {
  override readonly name = 'RecordIsSealed';
  constructor(sealedAt: string, { say, moment }: Language = english) {
    super(
      say(
        'Cannot change the as-found record as it was sealed on {at}: a reason is needed, none was given. Give the reason and try again.',
        { at: moment(sealedAt) },
      ),
    );
  }
}

/** All entries of one job. Throws JobNotFound. */
export async function entriesOf(
  context: Pick<TaskContext, 'store' | 'language'>,
  job: Ulid,
): Promise<readonly Entry[]> {
  const { entries } = await context.store.entries(job);
  if (entries.length === 0) throw new JobNotFound(job, context.language);
  return entries;
}

/** The state of one job. Throws JobNotFound. */
export async function readJob(context: TaskContext, job: Ulid): Promise<Job> {
  return foldJob(await entriesOf(context, job));
}

/**
 * New entries for these facts, one step each, after everything in `existing`. Nothing is stored.
 * Throws: SyntaxError when a fact does not fit its schema.
 */
export function entriesFor(
  context: TaskContext,
  { job, facts, existing }: { job: Ulid; facts: readonly Fact[]; existing: readonly Entry[] },
): Entry[] {
  const firstStep = nextStep(existing);
  return facts.map((fact, index) => {
    const entry = {
      id: context.newId(),
      job,
      step: firstStep + index,
      at: context.now().toISOString(),
      by: context.by,
      device: context.device,
      fact,
    };
    try {
      return parseEntry(entry, context.language);
    } catch (error) {
      // What a person typed is spoken of as that, not as the field of an entry.
      const problem = problemOfNewFact(fact, context.language);
      throw problem === undefined ? error : new SyntaxError(problem, { cause: error });
    }
  });
}

/** Stores these facts as new entries of the job, all or none, and gives back the entries and the new state. */
export async function addFacts(
  context: TaskContext,
  job: Ulid,
  facts: readonly Fact[],
): Promise<{ entries: readonly Entry[]; job: Job }> {
  const existing = await entriesOf(context, job);
  const entries = entriesFor(context, { job, facts, existing });
  const folded = foldJob([...existing, ...entries]);
  await context.store.append(entries);
  return { entries, job: folded };
}
