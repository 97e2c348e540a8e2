import Papa from 'papaparse';
import type { PageTree } from '../page-tree.ts';

/**
 * The paper's table for machines as CSV: UTF-8, comma, CRLF, one header line, quotes where they are needed.
 *
 * Text that a spreadsheet would take for a formula is written with an apostrophe before it; a number below zero is none.
 * Source: RFC 4180 (2005).
 */
export function renderCsv({ machineTable: { columns, rows } }: Pick<PageTree, 'machineTable'>): string {
  const text = Papa.unparse(
    { fields: [...columns], data: rows.map((row) => row.map((cell) => cell ?? '')) },
    { escapeFormulae: formula, newline: '\r\n' },
  );
  return `${text}\r\n`;
}

/** What begins like a formula; as the library has it, but for plain numbers below zero. */
const formula = /^(?!-\d+(\.\d+)?(e[+-]?\d+)?$)[=+\-@\t\r]/;
