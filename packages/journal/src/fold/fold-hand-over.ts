import type { Entry } from '../entry.ts';
import type { FactOf } from '../facts/index.ts';
import { entriesThatStand } from './entries-that-stand.ts';
import type { Standing } from './job.ts';
import { standing } from './standing.ts';

export type HandOver = Standing<FactOf<'handed-over'>>;

/** The hand-over that stands, the last one of the journal; undefined until there is one. */
export function foldHandOver(entries: Iterable<Entry>): HandOver | undefined {
  let last: HandOver | undefined;
  for (const entry of entriesThatStand(entries))
    if (entry.fact.kind === 'handed-over') last = standing(entry, entry.fact);
  return last;
}
