import { type Entry, isKnownFact } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { compareEntries } from './order.ts';

/**
 * Entries of known kinds, each once and in journal order, without those that a later entry withdrew.
 *
 * For facts that are never replaced, only withdrawn: those of the shop and of orders. A withdrawal that was itself withdrawn
 * has no effect.
 */
export function entriesThatStand(entries: Iterable<Entry>): Entry<Fact>[] {
  const byId = new Map<string, Entry>();
  for (const entry of entries) byId.set(entry.id, entry);
  const ordered = [...byId.values()]
    .sort(compareEntries)
    .filter((entry): entry is Entry<Fact> => isKnownFact(entry.fact));
  const position = new Map(ordered.map(({ id }, index) => [id, index]));
  const gone = new Set<string>();
  for (let index = ordered.length - 1; index >= 0; index -= 1) {
    const { id, fact } = ordered[index]!;
    if (gone.has(id) || fact.kind !== 'withdrawn') continue;
    // An entry can only speak of what came before it.
    if ((position.get(fact.entry) ?? index) < index) gone.add(fact.entry);
  }
  return ordered.filter(({ id, fact }) => !gone.has(id) && fact.kind !== 'withdrawn');
}
