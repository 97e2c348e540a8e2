import type { Entry } from '../entry.ts';
import type { Job } from './job.ts';

/** A journal that was folded: its entries in the order they were handed in, and what came of them. */
export interface Folded {
  readonly entries: readonly Entry[];
  /** The last entry in journal order. */
  readonly last: Entry;
  readonly job: Job;
}

/**
 * The latest folds of each journal, by its first entry; they go with it when nobody holds it any more.
 * Two are kept, since an entry that was just made and the same one read back from a store are two objects.
 */
const known = new WeakMap<Entry, readonly Folded[]>();
const foldsKept = 2;

/** The longest fold known of a journal these entries begin with. Entries never change, so the same objects are the same journal. */
export function longestKnownFold(entries: readonly Entry[]): Folded | undefined {
  const [first] = entries;
  if (first === undefined) return undefined;
  const fitting = (known.get(first) ?? []).filter(
    (folded) =>
      folded.entries.length <= entries.length &&
      folded.entries.every((entry, index) => entry === entries[index]),
  );
  return fitting.sort((a, b) => b.entries.length - a.entries.length)[0];
}

export function keepFold(folded: Folded): void {
  const first = folded.entries[0];
  if (first === undefined) return;
  known.set(first, [folded, ...(known.get(first) ?? [])].slice(0, foldsKept));
}
