import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inMillimetres, metres, millimetres } from '../units/index.ts';
import { type LengthFitOptions, type LengthReading, lengthFit, studentFactor } from './length-fit.ts';
import { robustSmooth } from './robust-smooth.ts';
import { seededRandom } from './testing/seeded-random.ts';

/** A section of an invented piano: each note a little over a semitone's share shorter, bent towards the bass. */
const trueLength = (key: number) => 0.9 * 0.949 ** (key - 40) * Math.exp(-0.0004 * (key - 40) ** 2);
const section = { firstKey: 30, lastKey: 54 };
const keys = Array.from({ length: 25 }, (_, index) => 30 + index);
const readingOf = (key: number, error_mm = 0): LengthReading => ({
  key,
  speakingLength: metres(trueLength(key) + error_mm / 1000),
});

const fitted = (readings: readonly LengthReading[], options: LengthFitOptions = section) => {
  const fit = lengthFit(readings, options);
  if (!fit.isFitted) throw new Error(fit.reason);
  return fit;
};

describe('lengthFit()', () => {
  it('names a wild reading and no other, and is not bent by it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 24 }),
        fc.oneof(
          fc.double({ min: 15, max: 400, noNaN: true }),
          fc.double({ min: -150, max: -15, noNaN: true }),
        ),
        fc.integer({ min: 1, max: 1e6 }),
        (place, error, seed) => {
          const { normal } = seededRandom(seed);
          const readings = keys.map((key, index) =>
            readingOf(key, normal() * 0.8 + (index === place ? error : 0)),
          );
          const { outliers, lengths } = fitted(readings);
          expect(outliers.map((outlier) => outlier.key)).toContain(keys[place]!);
          // One false alarm may happen: four standard deviations, 24 readings, a scatter that is itself estimated.
          expect(outliers.length).toBeLessThanOrEqual(2);
          const inside = place > 1 && place < 23;
          expect(
            Math.abs(inMillimetres(lengths[place]!.speakingLength) - 1000 * trueLength(keys[place]!)),
          ).toBeLessThan(inside ? 4 : 8);
        },
      ),
      { numRuns: 60, seed: 4 },
    );
  });

  it('finds a quarter of the readings wrong', () => {
    const wrong = new Set([31, 35, 38, 42, 47, 52]);
    const { normal } = seededRandom(9);
    const readings = keys.map((key) =>
      readingOf(key, normal() * 0.7 + (wrong.has(key) ? (key % 2 ? 60 : -45) : 0)),
    );
    expect(fitted(readings).outliers.map(({ key }) => key)).toEqual([...wrong]);
  });

  it('says the outlier in one sentence with the figures', () => {
    const { outliers } = fitted(keys.map((key) => readingOf(key, key === 40 ? 24 : Math.sin(key * 7))));
    expect(outliers).toHaveLength(1);
    expect(outliers[0]!.sentence).toMatch(
      /^C4: a speaking length of 924\.0 mm is 2\d\.\d mm more than the rest of its section suggests, (?:89|90)\d\.\d mm \(89\d\.\d to 90\d\.\d\)\. Measure it again\.$/,
    );
  });

  it('holds the true length of a gap at least as often as it says, with one slip in the section', () => {
    let [inside, all, alarms, good] = [0, 0, 0, 0];
    for (let seed = 1; seed <= 200; seed += 1) {
      const { normal, uniform, integer } = seededRandom(seed);
      // Each string lies 0.6 mm off the line as it was made, and is read to 0.8 mm.
      const truth = keys.map((key) => trueLength(key) * 1000 + 0.6 * normal());
      const slip = integer(0, 24);
      const isRead = keys.map(() => uniform() > 0.25);
      const readings = keys.flatMap((key, index): LengthReading[] => {
        if (!isRead[index]) return [];
        const error = index === slip ? 30 * (uniform() < 0.5 ? -1 : 1) : 0;
        return [{ key, speakingLength: millimetres(truth[index]! + 0.8 * normal() + error) }];
      });
      const { lengths, outliers } = fitted(readings);
      keys.forEach((_, index) => {
        // A gap inside the readings; the ends are extrapolated.
        if (isRead[index] || index < 2 || index > 22) return;
        all += 1;
        const { low, high } = lengths[index]!;
        if (inMillimetres(low) <= truth[index]! && truth[index]! <= inMillimetres(high)) inside += 1;
      });
      good += readings.length - 1;
      alarms += outliers.filter(({ key }) => key !== keys[slip]).length;
    }
    expect(all).toBeGreaterThan(800);
    expect(inside / all).toBeGreaterThan(0.93);
    // The interval has the scatter of a reading in it, a little more than the string's own.
    expect(inside / all).toBeLessThan(0.999);
    expect(alarms / good).toBeLessThan(0.005);
  });

  it('covers a further reading at the stated level', () => {
    let [inside, all] = [0, 0];
    for (let seed = 1; seed <= 250; seed += 1) {
      const { normal, uniform } = seededRandom(10_000 + seed);
      const isRead = keys.map(() => uniform() > 0.2);
      const read = (key: number) => readingOf(key, 1.2 * normal());
      const { lengths } = fitted(keys.filter((_, index) => isRead[index]).map(read));
      keys.forEach((key, index) => {
        if (isRead[index] || index < 2 || index > 22) return;
        all += 1;
        const { low, high } = lengths[index]!;
        const further = read(key).speakingLength;
        if (low <= further && further <= high) inside += 1;
      });
    }
    expect(inside / all).toBeGreaterThan(0.93);
    expect(inside / all).toBeLessThan(0.97);
  });

  it('stretches with its lengths', () => {
    const { normal } = seededRandom(3);
    const readings = keys.filter((key) => key % 4 !== 0).map((key) => readingOf(key, normal()));
    const plain = fitted(readings);
    const double = fitted(
      readings.map((one) => ({ ...one, speakingLength: metres(2 * one.speakingLength) })),
      { ...section, singleReading: millimetres(1) },
    );
    plain.lengths.forEach((one, index) => {
      expect(double.lengths[index]!.speakingLength / one.speakingLength).toBeCloseTo(2, 6);
      expect(double.lengths[index]!.high / one.high).toBeCloseTo(2, 6);
    });
  });

  it('is a straight line where the readings are one, exactly', () => {
    const line = keys.map((key) => ({ key, value: 3 - 0.05 * key }));
    const { line: found, outliers } = robustSmooth(line, { ...section, leastScatter: 1e-3 });
    found.forEach((value, index) => {
      expect(value).toBeCloseTo(line[index]!.value, 9);
    });
    expect(outliers).toEqual([]);
  });

  it('says what is missing where too few notes were read', () => {
    expect(
      lengthFit(
        keys.slice(0, 4).map((key) => readingOf(key)),
        section,
      ),
    ).toEqual({
      isFitted: false,
      reason:
        'Cannot fill the lengths of D3 to D5 as 5 notes must be read for a line: found 4. Read more of them.',
    });
  });

  it('refuses a key outside the section or twice, and a length that is none', () => {
    const some = keys.map((key) => readingOf(key));
    expect(() => lengthFit([...some, { key: 60, speakingLength: metres(1) }], section)).toThrow(
      /must be from 30 to 54/,
    );
    expect(() => lengthFit([...some, some[3]!], section)).toThrow(/found 33 twice/);
    expect(() => lengthFit([{ key: 30, speakingLength: metres(0) }], section)).toThrow(RangeError);
  });
});

describe('studentFactor()', () => {
  // JCGM 100:2008, table G.2, column 95 % (from memory).
  it.each([
    [3, 3.18],
    [4, 2.78],
    [5, 2.57],
    [8, 2.31],
    [10, 2.23],
    [20, 2.09],
    [50, 2.01],
    [1e9, 1.96],
  ])('agrees with the table for %d degrees of freedom', (freedom, factor) => {
    expect(Math.abs(studentFactor(0.95, freedom) / factor - 1)).toBeLessThan(0.006);
  });
});
