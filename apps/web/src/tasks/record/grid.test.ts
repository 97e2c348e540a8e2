import { asFoundRecord, foldJob, type ReadingQuantityName } from '@becket/journal';
import { recordReadings } from '@becket/tasks';
import { describe, expect, test } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import {
  type CellPlace,
  cellAfter,
  columnsFor,
  type EnterOrder,
  enterOrders,
  gridRows,
  progressOf,
  stringColumns,
} from './grid.ts';
import { questionsOf } from './questions.ts';

async function recordWith(lengths_mm: Readonly<Record<number, number>> = {}) {
  const context = testContext();
  const job = await testJob(context);
  await recordReadings(
    context,
    job,
    Object.entries(lengths_mm).map(([key, value]) => ({
      quantity: 'speaking-length',
      place: { key: Number(key) },
      value,
      unit: 'mm',
    })),
  );
  return asFoundRecord(foldJob((await context.store.entries(job)).entries));
}

test('a section shows the columns that its strings have', async () => {
  const { notes } = await recordWith();
  const names = (own: typeof notes) => columnsFor(own, false).map(({ quantity }) => quantity);
  expect(names(notes.filter(({ key }) => key > 26))).toEqual(['wire-diameter', 'speaking-length']);
  expect(names(notes.filter(({ key }) => key <= 26))).not.toContain('wire-diameter');
});

describe('Enter', async () => {
  const { notes } = await recordWith({ 41: 610 });
  const rows = gridRows(notes, stringColumns, ({ entry }) => entry);
  const from = (
    key: number,
    order: EnterOrder,
    direction: 1 | -1 = 1,
    quantity: ReadingQuantityName = 'speaking-length',
  ) => {
    const next = cellAfter(rows, { key, quantity, direction, order, round: 1 });
    return next && `${next.quantity} ${next.key}`;
  };

  test.each([
    ['next', 41, 39],
    ['next-open', 42, 39],
    ['section', 41, 39],
    ['every-second', 42, 38],
    ['every-third', 43, 37],
    ['every-fourth', 44, 36],
    ['octave', 52, 28],
  ] as const)('goes on in the order %s, and back in it', (order, up, down) => {
    expect(from(40, order)).toBe(`speaking-length ${up}`);
    expect(from(40, order, -1)).toBe(`speaking-length ${down}`);
  });

  test('stays in the column, and at its end where it is', () => {
    for (const order of ['next', 'next-open', 'every-third', 'octave'] as const) {
      expect(from(88, order)).toBeUndefined();
      expect(from(1, order, -1)).toBeUndefined();
    }
    expect(from(26, 'next', 1, 'core-diameter')).toBeUndefined();
    expect(from(26, 'next')).toBe('speaking-length 27');
  });

  test('takes a section column by column before the next section', () => {
    expect(from(26, 'section', 1, 'core-diameter')).toBe('over-all-diameter 1');
    expect(from(26, 'section', 1, 'bare-back')).toBe('wire-diameter 27');
    expect(from(27, 'section', -1, 'wire-diameter')).toBe('bare-back 26');
    expect(from(88, 'section')).toBeUndefined();
  });

  test.each(Object.keys(enterOrders) as EnterOrder[])(
    'in the order %s it comes to an end, and to no cell twice',
    (order) => {
      const seen = new Set<string>();
      let at: CellPlace | undefined = { key: 1, quantity: 'core-diameter' };
      while (at !== undefined) {
        const name = `${at.quantity} ${at.key}`;
        expect(seen).not.toContain(name);
        seen.add(name);
        at = cellAfter(rows, { ...at, direction: 1, order, round: 1 });
      }
      // A section at a time passes every cell that is needed; the others pass their column.
      if (order === 'section') expect(seen.size).toBe(26 * 5 + 62 * 2);
      if (order === 'next') expect(seen.size).toBe(26);
    },
  );
});

test('progress counts what is needed and what is there', async () => {
  const { notes } = await recordWith({ 40: 640 });
  const progress = progressOf(notes);
  expect(progress.needed).toBe(26 * 5 + 62 * 2);
  expect(progress.known).toBe(1);
});

test('a decimal slip is questioned beside its cell, and the break between two sections is not', async () => {
  const lengths: Record<number, number> = {};
  for (let key = 15; key <= 26; key += 1) lengths[key] = 1300 - 12 * key;
  for (let key = 27; key <= 50; key += 1) lengths[key] = 1250 * 0.965 ** (key - 27);
  lengths[40] = 78.6;
  const questions = questionsOf(await recordWith(lengths));
  expect([...questions.keys()]).toEqual([40]);
  expect(questions.get(40)?.[0]?.suggestion_si).toBeCloseTo(0.786, 3);
});
