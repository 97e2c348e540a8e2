import { canonicalText, digestOf } from '../canonical.ts';
import { type Entry, isKnownFact } from '../entry.ts';
import { type FactOf, isAsFoundFact } from '../facts/index.ts';
import { foldJob } from '../fold/fold-job.ts';
import { compareEntries } from '../fold/order.ts';

/**
 * What a seal made now would fix: the as-found facts that stand, in journal order.
 *
 * digest = SHA-256 of the canonical JSON (RFC 8785) of [{ id, fact }, …].
 */
export function sealOf(entries: readonly Entry[]): Pick<FactOf<'sealed'>, 'digest' | 'entries' | 'covers'> {
  const { withdrawnEntries } = foldJob(entries);
  const covered = entries
    .filter(
      (entry) => isKnownFact(entry.fact) && isAsFoundFact(entry.fact) && !withdrawnEntries.has(entry.id),
    )
    .sort(compareEntries);
  return {
    digest: digestOfCovered(covered),
    entries: covered.length,
    covers: covered.map((entry) => entry.id),
  };
}

/** Whether the entries a seal covers are all here and unchanged. */
export function isSealIntact(
  seal: Pick<FactOf<'sealed'>, 'digest' | 'covers'>,
  entries: readonly Entry[],
): boolean {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const covered = seal.covers.map((id) => byId.get(id));
  if (covered.some((entry) => entry === undefined)) return false;
  return digestOfCovered(covered as Entry[]) === seal.digest;
}

function digestOfCovered(covered: readonly Entry[]): string {
  return digestOf(canonicalText(covered.map(({ id, fact }) => ({ id, fact }))));
}
