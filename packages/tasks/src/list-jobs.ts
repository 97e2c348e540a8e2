import { foldJob, SHOP_JOURNAL, type Ulid } from '@becket/journal';
import type { TaskContext } from './context.ts';

export interface ListedJob {
  readonly job: Ulid;
  readonly title: string;
  readonly customer: string | undefined;
  readonly entries: number;
  readonly lastAt: string;
  readonly isSealed: boolean;
}

/** Every job in the store, the one last worked on first; the shop's own journal is not a job. */
export async function listJobs(context: TaskContext): Promise<ListedJob[]> {
  const listings = await context.store.jobs();
  const jobs: ListedJob[] = [];
  for (const { job, entries, lastAt } of listings) {
    if (job === SHOP_JOURNAL) continue;
    const state = foldJob((await context.store.entries(job)).entries);
    jobs.push({
      job,
      title: state.title,
      customer: state.customer,
      entries,
      lastAt,
      isSealed: state.seal !== undefined,
    });
  }
  return jobs.sort((a, b) => (a.lastAt < b.lastAt ? 1 : -1));
}
