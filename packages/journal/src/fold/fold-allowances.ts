import type { Entry } from '../entry.ts';
import type { Ulid } from '../ulid.ts';
import { entriesThatStand } from './entries-that-stand.ts';

/** A figure of the shop's own, and who set it. */
export interface AllowanceKept {
  readonly value: number;
  readonly source: string;
  readonly by: string;
  readonly at: string;
  readonly entry: Ulid;
}

/** The shop's own figures by name: the last that stands of each. Entries may come in any order and more than once. */
export function foldAllowances(entries: Iterable<Entry>): ReadonlyMap<string, AllowanceKept> {
  const kept = new Map<string, AllowanceKept>();
  for (const { id, by, at, fact } of entriesThatStand(entries))
    if (fact.kind === 'allowance-set')
      kept.set(fact.name, { value: fact.value, source: fact.source, by, at, entry: id });
  return kept;
}
