import { addToGroup, keyRangeAt, noteName } from '@becket/core';
import type { FactOf, Job } from '@becket/journal';
import { checkSections } from '../describe-piano.ts';
import type { CellReport } from './cell-report.ts';
import type { RunOfNotes } from './doubtful-readings.ts';
import type { ReadRow } from './read-rows.ts';

/**
 * The sections that a table describes, and all that stand then, the table's own first.
 *
 * One section for each name in the section column; runs of the compass, which must not overlap. A section that the job
 * knows already keeps at least its known run: a blank cell at its end does not make it shorter.
 */
export function sectionFacts(
  job: Job,
  rows: readonly ReadRow[],
  report: CellReport,
): { readonly facts: FactOf<'section-described'>[]; readonly sections: readonly RunOfNotes[] } {
  const { language } = report;
  const bySection = new Map<string, ReadRow[]>();
  for (const row of rows) {
    const section = row.section ?? knownSectionAt(job, row, report);
    if (section === undefined) continue;
    addToGroup(bySection, section, row);
  }
  const facts = [...bySection].map(([section, own]): FactOf<'section-described'> => {
    const known = job.sections.find((one) => one.section === section);
    const keys = own.map(({ key }) => key).concat(known === undefined ? [] : [known.firstKey, known.lastKey]);
    return {
      kind: 'section-described',
      v: 1,
      section,
      firstKey: Math.min(...keys),
      lastKey: Math.max(...keys),
      bridge: agreed({ section, rows: own }, 'bridge', report) ?? known?.bridge ?? 'unknown',
      frontTermination:
        agreed({ section, rows: own }, 'frontTermination', report) ?? known?.frontTermination ?? 'unknown',
    };
  });
  try {
    checkSections(job, facts, language);
  } catch (error) {
    const row = firstRowOutOfPlace(bySection);
    const sentence = error instanceof Error ? error.message : String(error);
    const column = report.columnOf('section');
    report.problemInWords({
      row: row?.row ?? rows[0]!.row,
      column,
      columnName: column < 0 ? language.say('section') : report.columnName(column),
      found: row?.section ?? '',
      expected: language.say('sections that do not overlap'),
      sentence,
    });
  }
  // A section as the table has it stands before the same one as the job knew it.
  const sections = [...facts, ...job.sections];
  for (const { row, key } of bySection.size === 0 ? [] : rows) {
    if (keyRangeAt(key, sections) !== undefined) continue;
    report.question(
      row,
      report.columnOf('section'),
      language.say('{note} is in no section; say in which, or leave it so.', { note: noteName(key) }),
    );
  }
  return {
    facts: facts.filter((fact) => !job.sections.some((known) => isSameSection(known, fact))),
    sections,
  };
}

/** Where a row names a bridge or a termination and no section, the job's own section is meant. */
function knownSectionAt(
  job: Job,
  { row, key, bridge, frontTermination }: ReadRow,
  report: CellReport,
): string | undefined {
  if (bridge === undefined && frontTermination === undefined) return undefined;
  const known = keyRangeAt(key, job.sections);
  if (known === undefined && report.columnOf('section') < 0) {
    const column = report.columnOf(bridge === undefined ? 'front termination' : 'bridge');
    report.problem(
      row,
      column,
      bridge ?? frontTermination!,
      report.language.say('the section that {note} belongs to', { note: noteName(key) }),
    );
  }
  return known?.section;
}

/** What the rows of a section say alike; a row that says otherwise is a problem. */
function agreed<Name extends 'bridge' | 'frontTermination'>(
  { section, rows }: { readonly section: string; readonly rows: readonly ReadRow[] },
  name: Name,
  report: CellReport,
): ReadRow[Name] {
  const first = rows.find((row) => row[name] !== undefined)?.[name];
  for (const row of rows) {
    const found = row[name];
    if (found === undefined || found === first) continue;
    const column = report.columnOf(name === 'bridge' ? 'bridge' : 'front termination');
    report.problem(
      row.row,
      column,
      found,
      report.language.say("the same as in the other rows of section '{section}', '{first}',", {
        section,
        first: first!,
      }),
    );
  }
  return first;
}

/** The first row, bass to treble, whose section had already given way to another. */
function firstRowOutOfPlace(bySection: ReadonlyMap<string, readonly ReadRow[]>): ReadRow | undefined {
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

function isSameSection(a: FactOf<'section-described'>, b: FactOf<'section-described'>): boolean {
  return (
    a.section === b.section &&
    a.firstKey === b.firstKey &&
    a.lastKey === b.lastKey &&
    a.bridge === b.bridge &&
    a.frontTermination === b.frontTermination
  );
}
