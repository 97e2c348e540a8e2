import type { Entry } from '../entry.ts';
import { type Fact, isAsFoundFact } from '../facts/index.ts';
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
