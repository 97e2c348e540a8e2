import { expect, test } from 'vitest';
import { latestOnly } from './latest-only.ts';

test('latestOnly() passes over an answer that comes after the answer to a later question', async () => {
  const taken: string[] = [];
  const take = latestOnly<string>((answer) => taken.push(answer));
  let endFirst = (_: string) => {};
  const first = take(new Promise((done) => (endFirst = done)));
  await take(Promise.resolve('new'));
  endFirst('old');
  await first;
  expect(taken).toEqual(['new']);
});

test('latestOnly() takes every answer that comes in turn, and hands on what went wrong', async () => {
  const taken: number[] = [];
  const take = latestOnly<number>((answer) => taken.push(answer));
  const [first, second] = [take(Promise.resolve(1)), take(Promise.resolve(2))];
  await Promise.all([first, second]);
  await expect(take(Promise.reject(new Error('no')))).rejects.toThrow('no');
  await take(Promise.resolve(3));
  expect(taken).toEqual([1, 2, 3]);
});
