import type { Entry } from '../entry.ts';
import type { FactOf } from '../facts/index.ts';
import type { StringPlace } from '../facts/wire-path.ts';
import { entriesThatStand } from './entries-that-stand.ts';
import type { Standing } from './job.ts';
import { standing } from './standing.ts';

export type WireOn = Standing<FactOf<'wire-on'>>;

/** How far the stringing is. */
export interface Stringing {
  /** The wire that is on each string now, by `stringName`; two strings of one wire have the same one. */
  readonly wires: ReadonlyMap<string, WireOn>;
  /** In the order of the journal. */
  readonly mishaps: readonly Standing<FactOf<'stringing-mishap'>>[];
  /** Strings, by `stringName`, whose wire came off and that have none since. */
  readonly again: ReadonlySet<string>;
}

/** '40/2': key and string from the bass side. */
export const stringName = ({ key, string }: StringPlace): string => `${key}/${string}`;

/**
 * The wires that are on, from the entries of a job in any order and more than once.
 *
 * A wire that comes off leaves all its strings bare, also the one that the mishap did not name. Of two wires that were noted for
 * one string, as on two devices, the later stands; what the earlier one carries besides stays on.
 *
 * @example foldStringing([]).wires.size // = 0
 */
export function foldStringing(entries: Iterable<Entry>): Stringing {
  const wires = new Map<string, WireOn>();
  const again = new Set<string>();
  const mishaps: Standing<FactOf<'stringing-mishap'>>[] = [];
  for (const entry of entriesThatStand(entries)) {
    const { fact } = entry;
    if (fact.kind === 'wire-on') {
      const wire = standing(entry, fact);
      for (const name of fact.strings.map(stringName)) {
        wires.set(name, wire);
        again.delete(name);
      }
    } else if (fact.kind === 'stringing-mishap') {
      mishaps.push(standing(entry, fact));
      if (!fact.isOff) continue;
      const named = fact.strings.map(stringName);
      const off = new Set(named.map((name) => wires.get(name)).filter((wire) => wire !== undefined));
      for (const [name, wire] of wires) {
        if (!off.has(wire)) continue;
        wires.delete(name);
        again.add(name);
      }
      for (const name of named) again.add(name);
    }
  }
  return { wires, mishaps, again };
}
