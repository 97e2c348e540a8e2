import { addToGroup, english, keyRangeAt, type Language, noteName, parseNote } from '@becket/core';
import {
  type Fact,
  type FactOf,
  firstProblem,
  frontTerminations,
  type Job,
  quantitiesOverSpan,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  siFromRead,
  unitsForDimension,
} from '@becket/journal';
import { z } from 'zod';
import { checkSections } from '../describe-piano.ts';
import { readingFact } from '../record-reading.ts';
import { absenceIn, isBlank, numberIn } from './cell.ts';
import type { ColumnMapping, ColumnMeaning } from './column-mapping.ts';
import { doubtfulReadings, type RunOfNotes } from './doubtful-readings.ts';
import type { ReadTable, TableRow } from './read-table.ts';

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
  language: Language = english,
): ImportPlan {
  const { say } = language;
  const file = table.fileName;
  if (job.piano === undefined) {
    throw new RangeError(
      say(
        'Cannot bring in {file} as the piano is not described: its lowest and highest note are needed first. Describe the piano, then bring the file in.',
        { file },
      ),
    );
  }
  if (mapping.columns.length !== table.header.length) {
    throw new RangeError(
      say(
        'Cannot bring in {file} with this mapping: a meaning for each of its {columns} columns is needed, {found} were found. Map the columns of this file.',
        { file, columns: table.header.length, found: mapping.columns.length },
      ),
    );
  }
  const noteColumns = mapping.columns.filter(({ is }) => is === 'note').length;
  if (noteColumns !== 1) {
    throw new RangeError(
      say(
        'Cannot bring in {file}: a column with the notes is needed, {count, plural, =0 {none is} other {# are}} mapped. Say which one column holds the notes.',
        { file, count: noteColumns },
      ),
    );
  }
  for (const meaning of mapping.columns) {
    if (meaning.is !== 'reading') continue;
    const { label, dimension } = readingQuantities[meaning.quantity];
    if (quantitiesOverSpan.includes(meaning.quantity)) {
      throw new RangeError(
        say(
          'Cannot bring in {file} with this mapping: a {quantity} needs its span and whether the board was loaded, a column holds neither. Leave that column out, and enter those readings one by one.',
          { file, quantity: say(label) },
        ),
      );
    }
    const units = unitsForDimension(dimension);
    if (!units.includes(meaning.unit)) {
      throw new RangeError(
        say(
          "Cannot bring in {file} with this mapping: a {quantity} is read in {units}, '{found}' was found. Correct the unit of that column.",
          { file, quantity: say(label), units: units.join(', '), found: meaning.unit },
        ),
      );
    }
  }
  checkChanges(table, changes, language);
  return new TableReader(job, table, mapping, changes, language).plan();
}

