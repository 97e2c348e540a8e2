import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakShare, stringTension } from '../strings/index.ts';
import { A228_MINIMUM } from '../tables/index.ts';
import { cents, hertz, kilogramsPerCubicMetre, millimetres } from '../units/index.ts';
import { COMMON_FALL_BACK, fallBack, type Raise } from './fall-back.ts';
import { nextOverpull } from './next-overpull.ts';
import { overpullLimit, tensionFactor } from './overpull-limit.ts';

const raise = (before: number, after: number, later: number, uncertainty = 1): Raise => ({
  before: cents(before),
  after: cents(after),
  later: cents(later),
  standardUncertainty: cents(uncertainty),
});

describe('overpullLimit()', () => {
  // Against the pages of the string itself: its tension at the raised frequency, by T = π·ρ·(d·L·f)².
  it('is where the string itself comes to the share that is allowed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.9, noNaN: true }),
        fc.double({ min: 300, max: 480, noNaN: true }),
        (highestShare, frequency) => {
          const shareAt = (f: number) => {
            const diameter = millimetres(0.95);
            const tension = stringTension({
              diameter,
              speakingLength: millimetres(400),
              frequency: hertz(f),
              density: kilogramsPerCubicMetre(7850),
            });
            return breakShare({ tension, diameter, strengthTable: A228_MINIMUM }).share;
          };
          const limit = overpullLimit({ breakShare: shareAt(frequency), highestShare });
          expect(shareAt(frequency * 2 ** (limit / 1200))).toBeCloseTo(highestShare, 9);
          expect(tensionFactor(limit) * shareAt(frequency)).toBeCloseTo(highestShare, 9);
        },
      ),
    );
  });

  it('lies below pitch for a string that stands above the limit at its pitch', () => {
    expect(overpullLimit({ breakShare: 0.7, highestShare: 0.65 })).toBeLessThan(0);
    expect(() => overpullLimit({ breakShare: 0, highestShare: 0.65 })).toThrow(RangeError);
  });
});

describe('fallBack()', () => {
  // By hand: raises of 60 and 20 cents fell by 18 and 4: shares 0.3 and 0.2. Weights 1/(2/3600 + 0.0025) = 327.273,
  // 1/(2/400 + 0.0025) = 133.333 and 1/0.01 = 100 of the default 0.25; sum 560.606;
  // k = (98.1818 + 26.6667 + 25) / 560.606 = 0.267297;
  // χ² = 327.273·0.0010695 + 133.333·0.0045288 + 100·0.0002992 = 0.98379 < 2, so u = √(1/560.606) = 0.042235.
  it('is the weighted mean of the falls and the default, worked by hand', () => {
    const { share, standardUncertainty, shares } = fallBack([raise(-50, 10, -8), raise(-8, 12, 8)]);
    expect(shares).toEqual([0.3, 0.2]);
    expect(share).toBeCloseTo(0.267297, 6);
    expect(standardUncertainty).toBeCloseTo(0.042235, 5);
  });

  it('is the default where there is no raise, or none large enough to tell', () => {
    for (const raises of [[], [raise(-2, 3, 1)], [raise(5, -4, -3)]]) {
      const found = fallBack(raises);
      expect(found.share).toBe(COMMON_FALL_BACK.share);
      expect(found.standardUncertainty).toBeCloseTo(COMMON_FALL_BACK.standardUncertainty, 12);
      expect(found.tooSmall).toBe(raises.length);
    }
  });

  it('finds the share of a piano that always loses the same, and is surer with every raise', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.55, noNaN: true }),
        fc.array(fc.double({ min: 20, max: 120, noNaN: true }), { minLength: 40, maxLength: 60 }),
        (share, raises) => {
          const seen = raises.map((by) => raise(-by, 0, -share * by, 0.2));
          const fitted = fallBack(seen);
          expect(Math.abs(fitted.share - share)).toBeLessThan(0.03);
          expect(fitted.standardUncertainty).toBeLessThan(fallBack(seen.slice(0, 3)).standardUncertainty);
        },
      ),
    );
  });

  it('says less where the falls contradict each other', () => {
    const alike = fallBack([raise(-60, 0, -15), raise(-60, 0, -15), raise(-60, 0, -15)]);
    const apart = fallBack([raise(-60, 0, 0), raise(-60, 0, -30), raise(-60, 0, -15)]);
    expect(apart.standardUncertainty).toBeGreaterThan(1.5 * alike.standardUncertainty);
  });
});

describe('nextOverpull()', () => {
  const known = { beforeUncertainty: cents(1), shareUncertainty: 0.1, limit: cents(1e6) };

  it('leaves the section where it falls back to its pitch', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -200, max: 0, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        (before, share) => {
          const { overpull } = nextOverpull({ ...known, before: cents(before), share });
          expect(overpull - share * (overpull - before)).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  // By hand: k = 0.25, b = −30: a = 7.5/0.75 = 10; u² = (30/0.5625 · 0.1)² + (1/3)² = 28.444 + 0.111; u = 5.344.
  it('carries what is not known of the share and the reading, worked by hand', () => {
    const { overpull, standardUncertainty } = nextOverpull({ ...known, before: cents(-30), share: 0.25 });
    expect(overpull).toBeCloseTo(10, 12);
    expect(standardUncertainty).toBeCloseTo(5.344, 3);
  });

  // The slope of the equation itself, by central differences: the two derivatives are those of the docstring.
  it('has the uncertainty that its own equation gives', () => {
    const at = (before: number, share: number) =>
      nextOverpull({ ...known, before: cents(before), share }).overpull;
    const step = 1e-5;
    const ofShare = (at(-40, 0.3 + step) - at(-40, 0.3 - step)) / (2 * step);
    const ofBefore = (at(-40 + step, 0.3) - at(-40 - step, 0.3)) / (2 * step);
    const { standardUncertainty } = nextOverpull({ ...known, before: cents(-40), share: 0.3 });
    expect(standardUncertainty).toBeCloseTo(Math.hypot(ofShare * 0.1, ofBefore * 1), 6);
  });

  it('never passes the limit, and pulls nothing over that stands at pitch, above it, or at its limit already', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -300, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.double({ min: -50, max: 100, noNaN: true }),
        (before, share, limit) => {
          const next = nextOverpull({ ...known, before: cents(before), share, limit: cents(limit) });
          expect(next.overpull).toBeLessThanOrEqual(Math.max(0, limit));
          expect(next.overpull).toBeGreaterThanOrEqual(0);
          if (before >= 0) expect(next.overpull).toBe(0);
          expect(next.isLimited).toBe(next.overpull < next.unlimited);
        },
      ),
    );
  });
});
