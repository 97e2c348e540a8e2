import { english, type Language } from '@becket/core';
import {
  firstProblem,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  readingQuantityNames,
  readUnits,
  siFromRead,
  unitsForDimension,
} from '@becket/journal';
import { z } from 'zod';
import { isBlank, numberIn } from './cell.ts';
import type { ReadTable } from './read-table.ts';

/** What one column of the user's table means. */
export const columnMeaningSchema = z.discriminatedUnion('is', [
  z.object({ is: z.literal('note') }),
  z.object({ is: z.literal('section') }),
  z.object({ is: z.literal('bridge') }),
  z.object({ is: z.literal('front termination') }),
  z.object({ is: z.literal('strings') }),
  z.object({ is: z.literal('winding') }),
  z.object({ is: z.literal('layers') }),
  z.object({
    is: z.literal('reading'),
    quantity: z.enum(readingQuantityNames),
    unit: z.enum(readUnits),
    /** Which string of the unison the column belongs to, where it says. */
    string: z.int().min(1).max(3).optional(),
  }),
  /** Words about the note, kept as they stand. */
  z.object({ is: z.literal('remark') }),
  z.object({ is: z.literal('left out') }),
]);
export type ColumnMeaning = z.infer<typeof columnMeaningSchema>;

/** How a table is to be read: one meaning for each column, in the table's order. */
export const columnMappingSchema = z.object({
  columns: z.array(columnMeaningSchema).min(1).max(200),
  decimalMark: z.enum(['.', ',']),
  noteLetters: z.enum(['international', 'german']),
  /** Where the figures come from: read by whoever kept the table, or copied from another paper. Measured without it. */
  origin: z.enum(['measured', 'copied']).optional(),
});
export type ColumnMapping = z.infer<typeof columnMappingSchema>;

/** A mapping from data that came from outside. Throws: SyntaxError naming the first thing that does not fit. */
export function parseMapping(data: unknown, source: string, { say }: Language = english): ColumnMapping {
  const parsed = columnMappingSchema.safeParse(data);
  if (parsed.success) return parsed.data;
  throw new SyntaxError(
    say('Cannot read {source} as a mapping of columns: {problem}. Start from a mapping that was suggested.', {
      source,
      problem: firstProblem(parsed.error),
    }),
  );
}

