/*
 * A spreadsheet as somebody keeps it beside the piano: two or three readings a note, gaps, wear and rust, units that
 * change from column to column. The errors are drawn from a seeded source of chance, so that the file can be made again.
 */
import type { ColumnMeaning } from '../../packages/tasks/src/import/column-mapping.ts';
import type { TrueNote } from './recipe.ts';
import type { Chance } from './seeded-chance.ts';

export interface MessyColumn {
  readonly header: string;
  readonly meaning: ColumnMeaning;
  /** The cell of one note; undefined for a gap. */
  readonly cell: (note: TrueNote) => string | undefined;
}

/** One cell that the person who filled the table in got wrong. */
export interface WrongCell {
  readonly key: number;
  readonly header: string;
  readonly written: (note: TrueNote) => string;
  readonly meant: (note: TrueNote) => string;
  readonly what: string;
}

/** Where in the file it stands: rows count from 1, as a spreadsheet shows them; columns from 0. */
export interface PlacedWrongCell {
  readonly key: number;
  readonly row: number;
  readonly column: number;
  readonly header: string;
  readonly written: string;
  readonly meant: string;
  readonly what: string;
}

export interface MessyTable {
  readonly columns: readonly MessyColumn[];
  /** Keys in the order of their rows. */
  readonly order: readonly number[];
  readonly wrongCells: readonly WrongCell[];
  readonly delimiter: ',' | ';';
  /** Rows above the header. */
  readonly titleRows: readonly (readonly string[])[];
  readonly chance: Chance;
}

/** Rows of cells as text, and the wrong cells with their places. */
export function messyRows(
  table: MessyTable,
  notes: readonly TrueNote[],
): { rows: string[][]; wrongCells: PlacedWrongCell[] } {
  const { columns, order, chance } = table;
  const wrongCells: PlacedWrongCell[] = [];
  const rows: string[][] = [
    ...table.titleRows.map((row) => [...row, ...Array<string>(columns.length - row.length).fill('')]),
    columns.map((column) => column.header),
  ];
  for (const key of order) {
    const note = notes.find((one) => one.key === key)!;
    const row = rows.length + 1;
    rows.push(
      columns.map(({ header, cell: cellOf }, column) => {
        const wrong = table.wrongCells.find((one) => one.key === key && one.header === header);
        const cell = cellOf(note);
        if (wrong === undefined) return cell ?? blank(chance);
        const written = wrong.written(note);
        wrongCells.push({ key, row, column, header, written, meant: wrong.meant(note), what: wrong.what });
        return written;
      }),
    );
  }
  return { rows, wrongCells };
}

const blank = (chance: Chance): string => (chance.happens(0.25) ? '—' : chance.happens(0.1) ? '-' : '');

/** A field of a CSV file, in quotation marks where it has to be. Source: RFC 4180, 2.6 and 2.7. */
export function csvText(rows: readonly (readonly string[])[], delimiter: string): string {
  const field = (text: string): string =>
    text.includes(delimiter) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  return rows.map((row) => `${row.map(field).join(delimiter)}\r\n`).join('');
}

/** How a micrometer errs on old wire: one offset for the piano, one for each note, one for each reading. */
export interface WearAndRust {
  readonly pianoOffset_mm: number;
  readonly noteSpread_mm: number;
  readonly readingSpread_mm: number;
  /** Rust stands on the wire and makes it read thick. */
  readonly rusted: (key: number) => boolean;
  readonly rust_mm: number;
}

/** A reader of wire: the same note keeps its own offset over its readings. Gives millimetres. */
export function wireReader(wear: WearAndRust, chance: Chance): (note: TrueNote, true_mm: number) => number {
  const ofNote = new Map<number, number>();
  return (note, true_mm) => {
    let offset = ofNote.get(note.key);
    if (offset === undefined) {
      offset =
        chance.normal(wear.pianoOffset_mm, wear.noteSpread_mm) +
        (wear.rusted(note.key) ? Math.abs(chance.normal(wear.rust_mm, wear.rust_mm / 3)) : 0);
      ofNote.set(note.key, offset);
    }
    return true_mm + offset + chance.normal(0, wear.readingSpread_mm);
  };
}

/** Inches with four decimals and, as many write them, without the zero: '.0391'. */
export const asInches = (length_mm: number, decimals = 4): string =>
  (length_mm / 25.4).toFixed(decimals).replace(/^0\./, '.');

/** Inches in sixteenths, as a tape shows them: '25 3/8'. */
export function asSixteenths(length_mm: number): string {
  const sixteenths = Math.round((length_mm / 25.4) * 16);
  const whole = Math.floor(sixteenths / 16);
  let [over, under] = [sixteenths % 16, 16];
  if (over === 0) return `${whole}`;
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}

export const withDecimalComma = (text: string): string => text.replace('.', ',');

/** A note as people write it: by name, by flat name, in small letters, or by key number. */
export function spelledNote(note: TrueNote, chance: Chance): string {
  if (chance.happens(0.12)) return `${note.key}`;
  const flats: Readonly<Record<string, string>> = {
    'A#': 'Bb',
    'C#': 'Db',
    'D#': 'Eb',
    'F#': 'Gb',
    'G#': 'Ab',
  };
  const [letters, octave] = [note.note.slice(0, -1), note.note.slice(-1)];
  const flat = flats[letters];
  if (flat !== undefined && chance.happens(0.4)) return `${flat}${octave}`;
  return chance.happens(0.1) ? note.note.toLowerCase() : note.note;
}
