import { english, type Language } from '@becket/core';
import { digestOf } from '@becket/journal';
import Papa from 'papaparse';

/** Largest file that is read, most rows and columns: a piano has some 230 strings, so all are far above any real record. */
export const LARGEST_FILE_BYTES = 20_000_000;
export const MOST_ROWS = 2000;
export const MOST_COLUMNS = 100;

export interface TableRow {
  /** Row number as a spreadsheet counts, 1 for the first row of the file. */
  readonly row: number;
  /** One cell for each column, trimmed; '' where the row is shorter than the header. */
  readonly cells: readonly string[];
}

/** A table as it was found in a file; nothing is interpreted yet but the decimal mark. */
export interface ReadTable {
  readonly fileName: string;
  /** SHA-256 of the file's bytes, hexadecimal. */
  readonly digest: string;
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
  readonly delimiter: string;
  readonly decimalMark: '.' | ',';
  readonly header: readonly string[];
  readonly rows: readonly TableRow[];
  /** What the user should know of how the file was read, one sentence each. */
  readonly notices: readonly string[];
}

/**
 * The table in the bytes of a CSV file.
 *
 * Encoding: UTF-8 (with or without a byte order mark), UTF-16 with one, else Windows-1252, which contains Latin-1.
 * The decimal mark is the one that most
 * number-like cells use. The header is the first row that is mostly filled and has no number in it.
 *
 * Throws: RangeError for a file that is empty, too large or too long; SyntaxError when it is not a text table.
 */
export function readTable(bytes: Uint8Array, fileName: string, language: Language = english): ReadTable {
  const { say } = language;
  requireTableSize(bytes.byteLength, fileName, language);
  const notices: string[] = [];
  const { text, encoding } = decode(bytes, fileName, language);
  if (encoding === 'Windows-1252') {
    notices.push(
      say(
        'The file is not UTF-8; it was read as Windows-1252 (Latin-1). Look at words with accents before you go on.',
      ),
    );
  }
  // The parser is asked for one row more than is allowed, so that a long file is refused without being read whole.
  const parsed = Papa.parse<string[]>(text, {
    delimiter: delimiterOf(text),
    preview: MOST_ROWS + 1,
  });
  if (parsed.data.length > MOST_ROWS) {
    throw new RangeError(
      say(
        'Cannot read {file}: up to {most} rows are needed, more were found. Export only the sheet with the readings and try again.',
        { file: fileName, most: MOST_ROWS },
      ),
    );
  }
  const broken = parsed.errors.find(({ type }) => type === 'Quotes');
  if (broken !== undefined) {
    throw new SyntaxError(
      say(
        'Cannot read {file} as a table: a quotation mark that opens a cell has to close it, one in row {row} does not. Mend that row, or export the sheet as CSV again.',
        { file: fileName, row: (broken.row ?? 0) + 1 },
      ),
    );
  }
  const all = parsed.data.map((cells, index) => ({
    row: index + 1,
    cells: cells.map((cell) => cell.trim()),
  }));
  const filled = all.filter(({ cells }) => cells.some((cell) => cell !== ''));
  const headerIndex = headerPlace(filled);
  const head = filled[headerIndex];
  if (head === undefined || filled.length < 2) {
    throw new SyntaxError(
      say(
        'Cannot read {file} as a table: a row of column names and at least one row of readings are needed, {count} filled rows were found. Export the sheet as CSV and try again.',
        { file: fileName, count: filled.length },
      ),
    );
  }
  if (head.cells.filter((cell) => cell !== '').length < 2) {
    throw new SyntaxError(
      say(
        'Cannot read {file} as a table: at least two columns are needed, one was found. Check that the cells are separated by commas, semicolons or tabs.',
        { file: fileName },
      ),
    );
  }
  if (headerIndex > 0)
    notices.push(
      say('The column names were taken from row {row}; the rows above it were left out.', { row: head.row }),
    );
  const width = Math.max(head.cells.length, ...filled.map(({ cells }) => cells.length));
  if (width > MOST_COLUMNS) {
    throw new RangeError(
      say(
        'Cannot read {file}: up to {most} columns are needed, {count} were found. Export only the columns with the readings and try again.',
        { file: fileName, most: MOST_COLUMNS, count: width },
      ),
    );
  }
  const header = Array.from(
    { length: width },
    (_, index) => head.cells[index] || say('column {number}', { number: index + 1 }),
  );
  const rows = filled
    .slice(headerIndex + 1)
    .map(({ row, cells }) => ({ row, cells: header.map((_, index) => cells[index] ?? '') }));
  const decimalMark = decimalMarkOf(rows);
  if (decimalMark === ',') notices.push(say('Numbers were read with a decimal comma.'));
  return {
    fileName,
    digest: digestOf(bytes),
    encoding,
    delimiter: parsed.meta.delimiter,
    decimalMark,
    header,
    rows,
    notices,
  };
}

