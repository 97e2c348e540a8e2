import type { Ulid } from '@becket/journal';
import { type Cursor, CursorNotKnown, type JournalStore } from '@becket/store';

type Listener = (cursor: Cursor) => void;

interface Watch {
  readonly listeners: Set<Listener>;
  cursor: Cursor | undefined;
  running: Promise<void> | undefined;
  isWanted: boolean;
}

/**
 * Tells whoever watches a job that entries have arrived.
 *
 * News of this server comes by `announce`. Another program that writes to the same store is found by looking, every few
 * seconds, and only at jobs that somebody watches.
 */
export class EntryNews {
  readonly #store: JournalStore;
  readonly #log: (fault: unknown) => void;
  readonly #lookEvery_ms: number;
  readonly #watches = new Map<Ulid, Watch>();
  #timer: ReturnType<typeof setInterval> | undefined;

  constructor(
    store: JournalStore,
    { log, lookEvery_ms = 2000 }: { log: (fault: unknown) => void; lookEvery_ms?: number | undefined },
  ) {
    this.#store = store;
    this.#log = log;
    this.#lookEvery_ms = lookEvery_ms;
  }

  /** Calls back at once with the job's cursor, and then with each new one. Gives back how to stop. */
  watch(job: Ulid, listener: Listener): () => void {
    let watch = this.#watches.get(job);
    if (watch === undefined) {
      watch = { listeners: new Set(), cursor: undefined, running: undefined, isWanted: false };
      this.#watches.set(job, watch);
    }
    watch.listeners.add(listener);
    if (watch.cursor === undefined) this.announce(job);
    else listener(watch.cursor);
    this.#timer ??= setInterval(() => {
      for (const watched of this.#watches.keys()) this.announce(watched);
    }, this.#lookEvery_ms);
    return () => {
      watch.listeners.delete(listener);
      if (watch.listeners.size === 0 && this.#watches.get(job) === watch) this.#watches.delete(job);
      if (this.#watches.size === 0) this.stop();
    };
  }

  /** Something may have arrived in this job. */
  announce(job: Ulid): void {
    const watch = this.#watches.get(job);
    if (watch === undefined) return;
    watch.isWanted = true;
    watch.running ??= this.#look(job, watch).finally(() => {
      watch.running = undefined;
    });
  }

  stop(): void {
    clearInterval(this.#timer);
    this.#timer = undefined;
  }

  async #look(job: Ulid, watch: Watch): Promise<void> {
    while (watch.isWanted) {
      watch.isWanted = false;
      try {
        const cursor = await this.#cursorAfter(job, watch.cursor);
        if (cursor === watch.cursor) continue;
        watch.cursor = cursor;
        for (const listener of watch.listeners) listener(cursor);
      } catch (fault) {
        // The next look tries again.
        this.#log(fault);
      }
    }
  }

  async #cursorAfter(job: Ulid, after: Cursor | undefined): Promise<Cursor> {
    try {
      return (await this.#store.entries(job, after)).cursor;
    } catch (error) {
      // The store was put back to an older copy: begin again.
      if (error instanceof CursorNotKnown) return (await this.#store.entries(job)).cursor;
      throw error;
    }
  }
}
