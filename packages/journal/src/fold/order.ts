import { english, type Language } from '@becket/core';
import { canonicalText } from '../canonical.ts';
import type { Entry } from '../entry.ts';

/** Entries are ordered by (step, id), so that every device folds to the same state whatever order they arrive in. */
export function compareEntries(a: Entry<unknown>, b: Entry<unknown>): number {
  if (a.step !== b.step) return a.step - b.step;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

/**
 * The union of journals by entry id, in journal order.
 *
 * Commutative, associative and idempotent: devices may merge in any order, any number of times.
 * Throws: RangeError when two entries share an id and differ, since an entry never changes once it is written.
 */
export function mergeJournals(journals: readonly (readonly Entry[])[], { say }: Language = english): Entry[] {
  const byId = new Map<string, Entry>();
  for (const journal of journals) {
    for (const entry of journal) {
      const known = byId.get(entry.id);
      if (known === undefined) byId.set(entry.id, entry);
      else if (known !== entry && !isSameEntry(known, entry)) {
        throw new RangeError(
          say(
            'Cannot merge these journals: entry {entry} stands in both with different content. An entry never changes; keep both files and correct by a further entry.',
            { entry: entry.id },
          ),
        );
      }
    }
  }
  return [...byId.values()].sort(compareEntries);
}

/** The step of the next entry: one more than the highest seen. */
export function nextStep(entries: Iterable<Entry<unknown>>): number {
  let highest = 0;
  for (const entry of entries) if (entry.step > highest) highest = entry.step;
  return highest + 1;
}

function isSameEntry(a: Entry, b: Entry): boolean {
  return canonicalText(a) === canonicalText(b);
}
