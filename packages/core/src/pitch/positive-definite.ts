/**
 * Solves A·x = b for several right-hand sides, A symmetric and positive definite, by Cholesky's factor A = L·Lᵀ.
 *
 * @param matrix     A, n rows of n values; only the lower triangle is read
 * @param rightSides list of b, each n values
 * @returns the list of x, in the same order
 *
 * Holds for: small dense systems (n up to some hundreds); the factor costs n³/6 multiplications.
 * Throws: RangeError when A is not positive definite.
 * Source: any textbook of numerical linear algebra; from memory.
 */
export function solvePositiveDefinite(
  matrix: readonly (readonly number[])[],
  rightSides: readonly (readonly number[])[],
): number[][] {
  const n = matrix.length;
  const factor: number[][] = [];
  for (let i = 0; i < n; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : factor[j]!;
      let rest = matrix[i]![j]!;
      for (let k = 0; k < j; k++) rest -= row[k]! * other[k]!;
      if (j < i) row.push(rest / other[j]!);
      else if (rest > 0) row.push(Math.sqrt(rest));
      else
        throw new RangeError(
          `Cannot solve the system as its matrix is not positive definite: pivot ${i} is ${rest}`,
        );
    }
    factor.push(row);
  }
  return rightSides.map((b) => {
    const x = [...b];
    for (let i = 0; i < n; i++) {
      for (let k = 0; k < i; k++) x[i]! -= factor[i]![k]! * x[k]!;
      x[i]! /= factor[i]![i]!;
    }
    for (let i = n - 1; i >= 0; i--) {
      for (let k = i + 1; k < n; k++) x[i]! -= factor[k]![i]! * x[k]!;
      x[i]! /= factor[i]![i]!;
    }
    return x;
  });
}
