import { noteName } from '@becket/core';
import type { FactOf, Job, ReadingQuantityName } from '@becket/journal';
import type { CellReport } from './cell-report.ts';
import type { PlacedReading, ReadRow } from './read-rows.ts';

type Stringing = Pick<FactOf<'unisons-described'>, 'strings' | 'winding' | 'layers'>;

const isSameStringing = (a: Stringing, b: Stringing): boolean =>
  a.strings === b.strings && a.winding === b.winding && a.layers === b.layers;

/** How the notes are strung, as far as the table says: runs of equal notes, one fact each. */
export function unisonFacts(
  job: Job,
  rows: readonly ReadRow[],
  readings: readonly PlacedReading[],
  report: CellReport,
): FactOf<'unisons-described'>[] {
  const byKey = new Map<number, Stringing>();
  const quantitiesOf = new Map<number, Set<ReadingQuantityName>>();
  for (const { fact } of readings) {
    const key = fact.place.key!;
    const known = quantitiesOf.get(key);
    if (known === undefined) quantitiesOf.set(key, new Set([fact.quantity]));
    else known.add(fact.quantity);
  }
  const rowOf = new Map<number, number>();
  const withoutCount: ReadRow[] = [];
  const withoutWinding: ReadRow[] = [];
  for (const row of rows) {
    const { key, strings, winding, layers } = row;
    const standing = job.unisons.get(key);
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
    requireSound(row, said, { said: byKey.get(key), row: rowOf.get(key) }, report);
    byKey.set(key, said);
    if (!rowOf.has(key)) rowOf.set(key, row.row);
  }
  questionHalfSaid(withoutCount, 'winding', report);
  questionHalfSaid(withoutWinding, 'strings', report);
  for (const [key, said] of byKey) {
    const standing = job.unisons.get(key);
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
function requireSound(
  { row, key, layers, winding }: ReadRow,
  said: Stringing,
  {
    said: earlier,
    row: earlierRow,
  }: { readonly said: Stringing | undefined; readonly row: number | undefined },
  report: CellReport,
): void {
  const { say } = report.language;
  if (layers !== undefined && (said.winding === 'plain') !== (layers === 0)) {
    const needed =
      winding === 'plain' ? say('0 layers of a plain string') : say('1 or 2 layers of a wound string');
    report.problem(row, report.columnOf('layers'), `${layers}`, needed);
  }
  if (earlier !== undefined && !isSameStringing(earlier, said)) {
    const column = Math.max(report.columnOf('strings'), 0);
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
    report.problem(row, column, words(said), expected);
  }
}

/** One question for all rows that say only half of how a note is strung. */
function questionHalfSaid(rows: readonly ReadRow[], said: 'strings' | 'winding', report: CellReport): void {
  const [first] = rows;
  if (first === undefined) return;
  const names = rows.slice(0, 6).map(({ key }) => noteName(key));
  const { say } = report.language;
  const more = rows.length - names.length;
  const notes =
    more > 0 ? say('{names} and {count} more', { names: names.join(', '), count: more }) : names.join(', ');
  report.question(
    first.row,
    report.columnOf(said),
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

/** Plain or wound, from the layers that are said or from what was read of the note. */
function windingFrom(
  layers: number | undefined,
  read: ReadonlySet<ReadingQuantityName>,
): 'plain' | 'wound' | undefined {
  if (layers !== undefined) return layers === 0 ? 'plain' : 'wound';
  if (read.has('core-diameter') || read.has('over-all-diameter')) return 'wound';
  return read.has('wire-diameter') ? 'plain' : undefined;
}
