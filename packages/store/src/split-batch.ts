import { canonicalText, type Entry, type Ulid } from '@becket/journal';
import { EntryChanged } from './port.ts';

/**
 * The entries of a batch that are new to a store, each once and in the batch's order, and how many it knew already.
 *
 * Throws: EntryChanged when an entry's id stands in the store, or earlier in the batch, with other content.
 */
export function splitBatch(
  batch: readonly Entry[],
  kept: (id: Ulid) => Entry | undefined,
): { fresh: Entry[]; known: number } {
  const fresh = new Map<Ulid, Entry>();
  for (const entry of batch) {
    const before = fresh.get(entry.id) ?? kept(entry.id);
    if (before === undefined) fresh.set(entry.id, entry);
    else if (!isSameEntry(before, entry)) throw new EntryChanged(entry.id);
  }
  return { fresh: [...fresh.values()], known: batch.length - fresh.size };
}

/** The order of fields does not make an entry another one. */
function isSameEntry(a: Entry, b: Entry): boolean {
  return canonicalText(a) === canonicalText(b);
}
