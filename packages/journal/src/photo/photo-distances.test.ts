import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PhotoMark } from '../facts/photo.ts';
import { photoScale, pointingShare } from './photo-distances.ts';

const distance = (from: [number, number], to: [number, number], known_m?: number): PhotoMark => ({
  mark: 'distance',
  from: { x: from[0], y: from[1] },
  to: { x: to[0], y: to[1] },
  ...(known_m === undefined ? {} : { known_m }),
});
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('photoScale()', () => {
  it('is undefined without a known length: nothing on the photo has a length then', () => {
    const marks = [distance([0, 0], [1, 1]), { mark: 'label' as const, at: { x: 0, y: 0 }, text: 'a' }];
    expect(photoScale({ width: 100, height: 100, marks })).toBeUndefined();
  });

  it('gives a bar of 100 mm over half the width its own length, and a quarter of the width 50 mm', () => {
    const marks = [distance([0.1, 0.5], [0.6, 0.5], 0.1), distance([0.2, 0.2], [0.45, 0.2])];
    const { metresPerPixel, distances, disagreement } = photoScale({ width: 2000, height: 1500, marks })!;
    expect(metresPerPixel).toBeCloseTo(0.1 / 1000, 12);
    expect(distances[0]).toEqual({
      mark: 0,
      length_m: 0.1,
      standardUncertainty_m: undefined,
      origin: 'measured',
    });
    expect(distances[1]!.length_m).toBeCloseTo(0.05, 12);
    expect(disagreement).toBeUndefined();
  });

  it('measures the same along and across a photo that is not square', () => {
    // 400 pixels both times: 0.4 of the width, 0.8 of the height.
    const marks = [distance([0.1, 0.1], [0.5, 0.1], 0.04), distance([0.9, 0.1], [0.9, 0.9])];
    expect(photoScale({ width: 1000, height: 500, marks })!.distances[1]!.length_m).toBeCloseTo(0.04, 12);
  });

  it('does not depend on the resolution at which the photo is kept', () => {
    fc.assert(
      fc.property(share, share, fc.integer({ min: 1, max: 8 }), (x, y, scale) => {
        const marks = [distance([0, 0], [x, 0.5], 0.2), distance([0.3, y], [1, 0])];
        const small = photoScale({ width: 640, height: 480, marks })!.distances[1]!;
        const large = photoScale({ width: 640 * scale, height: 480 * scale, marks })!.distances[1]!;
        expect(large.length_m).toBeCloseTo(small.length_m, 10);
        expect(large.standardUncertainty_m).toBeCloseTo(small.standardUncertainty_m!, 10);
      }),
    );
  });

  it('says by how much two scale bars differ, and weighs the longer one more', () => {
    const marks = [distance([0, 0.5], [0.5, 0.5], 0.1), distance([0, 0.6], [0.5, 0.6], 0.11)];
    const scale = photoScale({ width: 1000, height: 1000, marks })!;
    expect(scale.disagreement).toBeCloseTo(0.01 / 0.105, 9);
    expect(scale.metresPerPixel).toBeCloseTo(0.21 / 1000, 12);
  });

  it('has the uncertainty that shaken end points show (seeded trial against the formula)', () => {
    const width = 2560;
    const height = 1920;
    let seed = 42;
    const chance = () => {
      seed = (seed * 1664525 + 1013904223) % 2 ** 32;
      return (seed + 0.5) / 2 ** 32;
    };
    const normal = () => Math.sqrt(-2 * Math.log(chance())) * Math.cos(2 * Math.PI * chance());
    const shaken = ([x, y]: [number, number]): [number, number] => [
      x + (normal() * pointingShare * width) / width,
      y + (normal() * pointingShare * width) / height,
    ];
    const trial = (): PhotoMark[] => [
      distance(shaken([0.1, 0.2]), shaken([0.6, 0.3]), 0.15),
      distance(shaken([0.3, 0.8]), shaken([0.5, 0.6])),
    ];
    const lengths = Array.from(
      { length: 4000 },
      () => photoScale({ width, height, marks: trial() })!.distances[1]!.length_m,
    );
    const mean = lengths.reduce((sum, one) => sum + one, 0) / lengths.length;
    const spread = Math.sqrt(lengths.reduce((sum, one) => sum + (one - mean) ** 2, 0) / lengths.length);
    const marks = [distance([0.1, 0.2], [0.6, 0.3], 0.15), distance([0.3, 0.8], [0.5, 0.6])];
    const stated = photoScale({ width, height, marks })!.distances[1]!.standardUncertainty_m!;
    // 4000 trials know a spread to about 1.1 %; four of those.
    expect(Math.abs(spread / stated - 1)).toBeLessThan(0.045);
  });

  it('takes no notice of a mark without length', () => {
    const marks = [distance([0.1, 0.1], [0.1, 0.1], 0.2), distance([0, 0], [1, 1])];
    expect(photoScale({ width: 100, height: 100, marks })).toBeUndefined();
  });
});
