import { A228_MAXIMUM, A228_MINIMUM } from './astm-a228.ts';
import { EN_10270_SH_MINIMUM, EN_10270_SM_MINIMUM } from './en-10270.ts';
import { CAREFUL_MUSIC_WIRE_LAW, SHIGLEY_A228_LAW } from './handbook-strength-law.ts';
import { type TestedWireTable, testedStrengthTable } from './tested-wire.ts';
import type { WireStrengthTable } from './wire-strength.ts';

/** The published tables and laws, the default first. */
export const PUBLISHED_STRENGTH_TABLES: readonly WireStrengthTable[] = [
  A228_MINIMUM,
  A228_MAXIMUM,
  EN_10270_SM_MINIMUM,
  EN_10270_SH_MINIMUM,
  SHIGLEY_A228_LAW,
  CAREFUL_MUSIC_WIRE_LAW,
];

/**
 * The strength table of a given name, published or the shop's own; names travel where functions cannot.
 *
 * @param name  as in `WireStrengthTable.name`
 * @param own   the shop's tested values, looked up first
 * Throws: RangeError that lists the names there are.
 * @example  strengthTableNamed('ASTM A228 minimum').kind  // = minimum
 */
export function strengthTableNamed(name: string, own: readonly TestedWireTable[] = []): WireStrengthTable {
  const tested = own.find((table) => table.name === name);
  if (tested !== undefined) return testedStrengthTable(tested);
  const published = PUBLISHED_STRENGTH_TABLES.find((table) => table.name === name);
  if (published !== undefined) return published;
  const known = [...own, ...PUBLISHED_STRENGTH_TABLES].map((table) => `'${table.name}'`).join(', ');
  throw new RangeError(
    `Cannot look up a strength table as its name must be one of ${known}: found '${name}'`,
  );
}
