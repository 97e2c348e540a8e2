import { noteName, parseNote } from '@becket/core';
import {
  type Fact,
  type FactOf,
  frontTerminations,
  type Job,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  siFromRead,
  unitsForDimension,
} from '@becket/journal';
import { checkSections } from '../describe-piano.ts';
import { readingFact } from '../record-reading.ts';
import { absenceIn, isBlank, numberIn } from './cell.ts';
import type { ColumnMapping, ColumnMeaning } from './column-mapping.ts';
import { type DoubtfulReading, doubtfulReadings } from './doubtful-readings.ts';
import type { ReadTable, TableRow } from './read-table.ts';

/** A cell that the user changed before bringing the table in, or left out (`use: null`), and why. */
export interface CellChange {
  readonly row: number;
  /** Index of the column, 0 for the first. */
  readonly column: number;
  readonly use: string | null;
  readonly reason: string;
}

/** A cell that cannot be read; nothing is brought in while one is left. */
export interface CellProblem {
  readonly row: number;
  readonly column: number;
  readonly columnName: string;
  readonly found: string;
  readonly expected: string;
  readonly sentence: string;
}

/** A cell that can be read and is doubted; it may stay. */
export interface CellQuestion extends CellProblem {
  /** What the cell may have been meant to say, in the column's unit. */
  readonly suggestion: string | undefined;
}

/** What bringing a table in would do. Nothing is stored yet. */
export interface ImportPlan {
  readonly facts: readonly Fact[];
  readonly problems: readonly CellProblem[];
  readonly questions: readonly CellQuestion[];
  readonly counts: {
    readonly rows: number;
    readonly readings: number;
    readonly blankCells: number;
    readonly notes: number;
  };
}

/**
 * What bringing this table into this job would do: the facts it holds, the cells that cannot be read, and the cells
 * that are doubted. The job is not changed.
 *
 * Throws: RangeError when the piano is not described yet or the mapping does not fit the table.
 */
export function planImport(
  job: Job,
  table: ReadTable,
  mapping: ColumnMapping,
  changes: readonly CellChange[] = [],
): ImportPlan {
  if (job.piano === undefined) {
    throw new RangeError(
      `Cannot bring in ${table.fileName} as the piano is not described: its lowest and highest note are needed first. Describe the piano, then bring the file in.`,
    );
  }
  if (mapping.columns.length !== table.header.length) {
    throw new RangeError(
      `Cannot bring in ${table.fileName} with this mapping: a meaning for each of its ${table.header.length} columns is needed, ${mapping.columns.length} were found. Map the columns of this file.`,
    );
  }
  if (!mapping.columns.some(({ is }) => is === 'note')) {
    throw new RangeError(
      `Cannot bring in ${table.fileName}: a column with the notes is needed, none is mapped. Say which column holds the notes.`,
    );
  }
  return new TableReader(job, table, mapping, changes).plan();
}

interface ReadRow {
  readonly row: number;
  readonly key: number;
  readonly section: string | undefined;
  readonly bridge: string | undefined;
  readonly frontTermination: FactOf<'section-described'>['frontTermination'] | undefined;
  readonly strings: number | undefined;
  readonly winding: 'plain' | 'wound' | undefined;
  readonly layers: number | undefined;
}

interface PlacedReading {
  readonly row: number;
  readonly column: number;
  readonly fact: FactOf<'reading'>;
}

class TableReader {
  private readonly problems: CellProblem[] = [];
  private readonly rows: ReadRow[] = [];
  private readonly readings: PlacedReading[] = [];
  private readonly absences: FactOf<'reading-absent'>[] = [];
  private blankCells = 0;

  constructor(
    private readonly job: Job,
    private readonly table: ReadTable,
    private readonly mapping: ColumnMapping,
    private readonly changes: readonly CellChange[],
  ) {}

  plan(): ImportPlan {
    for (const row of this.table.rows) this.readRow(row);
    const sections = this.sectionFacts();
    const facts: Fact[] = [
      ...sections,
      ...this.unisonFacts(),
      ...this.absences,
      ...this.readings.map(({ fact }) => fact),
      this.importedFact(),
    ];
    return {
      facts,
      problems: this.problems,
      questions: doubtfulReadings(this.readings.map(({ fact }) => fact)).map((doubt) => this.question(doubt)),
      counts: {
        rows: this.rows.length,
        readings: this.readings.length,
        blankCells: this.blankCells,
        notes: new Set(this.rows.map(({ key }) => key)).size,
      },
    };
  }

  /** The cell as changed by the user; null when it was left out. */
  private cell(row: TableRow, column: number): string | null {
    const change = this.changes.find((one) => one.row === row.row && one.column === column);
    return change === undefined ? (row.cells[column] ?? '') : change.use;
  }

