import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { A228_MAXIMUM, A228_MINIMUM, REAL_WIRE_REMARK } from '../tables/index.ts';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import { inches, metres, millimetres, newtons, pascals } from '../units/index.ts';
import { breakLoad, breakShare, wireStress } from './index.ts';

describe('breakLoad()', () => {
  it('breakload-forster-g4 (C. Forster, restringing and retuning pianos, 30 May 2005)', () => {
    const [check] = publishedChecks(/^breakload-forster-/);
    const load = breakLoad({
      diameter: metres(2 * inputOf(check!, 'radius_m')),
      strength: pascals(inputOf(check!, 'tensile_Pa')),
    });
    expectPublished(check!, load);
  });

  it('is the tension at which the stress equals the strength', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.double({ min: 1e9, max: 3e9, noNaN: true }),
        (d, strength) => {
          const diameter = millimetres(d);
          const tension = breakLoad({ diameter, strength: pascals(strength) });
          expect(wireStress({ tension, diameter }) / strength).toBeCloseTo(1, 12);
        },
      ),
      { seed: 1 },
    );
  });
});

describe('breakShare()', () => {
  it('names its table, its remark and whether the table reaches that far', () => {
    const share = breakShare({
      tension: newtons(700),
      diameter: millimetres(1),
      strengthTable: A228_MINIMUM,
    });
    expect(share).toMatchObject({
      table: 'ASTM A228 minimum',
      remark: REAL_WIRE_REMARK,
      isWithinTableRange: true,
    });
    expect(share.share * share.breakLoad).toBeCloseTo(700, 9);
    expect(
      breakShare({ tension: newtons(700), diameter: inches(0.1), strengthTable: A228_MINIMUM })
        .isWithinTableRange,
    ).toBe(false);
  });

  it('is a share over one, and no error, when the string would break', () => {
    const wire = { tension: newtons(3000), diameter: millimetres(1), strengthTable: A228_MINIMUM };
    expect(breakShare(wire).share).toBeGreaterThan(1);
  });

  it('is higher by the minimum than by the maximum of one standard', () => {
    const wire = { tension: newtons(700), diameter: millimetres(1) };
    expect(breakShare({ ...wire, strengthTable: A228_MINIMUM }).share).toBeGreaterThan(
      breakShare({ ...wire, strengthTable: A228_MAXIMUM }).share,
    );
  });

  it('refuses a tension or diameter that is not positive', () => {
    const wire = { tension: newtons(700), diameter: millimetres(1), strengthTable: A228_MINIMUM };
    expect(() => breakShare({ ...wire, tension: newtons(0) })).toThrow(RangeError);
    expect(() => breakShare({ ...wire, diameter: metres(-1) })).toThrow(RangeError);
  });
});
