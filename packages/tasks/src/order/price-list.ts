import {
  currencyDigits,
  english,
  inches,
  inMetres,
  type Language,
  millimetres,
  parseMoney,
} from '@becket/core';
import { type FactOf, firstProblem, type PriceLine, priceLineSchema, type StockItem } from '@becket/journal';
import type { TaskContext } from '../context.ts';
import { numberIn } from '../import/cell.ts';
import { type ReadTable, readTable } from '../import/read-table.ts';
import { addToShop, type Shop } from './shop.ts';

/** Columns of a price list. A length has its unit in the column's name or behind the number. */
export const priceListColumns = [
  'article',
  'kind',
  'name',
  'diameter_mm',
  'length_mm',
  'sold_by',
  'pack',
  'pack_unit',
  'price',
  'lead_time_days',
] as const;
type Column = (typeof priceListColumns)[number];
const needed: readonly Column[] = ['article', 'kind', 'sold_by', 'pack', 'price'];

/** A table to fill in, with invented articles. */
export const priceListExample = `${priceListColumns.join(',')}
W-0991,wire,,0.991,,coil,500,g,14.50,10
W-1041,wire,,1.041,,coil,500,g,14.50,10
P-716,tuning pin,,7.163,63.5,pack,50,piece,31.00,14
F-4R,other,"Felt, 4.0 mm, red",,,pack,1000,mm,9.80,
`;

export interface PriceListToKeep {
  readonly supplier: string;
  readonly currency: string;
  readonly leadTime_days?: number | undefined;
  readonly bytes: Uint8Array;
  readonly fileName: string;
}

/**
 * Reads a supplier's price list and keeps it, all of it or nothing; it stands in place of the list before.
 * Throws: SyntaxError or RangeError, one sentence with row and column, when the table cannot be read.
 */
export async function keepPriceList(context: TaskContext, wish: PriceListToKeep): Promise<Shop> {
  const language = context.language ?? english;
  const supplier = wish.supplier.trim();
  if (supplier === '')
    throw new RangeError(
      language.say(
        'Cannot keep this price list: the name of the supplier is needed, nothing was found. Type it and try again.',
      ),
    );
  // Refuses what is no currency before any row is read.
  currencyDigits(wish.currency, language);
  const table = readTable(wish.bytes, wish.fileName, language);
  const lines = priceLinesOf(table, wish.currency, language);
  const list: FactOf<'price-list-kept'> = {
    kind: 'price-list-kept',
    v: 1,
    supplier,
    currency: wish.currency,
    file: wish.fileName,
    digest: table.digest,
    lines,
  };
  const described: FactOf<'supplier-described'> = {
    kind: 'supplier-described',
    v: 1,
    supplier,
    ...(wish.leadTime_days === undefined ? {} : { leadTime_days: wish.leadTime_days }),
  };
  return addToShop(context, [described, list]);
}