/** Words by which a column's meaning is guessed, English and German; the first that fits wins. */
const wordsOfMeaning: readonly (readonly [
  RegExp,
  Exclude<ColumnMeaning['is'], 'reading'> | ReadingQuantityName,
])[] = [
  [/\b(remarks?|comments?|bemerkung|notiz|anmerkung)/i, 'remark'],
  [/\b(inner|first|1st|innere?r?|erste)\b.*\b(layer|wrap|winding|lage)/i, 'inner-layer-diameter'],
  [/\b(bare|blank).*(front|agraffe|near|top|vorn|oben)/i, 'bare-front'],
  [/\b(bare|blank).*(back|bridge|far|bottom|hinten|unten|steg)/i, 'bare-back'],
  [/(loop|öse).*(winding|umsp)/i, 'loop-to-winding'],
  [/(winding|wound|umsp\S*)\s*(length|länge)|^winding\s*\(/i, 'winding-length'],
  [/(over.?all|over.*(winding|wrap)|outside|outer|aussen|außen|gesamt|\bOD\b)/i, 'over-all-diameter'],
  [/(core|kern)/i, 'core-diameter'],
  [/(hitch|anhang).*(pin|stift)/i, 'hitch-pin-diameter'],
  [/(pin|wirbel).*(torque|moment)/i, 'pin-torque'],
  [/(pin|wirbel).*(length|länge)/i, 'pin-length'],
  [/(pin|wirbel).*(height|höhe)/i, 'pin-height'],
  [/(pin|wirbel).*(coils?|windungen)/i, 'pin-coils'],
  [/\b(pin|wirbel)\b/i, 'pin-diameter'],
  [/front.*(length|länge)|vorder.*länge|^front\s*\(/i, 'front-length'],
  [/back.*(length|länge)|hinter.*länge|^back\s*\(/i, 'back-length'],
  [/(speaking|sounding|klingend|mensur|\bSL\b)|^(length|länge)/i, 'speaking-length'],
  [/(layers|lagen)/i, 'layers'],
  [/(plain|wound|umsponnen|blank)/i, 'winding'],
  [/(strings|chor|saiten|unison|per note)/i, 'strings'],
  [/(wire|draht|gauge|diam|ø|durchm|stärke|mic\b|micrometer)/i, 'wire-diameter'],
  [/(section|bereich|feld|abschnitt)/i, 'section'],
  [/(termination|agraffe|auflage|front end)/i, 'front termination'],
  [/(bridge|steg)/i, 'bridge'],
  [/^(note|key|ton|taste|nr\.?|no\.?|#)\b|\b(note|key|taste)\b/i, 'note'],
];

/** Names of a column that reads the same again as the reading before it. */
const AGAIN = /^(again|repeat|second reading|2nd reading|nochmals?|wiederholung)\b/i;

/** A first mapping from the column names and from what the numbers can be; the user corrects it. */
export function suggestMapping(table: ReadTable): ColumnMapping {
  const columns: ColumnMeaning[] = [];
  for (const [index, name] of table.header.entries()) {
    const before = columns.findLast((column) => column.is === 'reading');
    const meaning =
      AGAIN.test(name) && before !== undefined
        ? before.quantity
        : (wordsOfMeaning.find(([words]) => words.test(name))?.[1] ?? 'left out');
    if (meaning in readingQuantities) {
      const quantity = meaning as ReadingQuantityName;
      const unit = suggestUnit(table, index, quantity);
      const string = stringNumberIn(name);
      columns.push({ is: 'reading', quantity, unit, ...(string === undefined ? {} : { string }) });
    } else if (meaning === 'note' && columns.some(({ is }) => is === 'note')) {
      columns.push({ is: 'left out' });
    } else {
      columns.push({ is: meaning } as ColumnMeaning);
    }
  }
  return { columns, decimalMark: table.decimalMark, noteLetters: 'international' };
}

/** Which string of the unison a column's name speaks of, counted from the bass side. */
function stringNumberIn(name: string): number | undefined {
  const number = /\b(?:str(?:ing)?\.?|saite)\s*([123])\b/i.exec(name)?.[1];
  if (number !== undefined) return Number(number);
  return /\b(left|linke) (string|saite)\b/i.test(name) ? 1 : undefined;
}

const unitWords: readonly (readonly [RegExp, ReadUnit])[] = [
  [/\bmm\b/i, 'mm'],
  [/µm|\bum\b|micron/i, 'um'],
  [/\b(mil|mils|thou|thousandths?)\b|\.001/i, 'mil'],
  [/\bin[·*. -]?lbs?f?\b/i, 'in·lbf'],
  [/\bN[·*. ]?m\b/, 'N·m'],
  [/\bkgf?[·*. -]?cm\b/i, 'kgf·cm'],
  [/\b(in|inch|inches|zoll)\b|"/i, 'in'],
  [/\(m\)|\bmetres?\b/i, 'm'],
];

/** The unit in the column's name; without one, the unit in which most of its cells are possible. */
function suggestUnit(table: ReadTable, column: number, quantity: ReadingQuantityName): ReadUnit {
  const units = unitsForDimension(readingQuantities[quantity].dimension);
  const named = unitWords.find(
    ([words, unit]) => units.includes(unit) && words.test(table.header[column] ?? ''),
  )?.[1];
  if (named !== undefined) return named;
  const [low, high] = readingQuantities[quantity].possible;
  const possible = units.map((unit) => {
    const count = table.rows.filter(({ cells }) => {
      const cell = cells[column] ?? '';
      const value = isBlank(cell) ? undefined : numberIn(cell, table.decimalMark)?.value;
      return value !== undefined && siFromRead(value, unit) >= low && siFromRead(value, unit) <= high;
    }).length;
    return { unit, count };
  });
  return possible.reduce((best, one) => (one.count > best.count ? one : best)).unit;
}
