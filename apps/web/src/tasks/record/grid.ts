import { type Message, message } from '@becket/core';
import {
  type Absence,
  type AsFoundNote,
  type AsFoundRecord,
  type Figure,
  type ReadingQuantityName,
  readingQuantities,
  type Section,
  type StandingReading,
} from '@becket/journal';
import type { ShownUnit } from '../../parts/length-text.ts';
import type { ReadingOrder } from './reading-order.ts';

/** A column of the grid: one quantity, over the whole compass. */
export interface GridColumn {
  readonly quantity: ReadingQuantityName;
  /** The words of the journal. */
  readonly label: Message;
  /** Short enough for the head of a column. */
  readonly short: Message;
  /** Which strings the quantity belongs to. */
  readonly belongsTo: 'plain' | 'wound' | 'wound twice' | 'any';
}

const column = (
  quantity: ReadingQuantityName,
  short: Message,
  belongsTo: GridColumn['belongsTo'],
): GridColumn => ({
  quantity,
  label: readingQuantities[quantity].label,
  short,
  belongsTo,
});

/** What the tension rests on; always in sight where it belongs. */
export const stringColumns: readonly GridColumn[] = [
  column('wire-diameter', message('wire'), 'plain'),
  column('core-diameter', message('core'), 'wound'),
  column('inner-layer-diameter', message('inner layer'), 'wound twice'),
  column('over-all-diameter', message('over all'), 'wound'),
  column('speaking-length', message('speaking length'), 'any'),
  column('bare-front', message('bare front'), 'wound'),
  column('bare-back', message('bare bridge'), 'wound'),
];

/** What else the strip destroys, in sight when it is asked for. */
export const furtherColumns: readonly GridColumn[] = [
  column('front-length', message('front length'), 'any'),
  column('back-length', message('back length'), 'any'),
  column('loop-to-winding', message('loop to winding'), 'wound'),
  column('winding-length', message('winding length'), 'wound'),
  column('pin-diameter', message('pin'), 'any'),
];

/** The unit of a column: that of the instrument in hand for it, or else the screen's. */
export type UnitOf = (quantity: ReadingQuantityName) => ShownUnit;

export interface GridCell {
  readonly quantity: ReadingQuantityName;
  /** False where the quantity cannot belong to the note as it is strung. */
  readonly applies: boolean;
  readonly isNeeded: boolean;
  /** The readings of this cell in the order they were taken. */
  readonly readings: readonly StandingReading[];
  readonly figure: Figure | undefined;
  readonly absence: Absence | undefined;
}

export interface GridRow {
  readonly key: number;
  readonly note: AsFoundNote;
  readonly section: Section | undefined;
  /** True for the first note shown of its section: a break is drawn above it. */
  readonly beginsSection: boolean;
  readonly cells: readonly GridCell[];
}

/** The columns worth showing for these notes, and those that were asked for. */
export function columnsFor(notes: readonly AsFoundNote[], withFurther: boolean): GridColumn[] {
  const own = withFurther ? [...stringColumns, ...furtherColumns] : [...stringColumns];
  return own.filter((one) => notes.some((note) => appliesTo(one, note)));
}

/** Whether a quantity belongs to a note. Until somebody has said how it is strung, anything may. */
export function appliesTo(
  { belongsTo }: GridColumn,
  { winding, layers }: Pick<AsFoundNote, 'winding' | 'layers'>,
): boolean {
  if (winding === undefined || belongsTo === 'any') return true;
  if (belongsTo === 'wound twice') return layers === 2;
  return belongsTo === winding;
}

export function gridRows(
  notes: readonly AsFoundNote[],
  columns: readonly GridColumn[],
  order: ReadingOrder,
): GridRow[] {
  return notes.map((note, index) => ({
    key: note.key,
    note,
    section: note.section,
    beginsSection: note.section !== notes[index - 1]?.section,
    cells: columns.map((one) => {
      const figure = note.figures[one.quantity];
      return {
        quantity: one.quantity,
        applies: appliesTo(one, note),
        isNeeded: note.needed.includes(one.quantity),
        readings: [...(figure?.readings ?? [])].sort((a, b) => (order(a) < order(b) ? -1 : 1)),
        figure,
        absence: note.absences[one.quantity],
      };
    }),
  }));
}

