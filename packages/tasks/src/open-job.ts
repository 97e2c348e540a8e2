import { type FactOf, foldJob, type Job, type Ulid } from '@becket/journal';
import { entriesFor, type TaskContext } from './context.ts';

export interface NewJob {
  readonly title: string;
  readonly customer?: string | undefined;
  readonly piano?: Omit<FactOf<'piano-described'>, 'kind' | 'v'> | undefined;
}

/** Opens a job; with the piano's description when it is already known. */
export async function openJob(context: TaskContext, { title, customer, piano }: NewJob): Promise<Job> {
  const job: Ulid = context.newId();
  const opened: FactOf<'job-opened'> = { kind: 'job-opened', v: 1, title, ...(customer ? { customer } : {}) };
  const facts =
    piano === undefined ? [opened] : [opened, { kind: 'piano-described' as const, v: 1 as const, ...piano }];
  const entries = entriesFor(context, { job, facts, existing: [] });
  await context.store.append(entries);
  return foldJob(entries);
}
