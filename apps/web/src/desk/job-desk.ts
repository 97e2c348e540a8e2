import { type AsFoundRecord, asFoundRecord, type Entry, foldJob, type Job, type Ulid } from '@becket/journal';
import type { TaskContext } from '@becket/tasks';
import { afterPicture } from '../parts/after-picture.ts';
import { type Observable, observable } from '../parts/observable.ts';
import { queue } from '../parts/queue.ts';
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
   *
   * One after the other: a task begins once the one before it is kept and `now` has it, so that it never writes over what
   * it could not see.
   */
  run<Result>(task: (context: TaskContext, job: Ulid) => Promise<Result>): Promise<Result | undefined>;
  /**
   * Runs a task for a form that says by itself, beside its fields, what went wrong: on a phone the head of the page is out
   * of sight, and a sentence that came and went there would push away what is being tapped.
   * Throws: RangeError with the sentence when the task failed; the job is as it was, and `problem` too.
   */
  runHere<Result>(task: (context: TaskContext, job: Ulid) => Promise<Result>): Promise<Result>;
  /**
   * The same as `run` for what is typed value by value: the task reads this tab's memory, and the state follows only after the
   * picture of what the task has shown by itself.
   */
  runTyped<Result>(task: (context: TaskContext, job: Ulid) => Promise<Result>): Promise<Result | undefined>;
  /** The job as it stands, which the page may have still to draw; undefined while it is not open. */
  now(): OpenJob | undefined;
  /** The job with all that this tab knows of, also where `state` has still to follow; undefined while it is not open. */
  latest(): Promise<OpenJob | undefined>;
  refresh(): Promise<void>;
  close(): void;
}

/** Opens a job of this device's store. */
export function openDesk(id: Ulid, store: BrowserStore, context: () => TaskContext): JobDesk {
  const state = observable<DeskState>({ is: 'opening' });
  const problem = observable<string | undefined>(undefined);
  const selectedKey = observable<number | undefined>(undefined);
  const inTurn = queue();
  let shown = -1;
  let refreshing: Promise<void> | undefined;
  let isStale = false;

  /** Typed values whose picture is still to come: what follows from them waits for it. */
  let typing = 0;

  async function read(from: Pick<BrowserStore, 'entries'> = store): Promise<void> {
    try {
      const { entries } = await from.entries(id);
      if (entries.length === 0) {
        state.set({ is: 'not on this device' });
        return;
      }
      if (entries.length === shown) return;
      shown = entries.length;
      const job = foldJob(entries);
      state.set({ is: 'open', job, record: asFoundRecord(job), entries });
    } catch (error) {
      state.set({ is: 'trouble', sentence: sentenceOf(error, context().language) });
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

  /** Something went well: puts away what stood there when it began. A sentence that came meanwhile is of something else. */
  function wentWell(before: string | undefined): void {
    if (problem.get() === before) problem.set(undefined);
  }

  const stop = store.onArrival((job) => {
    if (job === id && typing === 0) void refresh();
  });
  void refresh();

  return {
    id,
    state,
    problem,
    selectedKey,
    refresh,
    run: (task) =>
      inTurn(async () => {
        const before = problem.get();
        try {
          const result = await task(context(), id);
          await refresh();
          wentWell(before);
          return result;
        } catch (error) {
          problem.set(sentenceOf(error, context().language));
          await refresh();
          return undefined;
        }
      }),
    runHere: (task) =>
      inTurn(async () => {
        const before = problem.get();
        try {
          const result = await task(context(), id);
          wentWell(before);
          return result;
        } catch (error) {
          throw new RangeError(sentenceOf(error, context().language), { cause: error });
        } finally {
          await refresh();
        }
      }),
    async runTyped(task) {
      typing += 1;
      try {
        const result = await task({ ...context(), store: { ...store, ...store.inMemory } }, id);
        problem.set(undefined);
        return result;
      } catch (error) {
        problem.set(sentenceOf(error, context().language));
        return undefined;
      } finally {
        void afterPicture().then(() => {
          typing -= 1;
          return refresh();
        });
      }
    },
    now() {
      const at = state.get();
      return at.is === 'open' ? at : undefined;
    },
    async latest() {
      const { entries } = await store.inMemory.entries(id);
      if (entries.length === 0) return undefined;
      const job = foldJob(entries);
      return { job, record: asFoundRecord(job), entries };
    },
    close: stop,
  };
}
