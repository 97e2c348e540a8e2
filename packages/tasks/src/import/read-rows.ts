import { noteName, parseNote } from '@becket/core';
import {
  type FactOf,
  frontTerminations,
  type Job,
  readingQuantities,
  siFromRead,
  unitsForDimension,
} from '@becket/journal';
import { readingFact } from '../record-reading.ts';
import { absenceIn, isBlank, numberIn, terminationOf, wholeFrom, windingOf } from './cell.ts';
import type { CellChange } from './cell-changes.ts';
import type { CellReport } from './cell-report.ts';
import { inUnit, slippedPoint, unitThatFits } from './cell-slips.ts';
import type { ColumnMapping, ColumnMeaning } from './column-mapping.ts';
import type { TableRow } from './read-table.ts';

/** What one row says of its note, beside its readings; undefined where it says nothing. */
export interface ReadRow {
  readonly row: number;
  readonly key: number;
  readonly section: string | undefined;
  readonly bridge: string | undefined;
  readonly frontTermination: FactOf<'section-described'>['frontTermination'] | undefined;
  readonly strings: number | undefined;
  readonly winding: 'plain' | 'wound' | undefined;
  readonly layers: number | undefined;
}

/** A reading, and the cell it stands in. */
export interface PlacedReading {
  readonly row: number;
  readonly column: number;
  readonly fact: FactOf<'reading'>;
}

/** Reads the rows of a table one by one; what it cannot read goes to the report. */
export class RowReader {
  readonly rows: ReadRow[] = [];
  readonly readings: PlacedReading[] = [];
  readonly absences: FactOf<'reading-absent'>[] = [];
  readonly remarks: FactOf<'observation'>[] = [];
  /** Mapped cells in which nothing stands. */
  blankCells = 0;
  private readonly changesByCell: ReadonlyMap<string, CellChange>;

  constructor(
    private readonly job: Job,
    private readonly mapping: ColumnMapping,
    changes: readonly CellChange[],
    private readonly report: CellReport,
  ) {
    this.changesByCell = new Map(changes.map((change) => [`${change.row}/${change.column}`, change]));
  }

  /** The cell as changed by the user; null when it was left out. */
  private cell(row: TableRow, column: number): string | null {
    const change = this.changesByCell.get(`${row.row}/${column}`);
    return change === undefined ? (row.cells[column] ?? '') : change.use;
  }

  readRow(row: TableRow): void {
    const cells = this.mapping.columns.map((meaning, column) => ({
      meaning,
      column,
      cell: this.cell(row, column),
    }));
    const mapped = cells.filter(({ meaning }) => meaning.is !== 'left out');
    const filled = mapped.filter(({ cell }) => cell !== null && !isBlank(cell));
    this.blankCells += mapped.length - filled.length;
    if (filled.length === 0) return;
    const key = this.keyOf(row, mapped);
    if (key === undefined) return;
    const words = new Map<ColumnMeaning['is'], { column: number; cell: string }>();
    const readings: (readonly [column: number, meaning: ColumnMeaning & { is: 'reading' }, cell: string])[] =
      [];
    for (const { meaning, column, cell } of filled) {
      if (meaning.is === 'reading') readings.push([column, meaning, cell!]);
      else if (meaning.is === 'remark') this.remarks.push(remarkFact(key, cell!));
      else words.set(meaning.is, { column, cell: cell! });
    }
    for (const reading of readings) this.readReading(row.row, key, reading);
    this.readAbsences(key, readings);
    this.rows.push({
      row: row.row,
      key,
      section: words.get('section')?.cell,
      bridge: words.get('bridge')?.cell,
      frontTermination: this.oneOf(
        row.row,
        words.get('front termination'),
        terminationOf,
        frontTerminations.join(', '),
      ),
      strings: this.oneOf(
        row.row,
        words.get('strings'),
        (cell) => wholeFrom(cell, 1, 3),
        this.report.language.say('a number of strings from 1 to 3'),
      ),
      winding: this.oneOf(
        row.row,
        words.get('winding'),
        windingOf,
        this.report.language.say("'plain' or 'wound'"),
      ),
      layers: this.oneOf(
        row.row,
        words.get('layers'),
        (cell) => wholeFrom(cell, 0, 2),
        this.report.language.say('a number of layers from 0 to 2'),
      ),
    });
  }

