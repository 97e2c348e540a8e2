import { describe, expect, it } from 'vitest';
import { studentT } from './student-t.ts';

describe('studentT()', () => {
  // JCGM 100:2008, table G.2: t for a fraction p of 95.00 % and 99.00 %.
  it.each([
    [1, 12.71, 63.66],
    [2, 4.3, 9.92],
    [3, 3.18, 5.84],
    [4, 2.78, 4.6],
    [5, 2.57, 4.03],
    [6, 2.45, 3.71],
    [7, 2.36, 3.5],
    [8, 2.31, 3.36],
    [9, 2.26, 3.25],
    [10, 2.23, 3.17],
    [20, 2.09, 2.85],
    [50, 2.01, 2.68],
    [100, 1.984, 2.626],
  ])('agrees with the table for %i degrees of freedom', (freedom, at95, at99) => {
    const digits = freedom === 100 ? 3 : 2;
    expect(studentT(0.95, freedom)).toBeCloseTo(at95, digits);
    expect(studentT(0.99, freedom)).toBeCloseTo(at99, digits);
  });

  it('nears the normal factor', () => expect(studentT(0.95, 1e6)).toBeCloseTo(1.962, 3));

  it('refuses no freedom', () => expect(() => studentT(0.95, 0)).toThrow(RangeError));
});
