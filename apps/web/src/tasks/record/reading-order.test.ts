import { foldJob } from '@becket/journal';
import { recordReadings } from '@becket/tasks';
import { expect, test } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { readingOrder } from './reading-order.ts';

test('a correction takes the place of what it corrects, and a correction of it too', async () => {
  const context = testContext();
  const id = await testJob(context);
  const take = async (value: number, replaces?: string) => {
    const correction = replaces === undefined ? {} : { replaces, reason: 'typed again' };
    const { entries } = await recordReadings(context, id, [
      { quantity: 'wire-diameter', place: { key: 40 }, value, unit: 'mm', ...correction },
    ]);
    return entries[0]!;
  };
  const first = await take(1.5);
  await take(1.02);
  const corrected = await take(1.05, first);
  await take(1.04, corrected);
  const { entries } = await context.store.entries(id);
  const order = readingOrder(entries);
  const inOrder = [...foldJob(entries).readings].sort((a, b) => (order(a) < order(b) ? -1 : 1));
  expect(inOrder.map((reading) => reading.asRead.value)).toEqual([1.04, 1.02]);
});
