import { message } from '@becket/core';
import type { Job, ReadingQuantityName } from '@becket/journal';
import { type StringRow, stringRows } from './strings-state.ts';

/** Where Enter goes among the strings: they are taken in one of these orders, from section to section. */
export const stringOrders = {
  next: message('the next string'),
  'next-open': message('the next string without a value'),
  'same-string': message('the same string of the next note'),
  'every-second': message('the same string of every second note'),
  'every-third': message('the same string of every third note'),
} as const;
export type StringOrder = keyof typeof stringOrders;

const strides: Partial<Record<StringOrder, number>> = {
  'same-string': 1,
  'every-second': 2,
  'every-third': 3,
};

/**
 * The string that comes after one, and its section: at the end of a section the next one that has strings of this
 * quantity goes on. Undefined at the end of the compass. A note with fewer strings gives its last one.
 */
export function stringAfter(
  job: Job,
  {
    section,
    quantity,
    from,
    order,
    direction,
  }: {
    readonly section: string | undefined;
    readonly quantity: ReadingQuantityName;
    readonly from: Pick<StringRow, 'key' | 'string'>;
    readonly order: StringOrder;
    readonly direction: 1 | -1;
  },
): { readonly section: string; readonly row: StringRow } | undefined {
  const at = job.sections.findIndex((one) => one.section === section);
  if (at === -1) return undefined;
  const stride = strides[order];
  const sections = direction > 0 ? job.sections.slice(at) : job.sections.slice(0, at + 1).reverse();
  for (const { section: name } of sections) {
    const rows = stringRows(job, { section: name, quantity });
    const lastOf = (key: number) =>
      Math.max(...rows.filter((row) => row.key === key).map(({ string }) => string));
    const comesNext = (row: StringRow): boolean => {
      const notes = (row.key - from.key) * direction;
      if (stride !== undefined)
        return notes >= stride && row.string === Math.min(from.string, lastOf(row.key));
      const isBeyond = notes > 0 || (notes === 0 && (row.string - from.string) * direction > 0);
      return isBeyond && (order === 'next' || (row.readings.length === 0 && row.absence === undefined));
    };
    const row = direction > 0 ? rows.find(comesNext) : rows.findLast(comesNext);
    if (row !== undefined) return { section: name, row };
  }
  return undefined;
}
