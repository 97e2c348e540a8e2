import { type Entry, isKnownFact } from '../entry.ts';
import type { Fact } from '../facts/index.ts';

/**
 * Ids taken out of the state by a later withdrawal or correction, of entries in journal order.
 *
 * Walked from the last entry to the first, so that a withdrawal which was itself withdrawn has no effect: that is redo.
 * A correction that was corrected in its turn still keeps out what it corrected; one that was withdrawn does not.
 */
export function withdrawnIds(ordered: readonly Entry[]): Set<string> {
  const position = new Map(ordered.map((entry, index) => [entry.id, index]));
  const undone = new Set<string>();
  const replaced = new Set<string>();
  for (let index = ordered.length - 1; index >= 0; index -= 1) {
    const entry = ordered[index]!;
    if (undone.has(entry.id) || !isKnownFact(entry.fact)) continue;
    const target = targetOf(entry.fact);
    // An entry can only speak of what came before it.
    if (target === undefined || (position.get(target) ?? index) >= index) continue;
    (entry.fact.kind === 'withdrawn' ? undone : replaced).add(target);
  }
  return new Set([...undone, ...replaced]);
}

function targetOf(fact: Fact): string | undefined {
  if (fact.kind === 'withdrawn') return fact.entry;
  if (fact.kind === 'reading' || fact.kind === 'observation' || fact.kind === 'finding') return fact.replaces;
  return undefined;
}
