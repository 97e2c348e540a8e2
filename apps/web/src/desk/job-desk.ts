import { type AsFoundRecord, asFoundRecord, type Entry, foldJob, type Job, type Ulid } from '@becket/journal';
import type { TaskContext } from '@becket/tasks';
import { type Observable, observable } from '../parts/observable.ts';
import type { BrowserStore } from '../store/browser-store.ts';
import { sentenceOf } from './sentence-of.ts';

/** One open job on the desk: its state, folded anew whenever entries arrive, from here or from elsewhere. */
export interface OpenJob {
  readonly job: Job;
  readonly record: AsFoundRecord;
  /** The journal itself, in order of arrival on this device. */
  readonly entries: readonly Entry[];
}

export type DeskState =
  | { readonly is: 'opening' }
  | { readonly is: 'not on this device' }
  | { readonly is: 'trouble'; readonly sentence: string }
  | ({ readonly is: 'open' } & OpenJob);

export interface JobDesk {
  readonly id: Ulid;
  readonly state: Observable<DeskState>;
  /** The note that is being looked at, on every screen alike. */
  readonly selectedKey: Observable<number | undefined>;
  /** What went wrong last, in one sentence; undefined once something went well. */
  readonly problem: Observable<string | undefined>;
  /**
   * Runs a task that changes the job, and gives back what it gave, or undefined when it failed.
   * Then `problem` says why, and the job is as it was.
   */
  run<Result>(task: (context: TaskContext, job: Ulid) => Promise<Result>): Promise<Result | undefined>;
  refresh(): Promise<void>;
  close(): void;
}

/** Opens a job of this device's store. */
export function openDesk(id: Ulid, store: BrowserStore, context: () => TaskContext): JobDesk {
  const state = observable<DeskState>({ is: 'opening' });
  const problem = observable<string | undefined>(undefined);
  const selectedKey = observable<number | undefined>(undefined);
  let shown = -1;
  let refreshing: Promise<void> | undefined;
  let isStale = false;

  async function read(): Promise<void> {
    try {
      const { entries } = await store.entries(id);
      if (entries.length === 0) {
        state.set({ is: 'not on this device' });
        return;
      }
      if (entries.length === shown) return;
      shown = entries.length;
      const job = foldJob(entries);
      state.set({ is: 'open', job, record: asFoundRecord(job), entries });
    } catch (error) {
      state.set({ is: 'trouble', sentence: sentenceOf(error) });
    }
  }

  /** Reads again; a wish that comes during a reading starts another one, since it may have come too late for the first. */
  function refresh(): Promise<void> {
    if (refreshing) {
      isStale = true;
      return refreshing;
    }
    refreshing = (async () => {
      do {
        isStale = false;
        await read();
      } while (isStale);
    })().finally(() => {
      refreshing = undefined;
    });
    return refreshing;
  }

  const stop = store.onArrival((job) => {
    if (job === id) void refresh();
  });
  void refresh();

  return {
    id,
    state,
    problem,
    selectedKey,
    refresh,
    async run(task) {
      try {
        const result = await task(context(), id);
        await refresh();
        problem.set(undefined);
        return result;
      } catch (error) {
        problem.set(sentenceOf(error));
        await refresh();
        return undefined;
      }
    },
    close: stop,
  };
}
