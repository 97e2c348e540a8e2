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
 * @example solvePositiveDefinite([[2, 1], [1, 2]], [[3, 3]])[0][1]  // ≈ 1.000000
 */
export function solvePositiveDefinite(
  matrix: readonly (readonly number[])[],
  rightSides: readonly (readonly number[])[],
): number[][] {
  const n = matrix.length;
  const factor: Float64Array[] = [];
  for (let i = 0; i < n; i++) {
    const row = new Float64Array(n);
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : factor[j]!;
      let rest = matrix[i]![j]!;
      for (let k = 0; k < j; k++) rest -= row[k]! * other[k]!;
      if (j < i) row[j] = rest / other[j]!;
      else if (rest > 0) row[i] = Math.sqrt(rest);
      else
        throw new RangeError(
          `Cannot solve the system as its matrix is not positive definite: pivot ${i} is ${rest}`,
        );
    }
    factor.push(row);
  }
  return rightSides.map((b) => {
    const x = Float64Array.from(b);
    for (let i = 0; i < n; i++) {
      const row = factor[i]!;
      let rest = x[i]!;
      for (let k = 0; k < i; k++) rest -= row[k]! * x[k]!;
      x[i] = rest / row[i]!;
    }
    // Lᵀ·x by rows of L: once x[i] is known, its part is taken off all above it.
    for (let i = n - 1; i >= 0; i--) {
      const row = factor[i]!;
      const known = x[i]! / row[i]!;
      x[i] = known;
      for (let k = 0; k < i; k++) x[k]! -= row[k]! * known;
    }
    return [...x];
  });
}
