import type { Entry, Ulid } from '@becket/journal';
import { readCursor, writeCursor } from './cursor.ts';
import { type Cursor, CursorNotKnown, type JobListing } from './port.ts';
import { splitBatch } from './split-batch.ts';

interface KeptEntry {
  readonly id: Ulid;
  readonly text: string;
}

interface KeptJob {
  readonly arrivals: KeptEntry[];
  last: Pick<Entry, 'step' | 'id' | 'at'>;
}

/**
 * Journals held in memory, in order of arrival. Entries are held as JSON text, so that nobody who is handed one can
 * change what is kept. The memory store is this alone; the files store writes each batch to the disk first.
 */
export class KeptJournals {
  readonly #jobs = new Map<Ulid, KeptJob>();
  readonly #textById = new Map<Ulid, string>();

  jobs(): JobListing[] {
    return [...this.#jobs].map(([job, { arrivals, last }]) => ({
      job,
      entries: arrivals.length,
      lastAt: last.at,
    }));
  }

  /** Throws CursorNotKnown. */
  entries(job: Ulid, after?: Cursor): { entries: Entry[]; cursor: Cursor } {
    const arrivals = this.#jobs.get(job)?.arrivals ?? [];
    const from = readCursor(after);
    if (from !== undefined && arrivals[from.arrival - 1]?.id !== from.id)
      throw new CursorNotKnown(after ?? '');
    const last = arrivals.at(-1);
    return {
      entries: arrivals.slice(from?.arrival ?? 0).map(({ text }) => JSON.parse(text) as Entry),
      cursor: writeCursor(last && { arrival: arrivals.length, id: last.id }),
    };
  }

  /** What `add` would add. Throws EntryChanged. */
  split(batch: readonly Entry[]): { fresh: Entry[]; known: number } {
    return splitBatch(batch, (id) => {
      const text = this.#textById.get(id);
      return text === undefined ? undefined : (JSON.parse(text) as Entry);
    });
  }

  /** Takes in entries that `split` found to be new. */
  add(fresh: readonly Entry[]): void {
    for (const entry of fresh) {
      const { id, job, step, at } = entry;
      const text = JSON.stringify(entry);
      this.#textById.set(id, text);
      const kept = this.#jobs.get(job);
      if (kept === undefined) {
        this.#jobs.set(job, { arrivals: [{ id, text }], last: { step, id, at } });
      } else {
        kept.arrivals.push({ id, text });
        const isLater = step > kept.last.step || (step === kept.last.step && id > kept.last.id);
        if (isLater) kept.last = { step, id, at };
      }
    }
  }
}
