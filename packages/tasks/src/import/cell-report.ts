import type { Language } from '@becket/core';
import type { ColumnMapping, ColumnMeaning } from './column-mapping.ts';
import type { ReadTable, TableRow } from './read-table.ts';

/** A cell that cannot be read; nothing is brought in while one is left. */
export interface CellProblem {
  readonly row: number;
  readonly column: number;
  readonly columnName: string;
  readonly found: string;
  readonly expected: string;
  readonly sentence: string;
  /** What the cell may have been meant to say, in the column's unit, where one slip explains it; with a decimal point. */
  readonly suggestion: string | undefined;
}

/** A cell that can be read and is doubted; it may stay. */
export type CellQuestion = CellProblem;

/** What is found wrong with the cells of one table, and what is doubted, as it is read. */
export class CellReport {
  private readonly foundProblems: CellProblem[] = [];
  private readonly foundQuestions: CellQuestion[] = [];
  private readonly rowsByNumber: ReadonlyMap<number, TableRow>;

  constructor(
    private readonly table: ReadTable,
    private readonly mapping: ColumnMapping,
    readonly language: Language,
  ) {
    this.rowsByNumber = new Map(table.rows.map((row) => [row.row, row]));
  }

  /** From the first row to the last, in a row from left to right. */
  get problems(): readonly CellProblem[] {
    return [...this.foundProblems].sort(inOrder);
  }

  get questions(): readonly CellQuestion[] {
    return [...this.foundQuestions].sort(inOrder);
  }

  columnName(column: number): string {
    return this.table.header[column] ?? this.language.say('column {number}', { number: column + 1 });
  }

  /** Index of the column that holds this; −1 where none does. */
  columnOf(meaning: ColumnMeaning['is']): number {
    return this.mapping.columns.findIndex(({ is }) => is === meaning);
  }

  /** What stands in a cell of the file, whatever the user made of it. */
  textAt(row: number, column: number): string {
    return this.rowsByNumber.get(row)?.cells[column] ?? '';
  }

  /** A cell that cannot be read. */
  problem(
    row: number,
    column: number,
    found: string,
    expected: string,
    { hint, suggestion }: { readonly hint?: string; readonly suggestion?: string | undefined } = {},
  ): void {
    const { say, plain } = this.language;
    const columnName = this.columnName(column);
    const cell = { row, column: columnName, expected, found };
    const sentence = [
      hint === undefined
        ? say("Row {row}, column '{column}': {expected} is needed, '{found}' was found.", cell)
        : say("Row {row}, column '{column}': {expected} is needed, '{found}' was found ({hint}).", {
            ...cell,
            hint,
          }),
      ...(suggestion === undefined
        ? []
        : [say('Was {suggestion} meant?', { suggestion: plain(Number(suggestion)) })]),
    ].join(' ');
    this.foundProblems.push({ row, column, columnName, found, expected, sentence, suggestion });
  }

  /** A problem that has a sentence of its own already. */
  problemInWords(problem: Omit<CellProblem, 'suggestion'>): void {
    this.foundProblems.push({ ...problem, suggestion: undefined });
  }

  /** A cell that can be read and is doubted. */
  question(row: number, column: number, doubt: string, suggestion?: string): void {
    this.foundQuestions.push({
      row,
      column,
      columnName: this.columnName(column),
      found: this.textAt(row, column),
      expected: doubt,
      sentence: this.language.say("Row {row}, column '{column}': {doubt}", {
        row,
        column: this.table.header[column] ?? column + 1,
        doubt,
      }),
      suggestion,
    });
  }
}

const inOrder = (a: CellProblem, b: CellProblem): number => a.row - b.row || a.column - b.column;
