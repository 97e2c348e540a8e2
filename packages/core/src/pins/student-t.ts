import { requirePositive, requireWithin } from '../units/index.ts';

/**
 * Student's two-sided factor, exact for few degrees of freedom: x ± t·u holds the share `level`.
 *
 *     θ = arctan(t/√ν);   level = (2/π)·(θ + sin θ·(cos θ + ⅔·cos³ θ + …))        ν odd
 *                         level = sin θ·(1 + ½·cos² θ + (1·3)/(2·4)·cos⁴ θ + …)   ν even
 *
 * Sums end with cos^(ν−2) θ. t is found by halving, since the share grows with it.
 *
 * @param level    0.5 to 0.9999
 * @param freedom  ν, a whole number ≥ 1; above 1000 taken as 1000, where t is within 0.2 % of the normal factor
 *
 * Throws: RangeError when an input is outside its range.
 * Source: M. Abramowitz, I. A. Stegun, *Handbook of Mathematical Functions*, 26.7.3 and 26.7.4; from memory. The test
 * compares it with the table of JCGM 100:2008, G.2.
 * @example studentT(0.95, 1)  // ≈ 12.706
 */
export function studentT(level: number, freedom: number): number {
  requireWithin(level, 0.5, 0.9999, 'the level', "Student's factor");
  requirePositive(freedom, 'the degrees of freedom', "Student's factor");
  const nu = Math.min(1000, Math.max(1, Math.round(freedom)));
  let [low, high] = [0, Math.PI / 2];
  for (let turn = 0; turn < 80; turn += 1) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, nu) < level) low = middle;
    else high = middle;
  }
  return Math.sqrt(nu) * Math.tan((low + high) / 2);
}

/**
 * Share of Student's distribution that lies below t.
 *
 * @param freedom  ν as in `studentT`
 * Source: as `studentT`.
 * @example studentShareBelow(1, 1)  // = 0.75
 */
export function studentShareBelow(t: number, freedom: number): number {
  requirePositive(freedom, 'the degrees of freedom', "Student's distribution");
  const nu = Math.min(1000, Math.max(1, Math.round(freedom)));
  const share = shareWithin(Math.atan(Math.abs(t) / Math.sqrt(nu)), nu);
  return t >= 0 ? (1 + share) / 2 : (1 - share) / 2;
}

function shareWithin(theta: number, nu: number): number {
  const cosine = Math.cos(theta);
  const isOdd = nu % 2 === 1;
  if (nu === 1) return (2 * theta) / Math.PI;
  let term = isOdd ? cosine : 1;
  let sum = term;
  for (let power = isOdd ? 3 : 2; power <= nu - 2; power += 2) {
    term *= ((power - 1) / power) * cosine ** 2;
    sum += term;
  }
  return isOdd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}
