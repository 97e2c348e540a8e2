import { describe, expect, it } from 'vitest';
import { meanInterval } from './mean-interval.ts';
import { seededChance } from './seeded-chance.ts';

const normal = (random: () => number) =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Pins of a section, in N·m: evenly scattered, read to the tenth, without tails, and with a few that hold far more. */
const scatters = {
  normal: { draw: (random: () => number) => 14 + 3 * normal(random), mean: 14 },
  rounded: { draw: (random: () => number) => Math.round(140 + 10 * normal(random)) / 10, mean: 14 },
  uniform: { draw: (random: () => number) => 5 + 10 * random(), mean: 10 },
  // A log-normal's mean is exp(μ + σ²/2).
  slanted: { draw: (random: () => number) => Math.exp(2.5 + 0.5 * normal(random)), mean: Math.exp(2.625) },
} as const;

function covered(name: keyof typeof scatters, count: number): { share: number; widest: number } {
  const { draw, mean } = scatters[name];
  const random = seededChance(11);
  let [held, tried, widest] = [0, 0, 0];
  for (let block = 0; block < 1000; block += 1) {
    const values = Array.from({ length: count }, () => draw(random));
    const interval = meanInterval(values, { random, resamples: 400 });
    if (interval === undefined) continue;
    tried += 1;
    if (interval.low <= mean && mean <= interval.high) held += 1;
    const spread = Math.max(...values) - Math.min(...values);
    widest = Math.max(
      widest,
      (interval.high - interval.mean) / spread,
      (interval.mean - interval.low) / spread,
    );
  }
  expect(tried).toBeGreaterThan(980);
  return { share: held / tried, widest };
}

describe('meanInterval()', () => {
  // The true means are stated, so the intervals that hold them can be counted. Of a thousand blocks, two standard deviations of
  // a share of 0.95 are 0.014. Student's factor knows no slant, and few readings cannot show one.
  it.each([3, 4, 6, 8, 12])('holds the true mean in about 95 of 100 blocks of %d readings', (count) => {
    for (const name of ['normal', 'rounded', 'uniform'] as const) {
      const { share } = covered(name, count);
      expect([name, share >= 0.915, share <= 0.985], `${name}: ${share}`).toEqual([name, true, true]);
    }
    const { share } = covered('slanted', count);
    expect(share).toBeGreaterThan(0.89);
  });

  // Three readings d, d and 2d apart: the spread is 3d, s/√3 is 0.88d, 4.303 of them 1.3 spreads; the most is had by two that are
  // alike, with s/√3 = spread/3.
  it('never reaches further than Student’s factor can from three readings', () => {
    for (const name of ['normal', 'rounded', 'slanted'] as const)
      expect(covered(name, 3).widest).toBeLessThanOrEqual(4.303 / 3 + 1e-3);
  });

  it('is Student’s interval of few readings', () => {
    // JCGM 100:2008, table G.2: t = 4.30 at 95 % and 2 degrees of freedom.
    const interval = meanInterval([14.9, 15, 15.01], { random: seededChance(1) })!;
    expect(interval.high - interval.mean).toBeCloseTo((4.303 * 0.060828) / Math.sqrt(3), 4);
    expect(interval.mean - interval.low).toBeCloseTo(interval.high - interval.mean, 12);
  });

  it('moves and scales with its readings', () => {
    for (const values of [
      [9, 11, 12, 14, 10, 13.5],
      [9, 11, 12, 14, 10, 13.5, 8, 11.5, 12.5],
    ]) {
      const one = meanInterval(values, { random: seededChance(3) })!;
      const two = meanInterval(
        values.map((value) => 2 * value + 1),
        { random: seededChance(3) },
      )!;
      expect(two.low).toBeCloseTo(2 * one.low + 1, 10);
      expect(two.high).toBeCloseTo(2 * one.high + 1, 10);
      expect(one.low).toBeLessThan(one.mean);
      expect(one.high).toBeGreaterThan(one.mean);
    }
  });

  it('gives no interval where there is none', () => {
    const random = seededChance(1);
    expect(meanInterval([10, 12], { random })).toBeUndefined();
    expect(meanInterval([10, 10, 10], { random })).toBeUndefined();
    expect(meanInterval([13.9, 13.9, 13.9], { random })).toBeUndefined();
    expect(() => meanInterval([], { random })).toThrow(RangeError);
    // Without the one that stands apart, which a third of the resamples lack, there is next to no scatter to divide by.
    const apart = [15, 15.01, 15.02, 14.99, 15, 15.01, 15.02, 18];
    expect(meanInterval(apart, { random })).toBeUndefined();
    expect(meanInterval([...apart.slice(0, 7), 15.03], { random })).toBeDefined();
  });
});
