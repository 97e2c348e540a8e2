import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solvePositiveDefinite } from './positive-definite.ts';

describe('solvePositiveDefinite()', () => {
  it('finds the x that A·x = b was made from', () => {
    const entry = fc.double({ min: -1, max: 1, noNaN: true });
    const size = 6;
    const list = fc.array(entry, { minLength: size, maxLength: size });
    fc.assert(
      fc.property(fc.array(list, { minLength: size, maxLength: size }), list, (half, x) => {
        // A = half · halfᵀ + 1 is symmetric and positive definite for any half.
        const matrix = half.map((row, i) =>
          half.map((other, j) => row.reduce((sum, value, k) => sum + value * other[k]!, i === j ? 1 : 0)),
        );
        const b = matrix.map((row) => row.reduce((sum, value, k) => sum + value * x[k]!, 0));
        const twice = b.map((value) => 2 * value);
        const [found, foundTwice] = solvePositiveDefinite(matrix, [b, twice]);
        x.forEach((value, i) => {
          expect(found![i]).toBeCloseTo(value, 9);
          expect(foundTwice![i]).toBeCloseTo(2 * value, 9);
        });
      }),
      { seed: 5 },
    );
  });

  it('refuses a matrix that is not positive definite', () => {
    expect(() =>
      solvePositiveDefinite(
        [
          [1, 2],
          [2, 1],
        ],
        [[1, 1]],
      ),
    ).toThrow('not positive definite: pivot 1 is -3');
  });
});