/** The lines of a price list. Throws: SyntaxError or RangeError with row and column. */
export function priceLinesOf(table: ReadTable, currency: string, language: Language = english): PriceLine[] {
  const { say } = language;
  const file = table.fileName;
  const places = new Map<Column, { index: number; isInches: boolean }>();
  table.header.forEach((name, index) => {
    const plain = name
      .trim()
      .toLowerCase()
      .replace(/[\s-]+/g, '_');
    const column = priceListColumns.find((one) => one === plain || one === plain.replace(/_in$/, '_mm'));
    if (column !== undefined && !places.has(column))
      places.set(column, { index, isInches: plain.endsWith('_in') });
  });
  const missing = needed.filter((column) => !places.has(column));
  if (missing.length > 0)
    throw new SyntaxError(
      say(
        'Cannot read {file} as a price list: the columns {needed} are needed, {missing} {count, plural, one {was} other {were}} not found. Name the columns so, and try again.',
        { file, needed: needed.join(', '), missing: missing.join(', '), count: missing.length },
      ),
    );
  const seen = new Map<string, number>();
  return table.rows.map(({ row, cells }) => {
    const cell = (column: Column): string => {
      const place = places.get(column);
      return place === undefined ? '' : (cells[place.index] ?? '').trim();
    };
    const wrong = (column: Column, need: string): SyntaxError =>
      new SyntaxError(
        cell(column) === ''
          ? say(
              'Cannot read row {row} of {file}: in the column {column} {need} is needed, nothing was found. Correct the cell and bring the list in again; nothing was kept.',
              { row, file, column, need },
            )
          : say(
              "Cannot read row {row} of {file}: in the column {column} {need} is needed, '{found}' was found. Correct the cell and bring the list in again; nothing was kept.",
              { row, file, column, need, found: cell(column) },
            ),
      );
    const number = (column: Column, need: string): number => {
      const read = numberIn(cell(column), table.decimalMark);
      if (read === undefined) throw wrong(column, need);
      return read.value;
    };
    const length = (column: Column, need: string): number => {
      const read = numberIn(cell(column), table.decimalMark);
      const unit = read?.unit ?? (places.get(column)?.isInches ? 'in' : 'mm');
      if (read === undefined || (unit !== 'mm' && unit !== 'in')) throw wrong(column, need);
      return inMetres(unit === 'in' ? inches(read.value) : millimetres(read.value));
    };
    const itemOf = (): StockItem => {
      switch (cell('kind').toLowerCase()) {
        case 'wire':
          return { kind: 'wire', diameter_m: length('diameter_mm', say('a diameter in millimetres')) };
        case 'tuning pin':
        case 'pin':
          return {
            kind: 'tuning pin',
            diameter_m: length('diameter_mm', say('a diameter in millimetres')),
            ...(cell('length_mm') === ''
              ? {}
              : { length_m: length('length_mm', say('a length in millimetres')) }),
          };
        case 'other': {
          if (cell('name') === '') throw wrong('name', say('what it is'));
          const unit = packUnit();
          if (unit === 'm' || unit === 'mm') return { kind: 'other', name: cell('name'), unit: 'mm' };
          if (unit === 'g' || unit === 'kg') return { kind: 'other', name: cell('name'), unit: 'g' };
          return { kind: 'other', name: cell('name'), unit };
        }
        default:
          throw wrong('kind', say('wire, tuning pin or other'));
      }
    };
    const packUnit = (): 'g' | 'kg' | 'm' | 'mm' | 'piece' | 'set' => {
      const unit = cell('pack_unit').toLowerCase() || 'piece';
      if (
        unit === 'g' ||
        unit === 'kg' ||
        unit === 'm' ||
        unit === 'mm' ||
        unit === 'piece' ||
        unit === 'set'
      )
        return unit;
      throw wrong('pack_unit', say('g, kg, m, mm, piece or set'));
    };
    const packOf = (item: StockItem): PriceLine['pack'] => {
      const size = number('pack', say('how much one holds'));
      if (!(size > 0)) throw wrong('pack', say('a number above 0'));
      const unit = packUnit();
      const scaled = unit === 'kg' || unit === 'm' ? size * 1000 : size;
      if (item.kind !== 'wire') {
        const count = Math.round(scaled);
        if (Math.abs(count - scaled) > 1e-6) throw wrong('pack', say('a whole number'));
        return { by: 'count', count };
      }
      if (unit === 'g' || unit === 'kg') return { by: 'coil mass', mass_kg: scaled / 1000 };
      if (unit === 'm' || unit === 'mm')
        return cell('sold_by').toLowerCase() === 'piece'
          ? { by: 'piece', length_m: scaled / 1000 }
          : { by: 'coil length', length_m: scaled / 1000 };
      throw wrong('pack_unit', say('for wire g, kg, m or mm'));
    };
    if (!/^(coil|piece|pack)$/i.test(cell('sold_by'))) throw wrong('sold_by', say('coil, piece or pack'));
    const article = cell('article');
    if (article === '') throw wrong('article', say("the supplier's number"));
    const before = seen.get(article);
    if (before !== undefined)
      throw new SyntaxError(
        say(
          "Cannot read row {row} of {file}: each article once is needed, '{article}' stands in row {before} as well. Remove one of them; nothing was kept.",
          { row, file, article, before },
        ),
      );
    seen.set(article, row);
    const item = itemOf();
    const price = priceIn(cell('price'), { currency, table, row }, language);
    const lead = cell('lead_time_days');
    const line = {
      article,
      item,
      pack: packOf(item),
      priceMinorUnits: price,
      ...(lead === '' ? {} : { leadTime_days: number('lead_time_days', say('a whole number of days')) }),
    };
    const parsed = priceLineSchema.safeParse(line);
    if (!parsed.success)
      throw new SyntaxError(
        say(
          'Cannot read row {row} of {file}: {problem}. Correct the row and bring the list in again; nothing was kept.',
          { row, file, problem: firstProblem(parsed.error) },
        ),
      );
    return parsed.data;
  });
}

function priceIn(
  typed: string,
  { currency, table, row }: { readonly currency: string; readonly table: ReadTable; readonly row: number },
  language: Language,
): number {
  const { say } = language;
  try {
    const price = parseMoney(typed, currency, { decimalSign: table.decimalMark }, language);
    if (price < 0)
      throw new RangeError(
        say("a price of 0 or more is needed, '{found}' was found. Correct the cell.", { found: typed }),
      );
    return price;
  } catch (error) {
    throw new SyntaxError(
      say('Cannot read row {row} of {file}: {problem}', {
        row,
        file: table.fileName,
        problem: error instanceof Error ? error.message : String(error),
      }),
    );
  }
}
