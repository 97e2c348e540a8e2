import { english, type Language, type Message, message } from '@becket/core';
import {
  type Job,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  readingQuantityNames,
  unitsForDimension,
} from '@becket/journal';
import {
  type CellChange,
  type ColumnMapping,
  type ColumnMeaning,
  type ImportPlan,
  LARGEST_FILE_BYTES,
  planImport,
  type ReadTable,
  readTable,
  suggestMapping,
} from '@becket/tasks';
import { sentenceOf } from '../../desk/sentence-of.ts';

/** A table on its way in: nothing of it is in the job yet. */
export interface TableOnItsWay {
  readonly table: ReadTable;
  readonly mapping: ColumnMapping;
  readonly changes: readonly CellChange[];
}

/**
 * Reads a file as a table and suggests what its columns mean.
 * Throws: RangeError for a file that is too large, before it is read; what `readTable` throws.
 */
export async function readFile(
  file: Pick<File, 'name' | 'size' | 'arrayBuffer'>,
  language: Language = english,
): Promise<TableOnItsWay> {
  // A file that is refused for its size is not read into memory first: the empty bytes only fetch the same sentence.
  const table =
    file.size > LARGEST_FILE_BYTES
      ? readTable({ byteLength: file.size } as Uint8Array, file.name, language)
      : readTable(new Uint8Array(await file.arrayBuffer()), file.name, language);
  return { table, mapping: suggestMapping(table), changes: [] };
}

/** What bringing it in would do; or why the mapping cannot be. */
export function planOf(
  job: Job,
  { table, mapping, changes }: TableOnItsWay,
  language: Language = english,
):
  | { readonly plan: ImportPlan; readonly sentence: undefined }
  | { readonly plan: undefined; readonly sentence: string } {
  try {
    return { plan: planImport(job, table, mapping, changes, language), sentence: undefined };
  } catch (error) {
    return { plan: undefined, sentence: sentenceOf(error, language) };
  }
}

/** Says what a column means. A column that was the note before is left out once another is. */
export function withMeaning(coming: TableOnItsWay, column: number, meaning: ColumnMeaning): TableOnItsWay {
  const columns = coming.mapping.columns.map((one, index) => {
    if (index === column) return meaning;
    return meaning.is === 'note' && one.is === 'note' ? ({ is: 'left out' } as const) : one;
  });
  return { ...coming, mapping: { ...coming.mapping, columns } };
}

/** Changes a cell or leaves it out (`use: null`); a later change of the same cell stands in place of the earlier. */
export function withChange(coming: TableOnItsWay, change: CellChange): TableOnItsWay {
  const others = coming.changes.filter(({ row, column }) => row !== change.row || column !== change.column);
  return { ...coming, changes: [...others, change] };
}

export function withoutChange(
  coming: TableOnItsWay,
  { row, column }: Pick<CellChange, 'row' | 'column'>,
): TableOnItsWay {
  return { ...coming, changes: coming.changes.filter((one) => one.row !== row || one.column !== column) };
}

/** Every meaning a column can be given, by a name that fits a list: 'note', 'reading/wire-diameter'. */
export const meaningChoices: readonly { readonly name: string; readonly words: Message }[] = [
  { name: 'left out', words: message('left out') },
  { name: 'note', words: message('note') },
  { name: 'section', words: message('section') },
  { name: 'bridge', words: message('bridge') },
  { name: 'front termination', words: message('front termination') },
  { name: 'strings', words: message('strings of the note') },
  { name: 'winding', words: message('plain or wound') },
  { name: 'layers', words: message('layers of winding') },
  { name: 'remark', words: message('remark') },
  ...readingQuantityNames.map((quantity) => ({
    name: `reading/${quantity}`,
    words: readingQuantities[quantity].label,
  })),
];

export function nameOfMeaning(meaning: ColumnMeaning): string {
  return meaning.is === 'reading' ? `reading/${meaning.quantity}` : meaning.is;
}

/** The meaning of a name from the list; a quantity keeps the unit it had when that still fits. */
export function meaningOfName(name: string, before: ColumnMeaning): ColumnMeaning {
  if (!name.startsWith('reading/')) return { is: name } as ColumnMeaning;
  const quantity = name.slice('reading/'.length) as ReadingQuantityName;
  const units = unitsOf(quantity);
  const kept = before.is === 'reading' && units.includes(before.unit) ? before.unit : units[0]!;
  return { is: 'reading', quantity, unit: kept };
}

export function unitsOf(quantity: ReadingQuantityName): ReadUnit[] {
  return unitsForDimension(readingQuantities[quantity].dimension);
}

/** Reasons that stand on a changed cell unless another is typed. */
export const usualReasons = {
  changed: message('slip in the table'),
  'left out': message('cannot be right'),
} as const;
