import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from './testing/seeded-random.ts';
import { medianOf, originOfValue, robustScatter, valueFromReadings } from './value-from-readings.ts';

const readingLists = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 1, maxLength: 12 });

describe('valueFromReadings()', () => {
  it('moves and stretches with its readings, and does not care for their order', () => {
    fc.assert(
      fc.property(
        readingLists,
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (readings, shift, stretch) => {
          const plain = valueFromReadings(readings, { singleReading: 0.01 });
          const moved = valueFromReadings(readings.map((reading) => shift + stretch * reading).reverse(), {
            singleReading: 0.01 * stretch,
          });
          expect(moved.value).toBeCloseTo(shift + stretch * plain.value, 9);
          expect(moved.standardUncertainty).toBeCloseTo(stretch * plain.standardUncertainty!, 9);
        },
      ),
    );
  });

  it('lies among its readings, and never claims more than the resolution allows', () => {
    fc.assert(
      fc.property(readingLists, fc.double({ min: 1e-3, max: 1, noNaN: true }), (readings, resolution) => {
        const { value, standardUncertainty, count } = valueFromReadings(readings, { resolution });
        expect(value).toBeGreaterThanOrEqual(Math.min(...readings));
        expect(value).toBeLessThanOrEqual(Math.max(...readings));
        expect(standardUncertainty).toBeGreaterThanOrEqual(resolution / Math.sqrt(12));
        expect(count).toBe(readings.length);
      }),
    );
  });

  it('is not moved beyond its neighbours by one wild reading among three or more', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 1.1, noNaN: true }), { minLength: 2, maxLength: 9 }),
        fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }),
        (good, wild) => {
          const { value } = valueFromReadings([...good, wild]);
          expect(value).toBeGreaterThanOrEqual(Math.min(...good));
          expect(value).toBeLessThanOrEqual(Math.max(...good));
        },
      ),
    );
  });

  it('says undefined, and not 0, when nothing speaks for the uncertainty', () => {
    expect(valueFromReadings([1.02]).standardUncertainty).toBeUndefined();
    expect(valueFromReadings([1.02, 1.02, 1.02]).standardUncertainty).toBeUndefined();
  });

  it('gives a single reading the greater of what is known of its hand and its display', () => {
    expect(valueFromReadings([1.02], { singleReading: 0.005 }).standardUncertainty).toBe(0.005);
    // JCGM 100:2008, F.2.2.1: a resolution of δx alone contributes 0.29 δx.
    expect(valueFromReadings([1.02], { resolution: 0.01 }).standardUncertainty! / 0.01).toBeCloseTo(0.29, 2);
  });

  it('refuses no reading, and a reading that is no number', () => {
    expect(() => valueFromReadings([])).toThrow(RangeError);
    expect(() => valueFromReadings([1, Number.NaN])).toThrow(
      'Cannot compute a value from readings as each reading must be finite: found NaN',
    );
    expect(() => valueFromReadings([1], { resolution: -1 })).toThrow(RangeError);
  });

  // The published small-sample factors were written from memory: simulated normal readings stand as the check.
  it.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 15])(
    'has the right scatter and uncertainty for %i normal readings',
    (n) => {
      const { normal } = seededRandom(100 + n);
      const trials = 30_000;
      let scatter = 0;
      let square = 0;
      for (let trial = 0; trial < trials; trial += 1) {
        const readings = Array.from({ length: n }, normal);
        scatter += robustScatter(readings);
        square += medianOf(readings) ** 2;
      }
      expect(scatter / trials).toBeGreaterThan(0.98);
      expect(scatter / trials).toBeLessThan(1.02);
      // With s₁ far above the scatter of these readings, u is s₁ · √v_n exactly.
      const stated = valueFromReadings(
        Array.from({ length: n }, () => 0),
        { singleReading: 1 },
      );
      expect(stated.standardUncertainty! / Math.sqrt(square / trials)).toBeGreaterThan(0.97);
      expect(stated.standardUncertainty! / Math.sqrt(square / trials)).toBeLessThan(1.05);
    },
  );
});

describe('originOfValue()', () => {
  it('takes the surest', () => {
    expect(originOfValue(['inferred', 'copied', 'stamped'])).toBe('stamped');
    expect(originOfValue(['inferred'])).toBe('inferred');
    expect(() => originOfValue([])).toThrow(RangeError);
  });
});
