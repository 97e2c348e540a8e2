import { foldJob, newUlid } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { openJob, recordReadings, type TaskContext } from '@becket/tasks';
import { expect, test } from 'vitest';
import { readingOrder } from './reading-order.ts';

test('a correction takes the place of what it corrects, and a correction of it too', async () => {
  let clock = Date.UTC(2026, 2, 1);
  let seed = 7;
  const random = () => {
    seed = (seed * 1664525 + 1013904223) % 2 ** 32;
    return seed / 2 ** 32;
  };
  const now = () => {
    clock += 1000;
    return new Date(clock);
  };
  const context: TaskContext = {
    store: createMemoryStore(),
    now,
    newId: () => newUlid(now(), random),
    by: 'test',
    device: 'bench',
  };
  const { id } = await openJob(context, {
    title: 'order',
    piano: { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 },
  });
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