  private problem(row: number, column: number, found: string, expected: string): void {
    const columnName = this.table.header[column] ?? `column ${column + 1}`;
    const sentence = `Row ${row}, column '${columnName}': ${expected} is needed, '${found}' was found.`;
    this.problems.push({ row, column, columnName, found, expected, sentence });
  }

  private readRow(row: TableRow): void {
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
    for (const { meaning, column, cell } of filled) {
      if (meaning.is === 'reading') this.readReading(row.row, column, key, meaning, cell!);
      else words.set(meaning.is, { column, cell: cell! });
    }
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
        'a number of strings from 1 to 3',
      ),
      winding: this.oneOf(row.row, words.get('winding'), windingOf, "'plain' or 'wound'"),
      layers: this.oneOf(
        row.row,
        words.get('layers'),
        (cell) => wholeFrom(cell, 0, 2),
        'a number of layers from 0 to 2',
      ),
    });
  }

  private keyOf(
    row: TableRow,
    cells: readonly { meaning: ColumnMeaning; column: number; cell: string | null }[],
  ): number | undefined {
    const own = cells.find(({ meaning }) => meaning.is === 'note')!;
    const { firstKey, lastKey } = this.job.piano!;
    const expected = `a note from ${noteName(firstKey)} to ${noteName(lastKey)}, or a key number from ${firstKey} to ${lastKey},`;
    if (own.cell === null) return undefined;
    try {
      const key = parseNote(own.cell, { letters: this.mapping.noteLetters });
      if (key >= firstKey && key <= lastKey) return key;
    } catch {
      // The sentence below says what is needed.
    }
    this.problem(row.row, own.column, own.cell, expected);
    return undefined;
  }

  private readReading(
    row: number,
    column: number,
    key: number,
    meaning: ColumnMeaning & { is: 'reading' },
    cell: string,
  ): void {
    const { quantity, unit, string } = meaning;
    const { label, possible } = readingQuantities[quantity];
    const absence = absenceIn(cell);
    const place = string === undefined ? { key } : { key, string };
    if (absence !== undefined) {
      this.absences.push({ kind: 'reading-absent', v: 1, quantity, place, answer: absence });
      return;
    }
    const value = numberIn(cell, this.mapping.decimalMark);
    const range = `a ${label} from ${inUnit(possible[0], unit)} to ${inUnit(possible[1], unit)} ${unit}`;
    if (value === undefined) {
      this.problem(row, column, cell, range);
      return;
    }
    const value_si = siFromRead(value, unit);
    if (value_si < possible[0] || value_si > possible[1]) {
      const other = unitThatFits(quantity, value, unit);
      this.problem(
        row,
        column,
        cell,
        other === undefined ? range : `${range} (${cell} would fit in ${other})`,
      );
      return;
    }
    this.readings.push({
      row,
      column,
      fact: readingFact(this.job, { quantity, place, value, unit, origin: 'copied' }),
    });
  }

  private oneOf<T>(
    row: number,
    found: { column: number; cell: string } | undefined,
    read: (cell: string) => T | undefined,
    expected: string,
  ): T | undefined {
    if (found === undefined) return undefined;
    const value = read(found.cell);
    if (value === undefined) this.problem(row, found.column, found.cell, expected);
    return value;
  }

  /** One section for each name in the section column; runs of the compass, which must not overlap. */
  private sectionFacts(): FactOf<'section-described'>[] {
    const bySection = new Map<string, ReadRow[]>();
    for (const row of this.rows) {
      if (row.section === undefined) continue;
      const known = bySection.get(row.section);
      if (known === undefined) bySection.set(row.section, [row]);
      else known.push(row);
    }
    const facts = [...bySection].map(([section, rows]): FactOf<'section-described'> => {
      const keys = rows.map(({ key }) => key);
      const known = this.job.sections.find((one) => one.section === section);
      return {
        kind: 'section-described',
        v: 1,
        section,
        firstKey: Math.min(...keys),
        lastKey: Math.max(...keys),
        bridge: rows.find(({ bridge }) => bridge !== undefined)?.bridge ?? known?.bridge ?? 'unknown',
        frontTermination:
          rows.find(({ frontTermination }) => frontTermination !== undefined)?.frontTermination ??
          known?.frontTermination ??
          'unknown',
      };
    });
    try {
      checkSections(this.job, facts);
    } catch (error) {
      const column = this.mapping.columns.findIndex(({ is }) => is === 'section');
      const row = this.firstRowOutOfPlace(bySection);
      const sentence = error instanceof Error ? error.message : String(error);
      const columnName = this.table.header[column] ?? 'section';
      this.problems.push({
        row: row?.row ?? this.table.rows[0]!.row,
        column,
        columnName,
        found: row?.section ?? '',
        expected: 'sections that do not overlap',
        sentence,
      });
    }
    return facts;
  }

  /** The first row, bass to treble, whose section had already given way to another. */
  private firstRowOutOfPlace(bySection: ReadonlyMap<string, readonly ReadRow[]>): ReadRow | undefined {
    const inOrder = [...bySection.values()].flat().sort((a, b) => a.key - b.key);
    const left = new Set<string>();
    let current: string | undefined;
    for (const row of inOrder) {
      if (row.section === current) continue;
      if (left.has(row.section!)) return row;
      if (current !== undefined) left.add(current);
      current = row.section;
    }
    return undefined;
  }

  /** How the notes are strung, as far as the table says: runs of equal notes, one fact each. */
  private unisonFacts(): FactOf<'unisons-described'>[] {
    const byKey = new Map<number, Pick<FactOf<'unisons-described'>, 'strings' | 'winding' | 'layers'>>();
    const quantitiesOf = new Map<number, Set<ReadingQuantityName>>();
    for (const { row, fact } of this.readings) {
      const known = quantitiesOf.get(row);
      if (known === undefined) quantitiesOf.set(row, new Set([fact.quantity]));
      else known.add(fact.quantity);
    }
    for (const { row, key, strings, winding, layers } of this.rows) {
      const known = byKey.get(key) ?? this.job.unisons.get(key);
      const count = strings ?? known?.strings;
      if (count === undefined) continue;
      const own = quantitiesOf.get(row) ?? new Set<ReadingQuantityName>();
      const isWound =
        winding === undefined
          ? own.has('core-diameter') || own.has('over-all-diameter') || known?.winding === 'wound'
          : winding === 'wound';
      const read = layers ?? (own.has('inner-layer-diameter') ? 2 : Math.max(1, known?.layers ?? 1));
      byKey.set(key, {
        strings: count,
        winding: isWound ? 'wound' : 'plain',
        layers: isWound ? Math.max(1, read) : 0,
      });
    }
    const facts: FactOf<'unisons-described'>[] = [];
    for (const [key, note] of [...byKey].sort((a, b) => a[0] - b[0])) {
      const last = facts.at(-1);
      const isSameRun =
        last !== undefined &&
        last.lastKey === key - 1 &&
        last.strings === note.strings &&
        last.winding === note.winding &&
        last.layers === note.layers;
      if (isSameRun) facts[facts.length - 1] = { ...last, lastKey: key };
      else facts.push({ kind: 'unisons-described', v: 1, firstKey: key, lastKey: key, ...note });
    }
    return facts;
  }

  private importedFact(): FactOf<'readings-imported'> {
    const { fileName, digest, header, rows } = this.table;
    return {
      kind: 'readings-imported',
      v: 1,
      file: fileName,
      digest,
      rows: this.rows.length,
      readings: this.readings.length,
      changedCells: this.changes.map(({ row, column, use, reason }) => ({
        row,
        column: header[column] ?? `column ${column + 1}`,
        found: rows.find((one) => one.row === row)?.cells[column] ?? '',
        used: use,
        reason,
      })),
    };
  }

  private question({ index, sentence, suggestion_si }: DoubtfulReading): CellQuestion {
    const { row, column, fact } = this.readings[index]!;
    const columnName = this.table.header[column] ?? `column ${column + 1}`;
    const suggestion = suggestion_si === undefined ? undefined : inUnit(suggestion_si, fact.asRead.unit);
    return {
      row,
      column,
      columnName,
      found: this.table.rows.find((one) => one.row === row)?.cells[column] ?? '',
      expected: sentence,
      sentence: `Row ${row}, column '${columnName}' (${noteName(fact.place.key!)}): ${sentence}`,
      suggestion,
    };
  }
}

