import type { Entry, Ulid } from '@becket/journal';

/** The place of a reading among its like, as text that sorts. */
export type ReadingOrder = (reading: { readonly entry: Ulid; readonly step: number }) => string;

const known = new WeakMap<readonly Entry[], ReadingOrder>();

/**
 * Orders readings by when they were first taken: a correction takes the place of what it corrects, however late it came.
 */
export function readingOrder(entries: readonly Entry[]): ReadingOrder {
  const order = known.get(entries) ?? orderOf(entries);
  known.set(entries, order);
  return order;
}

function orderOf(entries: readonly Entry[]): ReadingOrder {
  const steps = new Map<Ulid, number>();
  const replaced = new Map<Ulid, Ulid>();
  for (const { id, step, fact } of entries) {
    if (fact.kind !== 'reading') continue;
    steps.set(id, step);
    if ('replaces' in fact && typeof fact.replaces === 'string') replaced.set(id, fact.replaces);
  }
  return ({ entry, step }) => {
    let first = entry;
    let firstStep = step;
    // An entry only replaces an earlier one, so the chain ends; a chain that does not is cut at its length.
    for (let left = replaced.size; left > 0; left -= 1) {
      const before = replaced.get(first);
      if (before === undefined) break;
      first = before;
      firstStep = steps.get(before) ?? firstStep;
    }
    return `${String(firstStep).padStart(12, '0')}/${first}/${String(step).padStart(12, '0')}/${entry}`;
  };
}
