import {
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

/** Words by which a column's meaning is guessed, English and German; the first that fits wins. */
const wordsOfMeaning: readonly (readonly [
  RegExp,
  Exclude<ColumnMeaning['is'], 'reading'> | ReadingQuantityName,
])[] = [
  [/\b(remarks?|comments?|bemerkung|notiz|anmerkung)/i, 'remark'],
  [/\b(inner|first|innere?r?|erste)\b.*\b(layer|wrap|winding|lage)/i, 'inner-layer-diameter'],
  [/\b(bare|blank).*(front|agraffe|near|vorn)/i, 'bare-front'],
  [/\b(bare|blank).*(back|bridge|far|hinten|steg)/i, 'bare-back'],
  [/(loop|öse).*(winding|umsp)/i, 'loop-to-winding'],
  [/(winding|wound|umsp\S*)\s*(length|länge)/i, 'winding-length'],
  [/(over.?all|outside|outer|aussen|außen|gesamt|\bOD\b)/i, 'over-all-diameter'],
  [/(core|kern)/i, 'core-diameter'],
  [/(pin|wirbel).*(torque|moment)/i, 'pin-torque'],
  [/(pin|wirbel).*(diam|size|ø|durchm|stärke)/i, 'pin-diameter'],
  [/front.*(length|länge)|vorder.*länge/i, 'front-length'],
  [/back.*(length|länge)|hinter.*länge/i, 'back-length'],
  [/(speaking|sounding|klingend|mensur|\bSL\b)|^(length|länge)/i, 'speaking-length'],
  [/(layers|lagen)/i, 'layers'],
  [/(plain|wound|umsponnen|blank)/i, 'winding'],
  [/(strings|chor|saiten|unison)/i, 'strings'],
  [/(wire|draht|gauge|diam|ø|durchm|stärke|mic\b|micrometer)/i, 'wire-diameter'],
  [/(section|bereich|feld|abschnitt)/i, 'section'],
  [/(termination|agraffe|auflage)/i, 'front termination'],
  [/(bridge|steg)/i, 'bridge'],
  [/^(note|key|ton|taste|nr\.?|no\.?|#)\b|\b(note|key|taste)\b/i, 'note'],
];

/** A first mapping from the column names and from what the numbers can be; the user corrects it. */
export function suggestMapping(table: ReadTable): ColumnMapping {
  let hasNote = false;
  const columns = table.header.map((name, index): ColumnMeaning => {
    const meaning = wordsOfMeaning.find(([words]) => words.test(name))?.[1] ?? 'left out';
    if (meaning === 'note') {
      if (hasNote) return { is: 'left out' };
      hasNote = true;
      return { is: 'note' };
    }
    if (!(meaning in readingQuantities)) return { is: meaning } as ColumnMeaning;
    const quantity = meaning as ReadingQuantityName;
    const string = /\bstr(?:ing)?\.?\s*([123])\b|\bsaite\s*([123])\b/i.exec(name);
    const number = Number(string?.[1] ?? string?.[2]);
    return {
      is: 'reading',
      quantity,
      unit: suggestUnit(table, index, quantity),
      ...(Number.isInteger(number) && number > 0 ? { string: number } : {}),
    };
  });
  return { columns, decimalMark: table.decimalMark, noteLetters: 'international' };
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
