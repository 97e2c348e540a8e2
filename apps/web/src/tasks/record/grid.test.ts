import { asFoundRecord, foldJob } from '@becket/journal';
import { recordReadings } from '@becket/tasks';
import { expect, test } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { columnsFor, type EnterOrder, gridRows, keyAfter, progressOf, stringColumns } from './grid.ts';
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

test('Enter goes up the column in the chosen order, past notes that the quantity does not belong to', async () => {
  const { notes } = await recordWith({ 41: 610 });
  const rows = gridRows(notes, stringColumns, ({ entry }) => entry);
  const from = (
    key: number,
    order: EnterOrder,
    direction: 1 | -1 = 1,
    quantity = 'speaking-length' as const,
  ) => keyAfter(rows, { key, quantity, direction, order, round: 1 });
  expect(from(40, 'next')).toBe(41);
  expect(from(40, 'next-open')).toBe(42);
  expect(from(40, 'every-third')).toBe(43);
  expect(from(40, 'octave')).toBe(52);
  expect(from(88, 'next')).toBeUndefined();
  expect(from(40, 'next', -1)).toBe(39);
  expect(
    keyAfter(rows, { key: 26, quantity: 'core-diameter', direction: 1, order: 'next', round: 1 }),
  ).toBeUndefined();
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
