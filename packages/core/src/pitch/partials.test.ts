import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import { hertz } from '../units/index.ts';
import { centsAboveHarmonic, centsAboveHarmonicPerB, matchedWidth, partialFromFirst } from './partials.ts';

const inharmonicity = fc.double({ min: 0, max: 0.05, noNaN: true });
const partial = fc.integer({ min: 1, max: 16 });

describe('partialFromFirst()', () => {
  it('is an exact multiple without inharmonicity, and the first partial itself for n = 1', () => {
    expect(partialFromFirst({ firstPartial: hertz(110), inharmonicity: 0, partial: 5 })).toBe(550);
    fc.assert(
      fc.property(inharmonicity, (B) => {
        expect(partialFromFirst({ firstPartial: hertz(110), inharmonicity: B, partial: 1 })).toBeCloseTo(
          110,
          12,
        );
      }),
      { seed: 2 },
    );
  });

  it('follows f_n = n·f₀·√(1 + B·n²) from the ideal first mode', () => {
    const f0 = 100;
    const B = 7e-4;
    const f1 = f0 * Math.sqrt(1 + B);
    for (const n of [2, 5, 12]) {
      const found = partialFromFirst({ firstPartial: hertz(f1), inharmonicity: B, partial: n });
      expect(found).toBeCloseTo(n * f0 * Math.sqrt(1 + B * n * n), 9);
    }
  });

  it('refuses half partials and negative inharmonicity', () => {
    const note = { firstPartial: hertz(110), inharmonicity: 0, partial: 1.5 };
    expect(() => partialFromFirst(note)).toThrow('the partial number must be a whole number from 1 up');
    expect(() => partialFromFirst({ ...note, partial: 2, inharmonicity: -1e-5 })).toThrow(RangeError);
  });
});

describe('matchedWidth()', () => {
  // Source: f_n = n·f₀·√(1 + B·n²); see each check.
  it.each(publishedChecks(/^octave-/))('agrees with the check $id', (check) => {
    const found = matchedWidth({
      lowerInharmonicity: inputOf(check, 'B_lower'),
      upperInharmonicity: inputOf(check, 'B_upper'),
      lowerPartial: inputOf(check, 'a'),
      upperPartial: inputOf(check, 'b'),
    });
    // The checks are printed to three digits after the point and their tolerance is finer than that: compare as printed.
    expectPublished(check, Number(found.toFixed(3)));
  });

  it('makes the two partials coincide', () => {
    fc.assert(
      fc.property(inharmonicity, inharmonicity, partial, partial, (lowerB, upperB, p, q) => {
        const width = matchedWidth({
          lowerInharmonicity: lowerB,
          upperInharmonicity: upperB,
          lowerPartial: p,
          upperPartial: q,
        });
        const lower = partialFromFirst({ firstPartial: hertz(100), inharmonicity: lowerB, partial: p });
        const upper = partialFromFirst({
          firstPartial: hertz(100 * 2 ** (width / 1200)),
          inharmonicity: upperB,
          partial: q,
        });
        expect(upper / lower).toBeCloseTo(1, 11);
      }),
      { seed: 3 },
    );
  });
});

describe('centsAboveHarmonicPerB()', () => {
  it('is the slope of centsAboveHarmonic', () => {
    for (const B of [1e-5, 4e-4, 0.02]) {
      for (const n of [1, 2, 6]) {
        const step = B * 1e-4;
        const slope = (centsAboveHarmonic(B + step, n) - centsAboveHarmonic(B - step, n)) / (2 * step);
        expect(Math.abs(slope - centsAboveHarmonicPerB(B, n))).toBeLessThan(1e-5 * (1 + Math.abs(slope)));
      }
    }
  });
});
