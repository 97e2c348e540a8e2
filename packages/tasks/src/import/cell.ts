import { type FactOf, frontTerminations, type ReadUnit } from '@becket/journal';

/** Cells in which nothing is said: empty, or a dash. */
export function isBlank(cell: string): boolean {
  return /^\s*[-‐–—―−.]*\s*$/.test(cell);
}

/** What a cell says instead of a number, as people write it. *Unknown*, *none* and *does not apply* stay three things. */
export function absenceIn(cell: string): 'unknown' | 'none' | 'does not apply' | undefined {
  if (/^\s*(\?+|unknown|unbekannt)\s*$/i.test(cell)) return 'unknown';
  if (/^\s*(none|nil|no|keine?s?|fehlt)\s*$/i.test(cell)) return 'none';
  return /^\s*(n\/?a|n\.a\.|does not apply|entfällt)\s*$/i.test(cell) ? 'does not apply' : undefined;
}

/** A number as it stands in a cell, and the unit written behind it, where there is one. */
export interface NumberInCell {
  readonly value: number;
  readonly unit: ReadUnit | undefined;
}

/** The first that fits wins: torques before the lengths that they end in. */
const unitsBehind: readonly (readonly [RegExp, ReadUnit])[] = [
  [/N[·*. ]?m$/, 'N·m'],
  [/mm\.?$/i, 'mm'],
  [/(inch(es)?|in\.?|zoll|"|″|''|’’)$/i, 'in'],
  [/(mils?|thou)\.?$/i, 'mil'],
  [/[µμu]m\.?$/i, 'um'],
  [/(?<![a-z])m\.?$/i, 'm'],
  [/in[·*. -]?lbf?s?$/i, 'in·lbf'],
  [/(°|deg)$/i, 'deg'],
  [/%$/, '%'],
];

/**
 * The number in a cell as people write it: '0,041', '.041', '1 040', '41"', '25 3/8', '25½', '1.04 mm'; undefined when
 * there is none, or when it has a unit behind it that is not one of ours.
 *
 * @param decimalMark  the table's own; it decides what a mark followed by three digits is
 */
export function numberIn(cell: string, decimalMark: '.' | ','): NumberInCell | undefined {
  const trimmed = cell.trim();
  const named = unitsBehind.find(([words]) => words.test(trimmed));
  const bare = named === undefined ? trimmed : trimmed.replace(named[0], '').trim();
  const value = fractionIn(bare) ?? decimalIn(bare, decimalMark);
  return value === undefined ? undefined : { value, unit: named?.[1] };
}

/** '25 3/8', '25-3/8', '3/8', '25⅜': what a tape in inches shows. */
function fractionIn(text: string): number | undefined {
  const plain = text
    .replace(/[¼-¾⅐-⅞]/g, (vulgar) => ` ${vulgar.normalize('NFKC')}`)
    .replaceAll('⁄', '/')
    .trim();
  const parts = /^(?:(\d{1,3})[\s-]+)?(\d{1,2})\/(\d{1,2})$/.exec(plain);
  if (parts === null) return undefined;
  const [whole, over, under] = [Number(parts[1] ?? 0), Number(parts[2]), Number(parts[3])];
  return over > 0 && over < under ? whole + over / under : undefined;
}

function decimalIn(text: string, decimalMark: '.' | ','): number | undefined {
  const bare = text.replace(/[\s\u00A0\u202F']/g, '');
  const grouped = decimalMark === ',' ? /^[-+]?\d{1,3}(\.\d{3})+(,\d+)?$/ : /^[-+]?\d{1,3}(,\d{3})+(\.\d+)?$/;
  const isGrouped = grouped.test(bare) && !/^[-+]?0/.test(bare);
  const ungrouped = isGrouped ? bare.replaceAll(decimalMark === ',' ? '.' : ',', '') : bare;
  // One mark is a decimal mark, whichever it is: a cell pasted from another sheet is not a reason to stop.
  const plain = ungrouped.replace(',', '.');
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : undefined;
}

/** A whole number in a range. */
export function wholeFrom(cell: string, low: number, high: number): number | undefined {
  const value = Number(cell);
  return Number.isInteger(value) && value >= low && value <= high ? value : undefined;
}

/** A front termination, in English or German. */
export function terminationOf(cell: string): FactOf<'section-described'>['frontTermination'] | undefined {
  const word = cell.toLowerCase().replace(/s$/, '');
  if (/^(capo|capo d'?astro|druckstab)/.test(word)) return 'capo';
  return frontTerminations.find((one) => one === word) ?? (/^agraffe/.test(word) ? 'agraffe' : undefined);
}

/** Plain or wound, as people write it in English or German. */
export function windingOf(cell: string): 'plain' | 'wound' | undefined {
  if (/^(p|plain|blank|b|no|0)$/i.test(cell)) return 'plain';
  return /^(w|wound|umsponnen|u|yes|1|2)$/i.test(cell) ? 'wound' : undefined;
}
