import type { Entry } from '../entry.ts';
import { type Fact, type FactOf, isAsFoundFact } from '../facts/index.ts';
import type { Amendment } from './job.ts';

/** The amendment that an entry after the seal makes; undefined when it leaves the as-found record alone. */
export function amendmentOf(
  { id, at, by, fact }: Entry<Fact>,
  /** The fact that is withdrawn, where the entry withdraws one. */
  withdrawn: { readonly kind: string } | undefined,
): Amendment | undefined {
  const target = fact.kind === 'withdrawn' ? withdrawn : fact;
  if (target === undefined || !isAsFoundFact(target)) return undefined;
  const reason = 'reason' in fact ? fact.reason : undefined;
  return { entry: id, at, by, reason, kind: fact.kind };
}

/**
 * The fact that a withdrawal is about in the end: a withdrawal of a withdrawal brings back what that one took out.
 * Undefined where it is not among the entries.
 */
export function factMeant(
  withdrawal: FactOf<'withdrawn'>,
  factOf: (entry: string) => { readonly kind: string } | undefined,
): { readonly kind: string } | undefined {
  const met = new Set<string>();
  let target = withdrawal.entry;
  for (;;) {
    const fact = factOf(target);
    if (fact?.kind !== 'withdrawn') return fact;
    // Two that name each other are about nothing.
    if (met.has(target)) return undefined;
    met.add(target);
    target = (fact as FactOf<'withdrawn'>).entry;
  }
}
