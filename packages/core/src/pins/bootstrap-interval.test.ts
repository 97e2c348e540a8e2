import { describe, expect, it } from 'vitest';
import { bootstrapMeanInterval } from './bootstrap-interval.ts';

/** Mulberry32: a small generator, so that chance is the same every time. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
const normal = (random: () => number) =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

describe('bootstrapMeanInterval()', () => {
  // Known distributions: the true mean is stated, so the share of intervals that hold it can be counted. The short
  // tails of the uniform make the studentised interval a little wide: 97.5 % was measured at n = 12.
  it.each([
    {
      name: 'normal',
      count: 12,
      draw: (random: () => number) => 14 + 3 * normal(random),
      mean: 14,
      atMost: 0.97,
    },
    {
      name: 'uniform',
      count: 12,
      draw: (random: () => number) => 5 + 10 * random(),
      mean: 10,
      atMost: 0.985,
    },
  ])('covers the mean of $name readings in at least 93 of 100 blocks', ({ count, draw, mean, atMost }) => {
    const random = seeded(11);
    let covered = 0;
    const blocks = 1000;
    for (let block = 0; block < blocks; block += 1) {
      const values = Array.from({ length: count }, () => draw(random));
      const interval = bootstrapMeanInterval(values, { random, resamples: 600 });
      if (interval !== undefined && interval.low <= mean && mean <= interval.high) covered += 1;
    }
    expect(covered / blocks).toBeGreaterThanOrEqual(0.93);
    expect(covered / blocks).toBeLessThanOrEqual(atMost);
  });

  it('moves and scales with its readings', () => {
    const values = [9, 11, 12, 14, 10, 13.5];
    const one = bootstrapMeanInterval(values, { random: seeded(3) })!;
    const two = bootstrapMeanInterval(
      values.map((value) => 2 * value + 1),
      { random: seeded(3) },
    )!;
    expect(two.low).toBeCloseTo(2 * one.low + 1, 10);
    expect(two.high).toBeCloseTo(2 * one.high + 1, 10);
    expect(one.low).toBeLessThan(one.mean);
    expect(one.high).toBeGreaterThan(one.mean);
  });

  it('gives no interval where there is none', () => {
    expect(bootstrapMeanInterval([10, 12], { random: seeded(1) })).toBeUndefined();
    expect(bootstrapMeanInterval([10, 10, 10], { random: seeded(1) })).toBeUndefined();
    expect(() => bootstrapMeanInterval([], { random: seeded(1) })).toThrow(RangeError);
  });
});