/** Throws when a change names a cell that is not there, names one twice, or has no reason. */
function checkChanges(table: ReadTable, changes: readonly CellChange[], { say }: Language): void {
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
  private readonly remarks: FactOf<'observation'>[] = [];
  private readonly questions: CellQuestion[] = [];
  private readonly rowsByNumber: ReadonlyMap<number, TableRow>;
  private readonly changesByCell: ReadonlyMap<string, CellChange>;
  private sections: readonly RunOfNotes[] = [];
  private blankCells = 0;

  constructor(
    private readonly job: Job,
    private readonly table: ReadTable,
    private readonly mapping: ColumnMapping,
    private readonly changes: readonly CellChange[],
    private readonly language: Language,
  ) {
    this.rowsByNumber = new Map(table.rows.map((row) => [row.row, row]));
    this.changesByCell = new Map(changes.map((change) => [`${change.row}/${change.column}`, change]));
  }

  plan(): ImportPlan {
    for (const row of this.table.rows) this.readRow(row);
    const facts: Fact[] = [
      ...this.sectionFacts(),
      ...this.unisonFacts(),
      ...this.remarks,
      ...this.absences,
      ...this.readings.map(({ fact }) => fact),
      this.importedFact(),
    ];
    this.questionReadings();
    const inOrder = (a: CellProblem, b: CellProblem): number => a.row - b.row || a.column - b.column;
    return {
      facts,
      problems: this.problems.sort(inOrder),
      questions: this.questions.sort(inOrder),
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
    const change = this.changesByCell.get(`${row.row}/${column}`);
    return change === undefined ? (row.cells[column] ?? '') : change.use;
  }

  private columnName(column: number): string {
    return this.table.header[column] ?? this.language.say('column {number}', { number: column + 1 });
  }

  private problem(
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
    this.problems.push({ row, column, columnName, found, expected, sentence, suggestion });
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
        this.language.say('a number of strings from 1 to 3'),
      ),
      winding: this.oneOf(row.row, words.get('winding'), windingOf, this.language.say("'plain' or 'wound'")),
      layers: this.oneOf(
        row.row,
        words.get('layers'),
        (cell) => wholeFrom(cell, 0, 2),
        this.language.say('a number of layers from 0 to 2'),
      ),
    });
  }

  private keyOf(
    row: TableRow,
    cells: readonly { meaning: ColumnMeaning; column: number; cell: string | null }[],
  ): number | undefined {
    const own = cells.find(({ meaning }) => meaning.is === 'note')!;
    const { firstKey, lastKey } = this.job.piano!;
    const expected = this.language.say(
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
    this.problem(row.row, own.column, own.cell, expected);
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
    const { say, plain } = this.language;
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
      this.problem(row, column, cell, range);
      return;
    }
    const { value } = number;
    const value_si = siFromRead(value, unit);
    if (value_si < possible[0] || value_si > possible[1]) {
      const other = unitThatFits(quantity, value, unit);
      if (other === undefined) {
        this.problem(row, column, cell, range, { suggestion: slippedPoint(quantity, value, unit) });
      } else {
        const suggestion = inUnit(siFromRead(value, other), meaning.unit);
        const hint = say('{cell} would fit in {unit}', { cell, unit: other });
        this.problem(row, column, cell, range, { hint, suggestion });
      }
      return;
    }
    const { origin = 'measured' } = this.mapping;
    this.readings.push({
      row,
      column,
      fact: readingFact(this.job, { quantity, place, value, unit, origin }, this.language),
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
    if (value === undefined) this.problem(row, found.column, found.cell, expected);
    return value;
  }

  /**
   * One section for each name in the section column; runs of the compass, which must not overlap. A section that the job
   * knows already keeps at least its known run: a blank cell at its end does not make it shorter.
   */
  private sectionFacts(): FactOf<'section-described'>[] {
    const bySection = new Map<string, ReadRow[]>();
    for (const row of this.rows) {
      const section = row.section ?? this.knownSectionAt(row);
      if (section === undefined) continue;
      addToGroup(bySection, section, row);
    }
    const facts = [...bySection].map(([section, rows]): FactOf<'section-described'> => {
      const known = this.job.sections.find((one) => one.section === section);
      const keys = rows
        .map(({ key }) => key)
        .concat(known === undefined ? [] : [known.firstKey, known.lastKey]);
      return {
        kind: 'section-described',
        v: 1,
        section,
        firstKey: Math.min(...keys),
        lastKey: Math.max(...keys),
        bridge: this.agreed(section, rows, 'bridge') ?? known?.bridge ?? 'unknown',
        frontTermination:
          this.agreed(section, rows, 'frontTermination') ?? known?.frontTermination ?? 'unknown',
      };
    });
    try {
      checkSections(this.job, facts, this.language);
    } catch (error) {
      const row = this.firstRowOutOfPlace(bySection);
      const sentence = error instanceof Error ? error.message : String(error);
      const column = this.columnOf('section');
      this.problems.push({
        row: row?.row ?? this.table.rows[0]!.row,
        column,
        columnName: this.table.header[column] ?? this.language.say('section'),
        found: row?.section ?? '',
        expected: this.language.say('sections that do not overlap'),
        sentence,
        suggestion: undefined,
      });
    }
    // A section as the table has it stands before the same one as the job knew it.
    this.sections = [...facts, ...this.job.sections];
    for (const { row, key } of bySection.size === 0 ? [] : this.rows) {
      if (keyRangeAt(key, this.sections) !== undefined) continue;
      this.question(
        row,
        this.columnOf('section'),
        this.language.say('{note} is in no section; say in which, or leave it so.', { note: noteName(key) }),
      );
    }
    return facts.filter((fact) => !this.job.sections.some((known) => isSameSection(known, fact)));
  }

  private columnOf(meaning: ColumnMeaning['is']): number {
    return this.mapping.columns.findIndex(({ is }) => is === meaning);
  }

  /** Where a row names a bridge or a termination and no section, the job's own section is meant. */
  private knownSectionAt({ row, key, bridge, frontTermination }: ReadRow): string | undefined {
    if (bridge === undefined && frontTermination === undefined) return undefined;
    const known = keyRangeAt(key, this.job.sections);
    if (known === undefined && this.columnOf('section') < 0) {
      const column = this.columnOf(bridge === undefined ? 'front termination' : 'bridge');
      this.problem(
        row,
        column,
        bridge ?? frontTermination!,
        this.language.say('the section that {note} belongs to', { note: noteName(key) }),
      );
    }
    return known?.section;
  }

  /** What the rows of a section say alike; a row that says otherwise is a problem. */
  private agreed<Name extends 'bridge' | 'frontTermination'>(
    section: string,
    rows: readonly ReadRow[],
    name: Name,
  ): ReadRow[Name] {
    const first = rows.find((row) => row[name] !== undefined)?.[name];
    for (const row of rows) {
      const found = row[name];
      if (found === undefined || found === first) continue;
      const column = this.columnOf(name === 'bridge' ? 'bridge' : 'front termination');
      this.problem(
        row.row,
        column,
        found,
        this.language.say("the same as in the other rows of section '{section}', '{first}',", {
          section,
          first: first!,
        }),
      );
    }
    return first;
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
    const byKey = new Map<number, Stringing>();
    const quantitiesOf = new Map<number, Set<ReadingQuantityName>>();
    for (const { fact } of this.readings) {
      const key = fact.place.key!;
      const known = quantitiesOf.get(key);
      if (known === undefined) quantitiesOf.set(key, new Set([fact.quantity]));
      else known.add(fact.quantity);
    }
    const rowOf = new Map<number, number>();
    const withoutCount: ReadRow[] = [];
    const withoutWinding: ReadRow[] = [];
    for (const row of this.rows) {
      const { key, strings, winding, layers } = row;
      const standing = this.job.unisons.get(key);
      const count = strings ?? byKey.get(key)?.strings ?? standing?.strings;
      if (count === undefined) {
        if (winding !== undefined) withoutCount.push(row);
        continue;
      }
      const own = quantitiesOf.get(key) ?? new Set<ReadingQuantityName>();
      const kind = winding ?? windingFrom(layers, own) ?? standing?.winding;
      if (kind === undefined) {
        if (strings !== undefined) withoutWinding.push(row);
        continue;
      }
      const wound = layers ?? (own.has('inner-layer-diameter') ? 2 : Math.max(1, standing?.layers ?? 1));
      const said = { strings: count, winding: kind, layers: kind === 'wound' ? wound : 0 };
      this.requireSound(row, said, byKey.get(key), rowOf.get(key));
      byKey.set(key, said);
      if (!rowOf.has(key)) rowOf.set(key, row.row);
    }
    this.questionHalfSaid(withoutCount, 'winding');
    this.questionHalfSaid(withoutWinding, 'strings');
    for (const [key, said] of byKey) {
      const standing = this.job.unisons.get(key);
      if (standing !== undefined && isSameStringing(standing, said)) byKey.delete(key);
    }
    const facts: FactOf<'unisons-described'>[] = [];
    for (const [key, note] of [...byKey].sort((a, b) => a[0] - b[0])) {
      const last = facts.at(-1);
      const isSameRun = last !== undefined && last.lastKey === key - 1 && isSameStringing(last, note);
      if (isSameRun) facts[facts.length - 1] = { ...last, lastKey: key };
      else facts.push({ kind: 'unisons-described', v: 1, firstKey: key, lastKey: key, ...note });
    }
    return facts;
  }

  /** A plain string has no layers, a wound one has; and two rows of one note say the same. */
  private requireSound(
    { row, key, layers, winding }: ReadRow,
    said: Stringing,
    earlier: Stringing | undefined,
    earlierRow: number | undefined,
  ): void {
    const { say } = this.language;
    if (layers !== undefined && (said.winding === 'plain') !== (layers === 0)) {
      const needed =
        winding === 'plain' ? say('0 layers of a plain string') : say('1 or 2 layers of a wound string');
      this.problem(row, this.columnOf('layers'), `${layers}`, needed);
    }
    if (earlier !== undefined && !isSameStringing(earlier, said)) {
      const column = Math.max(this.columnOf('strings'), 0);
      const words = ({ strings, winding: kind, layers: count }: Stringing): string =>
        say('{strings} {kind, select, wound {wound with {layers} layers} other {plain}}', {
          strings,
          kind,
          layers: count,
        });
      const expected = say('the stringing of {note} as in row {row}, {stringing},', {
        note: noteName(key),
        row: earlierRow ?? 0,
        stringing: words(earlier),
      });
      this.problem(row, column, words(said), expected);
    }
  }

  /** One question for all rows that say only half of how a note is strung. */
  private questionHalfSaid(rows: readonly ReadRow[], said: 'strings' | 'winding'): void {
    const [first] = rows;
    if (first === undefined) return;
    const names = rows.slice(0, 6).map(({ key }) => noteName(key));
    const { say } = this.language;
    const more = rows.length - names.length;
    const notes =
      more > 0 ? say('{names} and {count} more', { names: names.join(', '), count: more }) : names.join(', ');
    this.question(
      first.row,
      this.columnOf(said),
      said === 'strings'
        ? say(
            'the number of strings is said of {notes}, but nothing tells plain from wound; how they are strung is not brought in.',
            { notes },
          )
        : say(
            'plain or wound is said of {notes}, but nothing tells how many strings there are; how they are strung is not brought in.',
            { notes },
          ),
    );
  }

  private importedFact(): FactOf<'readings-imported'> {
    const { fileName, digest } = this.table;
    return {
      kind: 'readings-imported',
      v: 1,
      file: fileName,
      digest,
      rows: this.rows.length,
      readings: this.readings.length,
      changedCells: this.changes.map(({ row, column, use, reason }) => ({
        row,
        column: this.columnName(column),
        found: this.rowsByNumber.get(row)?.cells[column] ?? '',
        used: use,
        reason,
      })),
    };
  }

  private question(row: number, column: number, doubt: string, suggestion?: string): void {
    this.questions.push({
      row,
      column,
      columnName: this.columnName(column),
      found: this.rowsByNumber.get(row)?.cells[column] ?? '',
      expected: doubt,
      sentence: this.language.say("Row {row}, column '{column}': {doubt}", {
        row,
        column: this.table.header[column] ?? column + 1,
        doubt,
      }),
      suggestion,
    });
  }

  private questionReadings(): void {
    for (const { index, sentence, suggestion_si } of doubtfulReadings(
      this.readings.map(({ fact }) => fact),
      (key) => keyRangeAt(key, this.sections),
      this.language,
    )) {
      const { row, column, fact } = this.readings[index]!;
      const suggestion = suggestion_si === undefined ? undefined : inUnit(suggestion_si, fact.asRead.unit);
      this.question(row, column, sentence, suggestion);
    }
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

/** The same digits with the decimal point in another place, where exactly one place makes them possible. */
function slippedPoint(quantity: ReadingQuantityName, value: number, unit: ReadUnit): string | undefined {
  const { possible } = readingQuantities[quantity];
  const meant = [0.001, 0.01, 0.1, 10, 100, 1000].filter((factor) => {
    const value_si = siFromRead(value * factor, unit);
    return value_si > 0 && value_si >= possible[0] && value_si <= possible[1];
  });
  return meant.length === 1 ? String(Number((value * meant[0]!).toPrecision(6))) : undefined;
}

type Stringing = Pick<FactOf<'unisons-described'>, 'strings' | 'winding' | 'layers'>;

const isSameStringing = (a: Stringing, b: Stringing): boolean =>
  a.strings === b.strings && a.winding === b.winding && a.layers === b.layers;

function isSameSection(a: FactOf<'section-described'>, b: FactOf<'section-described'>): boolean {
  return (
    a.section === b.section &&
    a.firstKey === b.firstKey &&
    a.lastKey === b.lastKey &&
    a.bridge === b.bridge &&
    a.frontTermination === b.frontTermination
  );
}

/** Plain or wound, from the layers that are said or from what was read of the note. */
function windingFrom(
  layers: number | undefined,
  read: ReadonlySet<ReadingQuantityName>,
): 'plain' | 'wound' | undefined {
  if (layers !== undefined) return layers === 0 ? 'plain' : 'wound';
  if (read.has('core-diameter') || read.has('over-all-diameter')) return 'wound';
  return read.has('wire-diameter') ? 'plain' : undefined;
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
