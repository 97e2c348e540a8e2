import { english, type Language } from '@becket/core';
import { firstProblem } from '@becket/journal';
import { z } from 'zod';
import type { ReadTable } from './read-table.ts';

/** A cell that the user changed before bringing the table in, or left out (`use: null`), and why. */
export const cellChangeSchema = z.object({
  row: z.int().positive(),
  /** Index of the column, 0 for the first. */
  column: z.int().nonnegative(),
  use: z.string().max(2000).nullable(),
  reason: z.string().min(1).max(500),
});
export type CellChange = Readonly<z.infer<typeof cellChangeSchema>>;

/** Changes of cells from data that came from outside. Throws: SyntaxError naming the first thing that does not fit. */
export function parseCellChanges(data: unknown, source: string, { say }: Language = english): CellChange[] {
  const parsed = z.array(cellChangeSchema).max(20_000).safeParse(data);
  if (parsed.success) return parsed.data;
  throw new SyntaxError(
    say('Cannot read {source} as changes of cells: a list of {fields} is needed, but {problem}.', {
      source,
      fields: '{ row, column, use, reason }',
      problem: firstProblem(parsed.error),
    }),
  );
}

/** Throws: RangeError when a change names a cell that is not there, names one twice, or has no reason. */
export function checkChanges(table: ReadTable, changes: readonly CellChange[], { say }: Language): void {
  const rows = new Set(table.rows.map(({ row }) => row));
  const seen = new Set<string>();
  for (const { row, column, reason } of changes) {
    const cell = say('row {row}, column {column}', { row, column: table.header[column] ?? column + 1 });
    if (!rows.has(row) || table.header[column] === undefined) {
      throw new RangeError(
        say(
          'Cannot change the cell in {cell}: {file} has no such cell. Take row and column from its list of problems.',
          { cell, file: table.fileName },
        ),
      );
    }
    if (seen.has(`${row}/${column}`)) {
      throw new RangeError(
        say('Cannot change the cell in {cell} twice: one change of a cell is needed.', { cell }),
      );
    }
    if (reason.trim() === '') {
      throw new RangeError(
        say('Cannot change the cell in {cell} without a reason: say why it is corrected or left out.', {
          cell,
        }),
      );
    }
    seen.add(`${row}/${column}`);
  }
}