/** A value in a unit, with no more digits than tell it apart. */
function inUnit(value_si: number, unit: ReadUnit): string {
  return String(Number((value_si / siFromRead(1, unit)).toPrecision(4)));
}

function unitThatFits(quantity: ReadingQuantityName, value: number, unit: ReadUnit): ReadUnit | undefined {
  const { dimension, possible } = readingQuantities[quantity];
  return unitsForDimension(dimension).find((other) => {
    const value_si = siFromRead(value, other);
    return other !== unit && value_si >= possible[0] && value_si <= possible[1];
  });
}

function wholeFrom(cell: string, low: number, high: number): number | undefined {
  const value = Number(cell);
  return Number.isInteger(value) && value >= low && value <= high ? value : undefined;
}

function terminationOf(cell: string): FactOf<'section-described'>['frontTermination'] | undefined {
  const word = cell.toLowerCase().replace(/s$/, '');
  if (/^(capo|capo d'?astro|druckstab)/.test(word)) return 'capo';
  return frontTerminations.find((one) => one === word) ?? (/^agraffe/.test(word) ? 'agraffe' : undefined);
}

function windingOf(cell: string): 'plain' | 'wound' | undefined {
  if (/^(p|plain|blank|b|no|0)$/i.test(cell)) return 'plain';
  return /^(w|wound|umsponnen|u|yes|1|2)$/i.test(cell) ? 'wound' : undefined;
}
