import { describe, expect, it } from 'vitest';
import {
  equalTemperament,
  historicTemperaments,
  offsetsFromFifths,
  PYTHAGOREAN_COMMA,
  SYNTONIC_COMMA,
  temperamentOffset,
} from './temperament.ts';

const named = (name: string) => historicTemperaments.find((temperament) => temperament.name === name)!;

/** Cents above C as such tables print them: semitones plus offset, C at 0. */
const centsAboveC = (name: string) => named(name).offsets.map((offset, pitch) => 100 * pitch + offset);

describe('historic temperaments', () => {
  it('have the two commas of their definitions', () => {
    expect(PYTHAGOREAN_COMMA).toBeCloseTo(23.46, 3);
    expect(SYNTONIC_COMMA).toBeCloseTo(21.506, 3);
  });

  // Source: K. Gann, An Introduction to Historical Tunings (kylegann.com/histune.html), values as quoted in the module
  // Music.Theory.Tuning.Gann of the Haskell package hmt 0.15 (read there).
  it('Werckmeister III agrees with the published cents', () => {
    const published = [
      0, 90.225, 192.18, 294.135, 390.225, 498.045, 588.27, 696.09, 792.18, 888.27, 996.09, 1092.18,
    ];
    centsAboveC('Werckmeister III').forEach((value, index) => {
      expect(Math.abs(value - published[index]!)).toBeLessThan(0.0051);
    });
  });

  it('Young 1799 agrees with the published cents', () => {
    const published = [0, 93.9, 195.8, 297.8, 391.7, 499.9, 591.9, 697.9, 795.8, 893.8, 999.8, 1091.8];
    centsAboveC('Young 1799').forEach((value, index) => {
      expect(Math.abs(value - published[index]!)).toBeLessThan(0.11);
    });
  });

  it('quarter-comma meantone has eight pure major thirds and agrees with the published cents', () => {
    // Source: as above, 'pietro_aaron_1523'. Its G, printed as 696.8, is left out: a quarter of 5 : 1 is 696.578 cents.
    const published = [0, 76.0, 193.2, 310.3, 386.3, 503.4, 579.5, null, 772.6, 889.7, 1006.8, 1082.9];
    const found = centsAboveC('quarter-comma meantone');
    published.forEach((value, index) => {
      if (value !== null) expect(Math.abs(found[index]! - value)).toBeLessThan(0.11);
    });
    expect(found[7]).toBeCloseTo(300 * Math.log2(5), 9);
    const thirds = found.map((value, pitch) => (found[(pitch + 4) % 12]! - value + 1200) % 1200);
    expect(thirds.filter((third) => Math.abs(third - 1200 * Math.log2(5 / 4)) < 1e-9)).toHaveLength(8);
  });

  it('Kirnberger III has a pure third C–E, and Vallotti six pure fifths', () => {
    expect(centsAboveC('Kirnberger III')[4]).toBeCloseTo(1200 * Math.log2(5 / 4), 9);
    const found = centsAboveC('Vallotti');
    const fifths = found.map((value, pitch) => (found[(pitch + 7) % 12]! - value + 1200) % 1200);
    expect(fifths.filter((fifth) => Math.abs(fifth - 1200 * Math.log2(3 / 2)) < 1e-9)).toHaveLength(6);
    expect(
      fifths.filter((fifth) => Math.abs(fifth - 1200 * Math.log2(3 / 2) + PYTHAGOREAN_COMMA / 6) < 1e-9),
    ).toHaveLength(6);
  });
});

describe('offsetsFromFifths()', () => {
  it('gives equal temperament when the comma is shared by all fifths', () => {
    for (const offset of offsetsFromFifths(Array(11).fill(PYTHAGOREAN_COMMA / 12)))
      expect(offset).toBeCloseTo(0, 9);
  });

  it('refuses a wrong count', () => {
    expect(() => offsetsFromFifths([1, 2])).toThrow('eleven finite narrowings are needed: found 2 values');
  });
});

describe('temperamentOffset()', () => {
  it('is nothing at A in any temperament, and nothing anywhere in equal temperament', () => {
    for (const temperament of historicTemperaments) expect(temperamentOffset(49, temperament)).toBe(0);
    for (let key = 1; key <= 88; key++) expect(temperamentOffset(key, equalTemperament)).toBe(0);
  });

  it('repeats in every octave', () => {
    const temperament = named('Vallotti');
    for (let key = 1; key <= 76; key++) {
      expect(temperamentOffset(key + 12, temperament)).toBe(temperamentOffset(key, temperament));
    }
  });

  it('refuses a temperament that is not twelve notes', () => {
    expect(() => temperamentOffset(1, { name: 'half', offsets: [1, 2], source: '' })).toThrow(
      "Cannot use the temperament 'half' as twelve finite offsets in cents are needed, C to B: found [1, 2]",
    );
  });
});
