import { allowanceNames, allowances } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { allowanceOf, allowanceText } from './allowance-form.ts';

const source = 'our last ten pianos';

describe('allowanceOf()', () => {
  it.each([
    ['wire-spoilage-share', '12,5', 'mm', 0.125],
    ['wire-spoilage-share', '12.5 %', 'mm', 0.125],
    ['wire-spares', '2', 'in', 2],
    ['becket_m', '8', 'mm', 0.008],
    ['becket_m', '8 mm', 'in', 0.008],
    // 0.25 in × 25.4 mm/in, the inch of ISO 80000-3.
    ['becket_m', '1/4', 'mm', 0.00635],
  ] as const)('reads %s typed as %s with %s as its unit', (name, value, unit, kept) => {
    expect(allowanceOf({ name, value, source }, unit).value).toBeCloseTo(kept, 12);
  });

  it.each([
    ['wire-spoilage-share', '', 'nothing was found'],
    ['wire-spoilage-share', '12 mm', "'12 mm' was found"],
    ['wire-spares', '1.5', 'a whole number from 0 to 50 is needed, 1.5 was found'],
    ['becket_m', 'thin', "a length in mm or in is needed, 'thin' was found"],
    ['becket_m', '6 m', "'6 m' was found"],
    ['becket_m', '600', 'a length from 0 to 100 mm is needed, 600 was found'],
  ] as const)('refuses %s typed as %j', (name, value, why) => {
    expect(() => allowanceOf({ name, value, source }, 'mm')).toThrow(why);
  });
});

describe('allowanceText()', () => {
  it('reads back as what it was, in either unit', () => {
    for (const name of allowanceNames)
      for (const unit of ['mm', 'in'] as const) {
        const { starting } = allowances[name];
        const { value } = allowanceOf({ name, value: allowanceText(name, starting, unit), source }, unit);
        // Inches are shown to a ten-thousandth for what is thin, to a thousandth otherwise.
        expect(Math.abs(value - starting)).toBeLessThanOrEqual(unit === 'mm' ? 1e-9 : 0.0005 * 0.0254);
      }
  });
});