/** One cell of one note; undefined where the piano has no such note, or the grid no such column. */
export function cellOf(
  { notes }: AsFoundRecord,
  key: number,
  quantity: ReadingQuantityName,
  order: ReadingOrder,
): { readonly note: string; readonly cell: GridCell } | undefined {
  const note = notes.find((one) => one.key === key);
  const column = [...stringColumns, ...furtherColumns].find((one) => one.quantity === quantity);
  if (note === undefined || column === undefined) return undefined;
  const cell = gridRows([note], [column], order)[0]?.cells[0];
  return cell && { note: note.note, cell };
}

/** One cell of the rows on the screen, which may be a moment behind the journal. */
export function cellIn(
  rows: readonly GridRow[],
  key: number,
  quantity: ReadingQuantityName,
): { readonly note: string; readonly cell: GridCell } | undefined {
  const row = rows.find((one) => one.key === key);
  const cell = row?.cells.find((one) => one.quantity === quantity);
  return row && cell && { note: row.note.note, cell };
}

/** Where Enter goes: the notes are taken in one of these orders. */
export const enterOrders = {
  next: message('the next note'),
  'next-open': message('the next note without a value'),
  section: message('the next note, a section at a time'),
  'every-second': message('every second note'),
  'every-third': message('every third note'),
  'every-fourth': message('every fourth note'),
  octave: message('the same note an octave up'),
} as const;
export type EnterOrder = keyof typeof enterOrders;

const strides: Partial<Record<EnterOrder, number>> = {
  'every-second': 2,
  'every-third': 3,
  'every-fourth': 4,
  octave: 12,
};

export interface CellPlace {
  readonly key: number;
  readonly quantity: ReadingQuantityName;
}

interface From extends CellPlace {
  readonly direction: 1 | -1;
  readonly order: EnterOrder;
  /** Which reading of each string is being taken, counted from 1. */
  readonly round: number;
}

/**
 * The cell that comes after this one, among those where the quantity belongs; undefined at the end. All orders stay in
 * the column; a section at a time goes on to the next column when the section is through.
 */
export function cellAfter(rows: readonly GridRow[], from: From): CellPlace | undefined {
  const { key, quantity, direction, order, round } = from;
  if (order === 'section') {
    const cells = cellsBySection(rows);
    const here = cells.findIndex((one) => one.key === key && one.quantity === quantity);
    return here === -1 ? undefined : cells[here + direction];
  }
  const isOpen = (cell: GridCell) => cell.readings.length < round && cell.absence === undefined;
  const stride = strides[order] ?? 1;
  const open = rows.filter((row) => {
    const cell = row.cells.find((one) => one.quantity === quantity);
    return cell?.applies === true && (order !== 'next-open' || row.key === key || isOpen(cell));
  });
  const beyond = open.filter((row) => (direction > 0 ? row.key >= key + stride : row.key <= key - stride));
  const next = direction > 0 ? beyond[0] : beyond.at(-1);
  return next && { key: next.key, quantity };
}

/** Every cell that applies: section after section, in each column after column, in each note after note. */
function cellsBySection(rows: readonly GridRow[]): CellPlace[] {
  const cells: CellPlace[] = [];
  const starts = rows.flatMap(({ beginsSection }, index) => (beginsSection || index === 0 ? [index] : []));
  starts.forEach((start, index) => {
    const section = rows.slice(start, starts[index + 1]);
    section[0]?.cells.forEach(({ quantity }, place) => {
      for (const { key, cells: own } of section) if (own[place]?.applies) cells.push({ key, quantity });
    });
  });
  return cells;
}

/** How much of the record is there: cells that are needed, and those of them that have a value or an answer. */
export function progressOf(notes: readonly AsFoundNote[]): {
  needed: number;
  known: number;
  undescribed: number;
} {
  let needed = 0;
  let missing = 0;
  let undescribed = 0;
  for (const note of notes) {
    needed += note.needed.length;
    missing += note.missing.length;
    if (note.strings === undefined) undescribed += 1;
  }
  return { needed, known: needed - missing, undescribed };
}
