import { english, keyRangeAt, type Language } from '@becket/core';
import {
  type Fact,
  type FactOf,
  type Job,
  quantitiesOverSpan,
  readingQuantities,
  unitsForDimension,
} from '@becket/journal';
import { type CellChange, checkChanges } from './cell-changes.ts';
import { type CellProblem, type CellQuestion, CellReport } from './cell-report.ts';
import { inUnit } from './cell-slips.ts';
import type { ColumnMapping } from './column-mapping.ts';
import { doubtfulReadings, type RunOfNotes } from './doubtful-readings.ts';
import { type PlacedReading, RowReader } from './read-rows.ts';
import type { ReadTable } from './read-table.ts';
import { sectionFacts } from './section-facts.ts';
import { unisonFacts } from './unison-facts.ts';

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
  checkMapping(table, mapping, language);
  checkChanges(table, changes, language);

  const report = new CellReport(table, mapping, language);
  const read = new RowReader(job, mapping, changes, report);
  for (const row of table.rows) read.readRow(row);
  const { facts: sectionsDescribed, sections } = sectionFacts(job, read.rows, report);
  const facts: Fact[] = [
    ...sectionsDescribed,
    ...unisonFacts(job, read.rows, read.readings, report),
    ...read.remarks,
    ...read.absences,
    ...read.readings.map(({ fact }) => fact),
    importedFact(table, read, changes, report),
  ];
  questionReadings(read.readings, sections, report);
  return {
    facts,
    problems: report.problems,
    questions: report.questions,
    counts: {
      rows: read.rows.length,
      readings: read.readings.length,
      blankCells: read.blankCells,
      notes: new Set(read.rows.map(({ key }) => key)).size,
    },
  };
}

/** Throws: RangeError when the mapping does not fit the table, or names a unit or a quantity that a column cannot have. */
function checkMapping(table: ReadTable, mapping: ColumnMapping, { say }: Language): void {
  const file = table.fileName;
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
}

function importedFact(
  { fileName, digest }: ReadTable,
  { rows, readings }: RowReader,
  changes: readonly CellChange[],
  report: CellReport,
): FactOf<'readings-imported'> {
  return {
    kind: 'readings-imported',
    v: 1,
    file: fileName,
    digest,
    rows: rows.length,
    readings: readings.length,
    changedCells: changes.map(({ row, column, use, reason }) => ({
      row,
      column: report.columnName(column),
      found: report.textAt(row, column),
      used: use,
      reason,
    })),
  };
}

/** Readings that can be read and look like slips. */
function questionReadings(
  readings: readonly PlacedReading[],
  sections: readonly RunOfNotes[],
  report: CellReport,
): void {
  for (const { index, sentence, suggestion_si } of doubtfulReadings(
    readings.map(({ fact }) => fact),
    (key) => keyRangeAt(key, sections),
    report.language,
  )) {
    const { row, column, fact } = readings[index]!;
    const suggestion = suggestion_si === undefined ? undefined : inUnit(suggestion_si, fact.asRead.unit);
    report.question(row, column, sentence, suggestion);
  }
}
