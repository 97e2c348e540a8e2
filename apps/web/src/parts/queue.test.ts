import { expect, test } from 'vitest';
import { queue } from './queue.ts';

test('queue() keeps the order of what was typed, and goes on after a failure', async () => {
  const inTurn = queue();
  const done: number[] = [];
  const slow = inTurn(async () => {
    await new Promise((resolve) => setTimeout(resolve, 5));
    done.push(1);
  });
  const failing = inTurn(() => Promise.reject(new Error('no')));
  const last = inTurn(async () => void done.push(2));
  await expect(failing).rejects.toThrow('no');
  await Promise.all([slow, last]);
  expect(done).toEqual([1, 2]);
});
