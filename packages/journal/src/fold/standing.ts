import type { Entry } from '../entry.ts';
import type { Standing } from './job.ts';

const known = new WeakMap<Entry, Standing<unknown>>();

/**
 * A fact as it stands in the state. One entry always gives the same object, so that what was worked out from it can be
 * told to be still good by looking whether it is the same.
 */
export function standing<F>(entry: Entry, fact: F): Standing<F> {
  const before = known.get(entry) as Standing<F> | undefined;
  if (before !== undefined) return before;
  const fresh = { ...fact, entry: entry.id, step: entry.step, at: entry.at, by: entry.by };
  known.set(entry, fresh);
  return fresh;
}