/** Throws a RangeError for a file that is too large to be read as a table: ask before reading it into memory. */
export function requireTableSize(bytes: number, fileName: string, { say, fixed }: Language = english): void {
  if (bytes <= LARGEST_FILE_BYTES) return;
  const megabytes = (size: number) => fixed(size / 1e6, size % 1e6 === 0 ? 0 : 1);
  throw new RangeError(
    say(
      'Cannot read {file}: a file of up to {most} MB is needed, {found} MB were found. Export only the sheet with the readings and try again.',
      { file: fileName, most: megabytes(LARGEST_FILE_BYTES), found: megabytes(bytes) },
    ),
  );
}

function decode(
  bytes: Uint8Array,
  fileName: string,
  { say }: Language,
): { text: string; encoding: ReadTable['encoding'] } {
  if (bytes.byteLength === 0)
    throw new RangeError(
      say('Cannot read {file}: a table is needed, an empty file was found.', { file: fileName }),
    );
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    return {
      text: new TextDecoder(first === 0xff ? 'utf-16le' : 'utf-16be').decode(bytes),
      encoding: 'UTF-16',
    };
  }
  const isSpreadsheet = first === 0x50 && second === 0x4b; // 'PK': a zip, as spreadsheets of today are
  if (isSpreadsheet || bytes.includes(0)) {
    throw new SyntaxError(
      say(
        'Cannot read {file} as a table: a text file (CSV) is needed, {kind, select, spreadsheet {a spreadsheet or zip} other {a binary file}} was found. In the spreadsheet, choose "save as CSV" and bring that file in.',
        { file: fileName, kind: isSpreadsheet ? 'spreadsheet' : 'binary' },
      ),
    );
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' };
  } catch {
    return { text: windows1252(bytes), encoding: 'Windows-1252' };
  }
}

/** What Windows-1252 has where Latin-1 has control characters, 0x80 to 0x9F. Source: WHATWG Encoding, index windows-1252. */
const BETWEEN_80_AND_9F = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** Node.js 20 takes windows-1252 for Latin-1, browsers take Latin-1 for windows-1252: after this both mean the latter. */
function windows1252(bytes: Uint8Array): string {
  return new TextDecoder('latin1')
    .decode(bytes)
    .replace(/[\u0080-\u009f]/g, (letter) => BETWEEN_80_AND_9F[letter.charCodeAt(0) - 0x80]!);
}

/**
 * The separator: the first of tab, semicolon and bar that stands in most lines, else the comma. The parser's own guess
 * takes the comma of decimal numbers for a separator in short tables.
 */
function delimiterOf(text: string): string {
  const lines = text
    .slice(0, 20_000)
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '')
    .slice(0, 50);
  return (
    ['\t', ';', '|'].find((mark) => lines.filter((line) => line.includes(mark)).length > lines.length / 2) ??
    ','
  );
}

const looksLikeNumber = (cell: string): boolean => /^[-+]?\d+([.,]\d+)?$/.test(cell);

function headerPlace(rows: readonly TableRow[]): number {
  const widest = Math.max(0, ...rows.map(({ cells }) => cells.filter((cell) => cell !== '').length));
  const place = rows.findIndex(({ cells }) => {
    const own = cells.filter((cell) => cell !== '');
    return own.length >= Math.max(2, widest / 2) && !own.some(looksLikeNumber);
  });
  return Math.max(0, place);
}

function decimalMarkOf(rows: readonly TableRow[]): '.' | ',' {
  let points = 0;
  let commas = 0;
  for (const { cells } of rows) {
    for (const cell of cells) {
      if (/^[-+]?\d*\.\d+$/.test(cell)) points += 1;
      else if (/^[-+]?\d*,\d+$/.test(cell)) commas += 1;
    }
  }
  return commas > points ? ',' : '.';
}
