import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from './propagate-uncertainty.ts';

describe('propagate()', () => {
  it('is exact for a sum: root of the sum of squares (JCGM 100:2008, 5.1.2)', () => {
    const { sum } = propagate(({ a, b }) => ({ sum: a + 2 * b }), {
      a: { value: 1, standardUncertainty: 3 },
      b: { value: 5, standardUncertainty: 2 },
    });
    expect(sum.value).toBe(11);
    expect(sum.standardUncertainty).toBeCloseTo(5, 12);
    expect(sum.contributions).toEqual({ a: 3, b: 4 });
  });

  it('adds relative uncertainties in quadrature for a product of powers (JCGM 100:2008, 5.1.6 equation (12))', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
        fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
        (x, y, rx, ry) => {
          const { power } = propagate((of) => ({ power: of.x ** 2 / Math.sqrt(of.y) }), {
            x: { value: x, standardUncertainty: rx * x },
            y: { value: y, standardUncertainty: ry * y },
          });
          const relative = power.standardUncertainty / power.value;
          expect(relative / Math.hypot(2 * rx, 0.5 * ry)).toBeCloseTo(1, 5);
        },
      ),
      { seed: 1 },
    );
  });

  it('gives the end-gauge uncertainty of the GUM its dominant terms (JCGM 100:2008, H.1: d, lₛ and δθ; from memory)', () => {
    // l = lₛ + d − lₛ·(δα·θ + αₛ·δθ) at δα = δθ = 0: u(d) = 9.7 nm, u(lₛ) = 25 nm, δθ: lₛ·αₛ·u(δθ) = 16.6 nm.
    const { length } = propagate(
      (of) => ({ length: of.standard + of.difference - of.standard * (11.5e-6 * of.deltaTheta) }),
      {
        standard: { value: 50_000_623, standardUncertainty: 25 },
        difference: { value: 215, standardUncertainty: 9.7 },
        deltaTheta: { value: 0, standardUncertainty: 0.029 },
      },
    );
    expect(length.contributions.deltaTheta).toBeCloseTo(-16.6, 0);
    expect(length.standardUncertainty).toBeGreaterThan(31);
    expect(length.standardUncertainty).toBeLessThan(32);
  });

  it('does not take an input past zero, where it has to be positive, however uncertain it is', () => {
    const root = propagate(
      (x) => {
        if (x.length <= 0) throw new RangeError('the model does not hold below zero');
        return { tension: x.length ** 2 };
      },
      { length: { value: 0.35, standardUncertainty: 0.43, isPositive: true } },
    );
    // First order: 2 · 0.35 · 0.43.
    expect(root.tension.standardUncertainty).toBeCloseTo(0.301, 9);
  });

  it('steps upwards only where an input cannot be less', () => {
    const model = (of: { end: number }) => {
      if (of.end < 0) throw new RangeError('negative');
      return { three: 3 * of.end };
    };
    const { three } = propagate(model, { end: { value: 0.5, standardUncertainty: 1, least: 0 } });
    expect(three.standardUncertainty).toBeCloseTo(3, 12);
  });

  it('does not call the model for an input that is exact', () => {
    let calls = 0;
    propagate(
      (of) => {
        calls += 1;
        return { a: of.a + of.b };
      },
      { a: { value: 1, standardUncertainty: 0 }, b: { value: 1, standardUncertainty: 0.1 } },
    );
    expect(calls).toBe(3);
  });

  it('refuses a negative uncertainty and a value that is not finite', () => {
    const model = (of: { a: number }) => ({ a: of.a });
    expect(() => propagate(model, { a: { value: 1, standardUncertainty: -1 } })).toThrow(/a must be finite/);
    expect(() => propagate(model, { a: { value: Number.NaN, standardUncertainty: 1 } })).toThrow(RangeError);
  });
});
