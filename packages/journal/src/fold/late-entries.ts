import { type Entry, isKnownFact } from '../entry.ts';
import { isAsFoundFact } from '../facts/index.ts';
import { withdrawnIds } from './withdrawn-ids.ts';

/**
 * Entries that stand before the seal in journal order and that the device which sealed had not seen: another device,
 * away at the time, gave them an earlier step. They change the as-found record, and are not under its seal.
 *
 * What the sealing device knew is told by the list of what the seal covers; of what it does not cover, those are known
 * that were withdrawn or corrected before it.
 *
 * @param ordered  all entries, in journal order
 * @param withdrawn  ids that are taken out of the state
 */
export function lateEntries(ordered: readonly Entry[], withdrawn: ReadonlySet<string>): ReadonlySet<string> {
  const at = ordered.findIndex(
    ({ id, fact }) => fact.kind === 'sealed' && isKnownFact(fact) && !withdrawn.has(id),
  );
  const seal = ordered[at]?.fact;
  if (seal === undefined || !isKnownFact(seal) || seal.kind !== 'sealed') return new Set();
  const covered = new Set<string>(seal.covers);
  const before = ordered.slice(0, at);
  const gone = withdrawnIds(before);
  return new Set(
    before.flatMap(({ id, fact }, index) => {
      if (!isKnownFact(fact)) return [];
      const isLate =
        fact.kind === 'withdrawn'
          ? // It can only speak of what came before it.
            covered.has(fact.entry) && before.slice(0, index).some((other) => other.id === fact.entry)
          : isAsFoundFact(fact) && !covered.has(id) && !gone.has(id);
      return isLate ? [id] : [];
    }),
  );
}
