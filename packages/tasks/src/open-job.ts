import { type FactOf, foldJob, type Job, type Ulid } from '@becket/journal';
import { addFacts, entriesFor, type TaskContext } from './context.ts';

export interface NewJob {
  readonly title: string;
  readonly customer?: string | undefined;
  /** What the customer asked for, in her own words. */
  readonly asks?: string | undefined;
  readonly piano?: Omit<FactOf<'piano-described'>, 'kind' | 'v'> | undefined;
}

/** Opens a job; with the piano's description when it is already known. */
export async function openJob(context: TaskContext, { piano, ...head }: NewJob): Promise<Job> {
  const job: Ulid = context.newId();
  const opened = openingOf(head);
  const facts =
    piano === undefined ? [opened] : [opened, { kind: 'piano-described' as const, v: 1 as const, ...piano }];
  const entries = entriesFor(context, { job, facts, existing: [] });
  await context.store.append(entries);
  return foldJob(entries);
}

/** Puts the title, the customer or her question right. What was said at first stays in the journal. */
export async function correctOpening(
  context: TaskContext,
  job: Ulid,
  head: Omit<NewJob, 'piano'>,
): Promise<Job> {
  return (await addFacts(context, job, [openingOf(head)])).job;
}

function openingOf({ title, customer, asks }: Omit<NewJob, 'piano'>): FactOf<'job-opened'> {
  return { kind: 'job-opened', v: 1, title, ...(customer ? { customer } : {}), ...(asks ? { asks } : {}) };
}