  private keyOf(
    row: TableRow,
    cells: readonly { meaning: ColumnMeaning; column: number; cell: string | null }[],
  ): number | undefined {
    const own = cells.find(({ meaning }) => meaning.is === 'note')!;
    const { firstKey, lastKey } = this.job.piano!;
    const expected = this.report.language.say(
      'a note from {first} to {last}, or a key number from {firstKey} to {lastKey},',
      { first: noteName(firstKey), last: noteName(lastKey), firstKey, lastKey },
    );
    if (own.cell === null) return undefined;
    try {
      const key = parseNote(own.cell, { letters: this.mapping.noteLetters });
      if (key >= firstKey && key <= lastKey) return key;
    } catch {
      // The sentence below says what is needed.
    }
    this.report.problem(row.row, own.column, own.cell, expected);
    return undefined;
  }

  private readReading(
    row: number,
    key: number,
    [column, meaning, cell]: readonly [number, ColumnMeaning & { is: 'reading' }, string],
  ): void {
    const { quantity, string } = meaning;
    const { label, dimension, possible } = readingQuantities[quantity];
    if (absenceIn(cell) !== undefined) return;
    const place = string === undefined ? { key } : { key, string };
    const { say, plain } = this.report.language;
    const range = say('{article, select, an {an} other {a}} {quantity} from {low} to {high} {unit}', {
      article: /^[aeiou]/.test(label) ? 'an' : 'a',
      quantity: say(label),
      low: plain(Number(inUnit(possible[0], meaning.unit))),
      high: plain(Number(inUnit(possible[1], meaning.unit))),
      unit: meaning.unit,
    });
    const number = numberIn(cell, this.mapping.decimalMark);
    // A unit written in the cell is what was read there; the column's unit is for cells without one.
    const unit = number?.unit ?? meaning.unit;
    if (number === undefined || !unitsForDimension(dimension).includes(unit)) {
      this.report.problem(row, column, cell, range);
      return;
    }
    const { value } = number;
    const value_si = siFromRead(value, unit);
    if (value_si < possible[0] || value_si > possible[1]) {
      const other = unitThatFits(quantity, value, unit);
      if (other === undefined) {
        this.report.problem(row, column, cell, range, { suggestion: slippedPoint(quantity, value, unit) });
      } else {
        const suggestion = inUnit(siFromRead(value, other), meaning.unit);
        const hint = say('{cell} would fit in {unit}', { cell, unit: other });
        this.report.problem(row, column, cell, range, { hint, suggestion });
      }
      return;
    }
    const { origin = 'measured' } = this.mapping;
    this.readings.push({
      row,
      column,
      fact: readingFact(this.job, { quantity, place, value, unit, origin }, this.report.language),
    });
  }

  /** *Unknown*, *none* and *does not apply*, said of a quantity that has no number in the same row. */
  private readAbsences(
    key: number,
    readings: readonly (readonly [number, ColumnMeaning & { is: 'reading' }, string])[],
  ): void {
    const said = new Map<string, FactOf<'reading-absent'>>();
    for (const [, { quantity, string }, cell] of readings) {
      const answer = absenceIn(cell);
      const isRead = readings.some(([, other, text]) => other.quantity === quantity && !absenceIn(text));
      if (answer === undefined || isRead) continue;
      const place = string === undefined ? { key } : { key, string };
      said.set(`${quantity}/${string}`, { kind: 'reading-absent', v: 1, quantity, place, answer });
    }
    this.absences.push(...said.values());
  }

  private oneOf<T>(
    row: number,
    found: { column: number; cell: string } | undefined,
    read: (cell: string) => T | undefined,
    expected: string,
  ): T | undefined {
    if (found === undefined) return undefined;
    const value = read(found.cell);
    if (value === undefined) this.report.problem(row, found.column, found.cell, expected);
    return value;
  }
}

function remarkFact(key: number, text: string): FactOf<'observation'> {
  return {
    kind: 'observation',
    v: 1,
    thing: 'remarks',
    place: { key },
    answer: { is: 'known', text: text.slice(0, 2000) },
  };
}
