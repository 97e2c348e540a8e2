import { requireNotNegative, requirePositive, requireWithin } from '../units/index.ts';
import { medianOf, robustScatter } from './value-from-readings.ts';

/** One value along a run of keys. */
export interface SmoothPoint {
  readonly key: number;
  readonly value: number;
  /** Relative precision, 1/variance up to a common factor; 1 when not given. */
  readonly precision?: number;
}

/** A smooth line through values along the keys, at every key. */
export interface RobustSmooth {
  readonly firstKey: number;
  /** One for each key from `firstKey`. */
  readonly line: readonly number[];
  /** Standard uncertainty of the line, at each key. */
  readonly uncertainty: readonly number[];
  /** Standard deviation of a value of precision 1 about the line. */
  readonly scatter: number;
  /** Degrees of freedom left for `scatter`. */
  readonly freedom: number;
  /** Indices into the points that do not belong to the line, with where the others would put them. */
  readonly outliers: readonly { readonly point: number; readonly expected: number }[];
  readonly isConverged: boolean;
}

/** A residual of more than this many standard deviations is an outlier: by chance about one in ten thousand. */
const OUTLIER = 4;
/** Tuning of the bisquare: 95 % efficient for normal values. */
const BISQUARE = 4.685;
/** Fewest values that can speak for a line and a scatter. */
export const FEWEST_FOR_A_LINE = 5;
const MOST_ITERATIONS = 50;

/**
 * A smooth line through values along the keys that a few wild ones do not bend.
 *
 *     minimise  Σ wᵢ·pᵢ·(yᵢ − f(keyᵢ))²  +  λ · Σ (f(k−1) − 2·f(k) + f(k+1))²
 *
 * w is the bisquare of the residual over its scatter, found by going round; λ is where the restricted likelihood of the
 * readings is greatest. In the end the values beyond four standard deviations are left out by name, and the others count in
 * full. The first line is the median of all slopes between two points, which a quarter of wild values does not move.
 *
 * @param points   five or more, keys whole numbers, each key once
 * @param range.firstKey, range.lastKey  where the line is wanted; the points lie inside
 * @param leastScatter  what the scatter cannot be less than: the resolution of the rule
 *
 * Holds for: values that vary smoothly from key to key. Beyond the last reading it goes on straight, with an uncertainty
 * that grows fast.
 * Throws: RangeError for fewer points, keys that are double or outside the range, or a value that is not finite.
 * Source: E. T. Whittaker's graduation as in P. H. C. Eilers, "A perfect smoother", Anal. Chem. 75, 2003; bisquare, A. E.
 * Beaton, J. W. Tukey, Technometrics 16, 1974; first line, P. K. Sen, JASA 63, 1968; λ by restricted likelihood and the
 * uncertainty as for a mixed model, G. Wahba, JRSS B 45, 1983. All from memory; coverage is checked by simulation.
 */
export function robustSmooth(
  points: readonly SmoothPoint[],
  { firstKey, lastKey, leastScatter }: { firstKey: number; lastKey: number; leastScatter: number },
): RobustSmooth {
  const task = 'a smooth line';
  requireWithin(points.length, FEWEST_FOR_A_LINE, 1e4, 'the number of values', task);
  requireNotNegative(leastScatter, 'the least scatter', task);
  const seen = new Set<number>();
  for (const { key, value, precision = 1 } of points) {
    requireWithin(key, firstKey, lastKey, 'the key of a value', task);
    requirePositive(precision, 'the precision of a value', task);
    if (!Number.isFinite(value))
      throw new RangeError(`Cannot compute ${task} as each value must be finite: found ${value}`);
    if (seen.has(key))
      throw new RangeError(`Cannot compute ${task} as each key must occur once: found ${key} twice`);
    seen.add(key);
  }
  const places = points.map((point) => point.key - firstKey);
  const length = lastKey - firstKey + 1;
  const precisions = points.map((point) => point.precision ?? 1);
  const values = points.map((point) => point.value);
  const smoothWith = (weights: readonly number[]) =>
    smoothed({ places, values, precisions, weights, length });

  let residuals = residualsFromMedianLine(points);
  let scatter = Math.max(robustScatter(residuals), leastScatter);
  let weights = points.map(() => 1);
  let isConverged = false;
  for (let turn = 0; turn < MOST_ITERATIONS && !isConverged; turn += 1) {
    const next = residuals.map((residual) => bisquare(residual / scatter));
    isConverged = turn > 0 && next.every((weight, index) => Math.abs(weight - weights[index]!) < 1e-3);
    weights = next;
    const fit = smoothWith(weights);
    // A value pulls the line towards itself: set against the line that the others alone would give.
    residuals = values.map(
      (value, index) =>
        (Math.sqrt(precisions[index]!) * (value - fit.line[places[index]!]!)) /
        Math.sqrt(1 - fit.leverages[index]!),
    );
    scatter = Math.max(robustScatter(residuals), leastScatter);
  }

  let kept = residuals.map((residual) => Math.abs(residual) <= OUTLIER * scatter);
  // What was left out may be let in again, and the other way round, as the line and its scatter settle.
  for (let turn = 0; turn < 10; turn += 1) {
    if (kept.filter(Boolean).length < FEWEST_FOR_A_LINE) break;
    const fit = smoothWith(kept.map(Number));
    const own = Math.max(fit.scatter, leastScatter);
    const again = values.map((value, index) => {
      const residual = Math.abs(value - fit.line[places[index]!]!) * Math.sqrt(precisions[index]!);
      // Inside the line: less than its own scatter, by what it pulls. Outside: more, by how little the line is known there.
      const factor = kept[index]
        ? 1 - fit.leverages[index]!
        : 1 + precisions[index]! * fit.inverse[places[index]!]!;
      return residual <= OUTLIER * own * Math.sqrt(Math.max(factor, 1e-9));
    });
    const isSame = again.every((one, index) => one === kept[index]);
    kept = again;
    if (isSame) break;
  }
  if (kept.filter(Boolean).length < FEWEST_FOR_A_LINE) kept = residuals.map(() => true);
  const fit = smoothWith(kept.map(Number));
  const own = Math.max(fit.scatter, leastScatter);
  return {
    firstKey,
    line: fit.line,
    uncertainty: fit.inverse.map((variance) => own * Math.sqrt(variance)),
    scatter: own,
    freedom: fit.freedom,
    outliers: kept.flatMap((isKept, point) =>
      isKept ? [] : [{ point, expected: fit.line[places[point]!]! }],
    ),
    isConverged,
  };
}

function bisquare(distance: number): number {
  const share = distance / BISQUARE;
  return Math.abs(share) < 1 ? (1 - share * share) ** 2 : 0;
}

/** Residuals from the line with the median of all slopes and the median of what is left. */
function residualsFromMedianLine(points: readonly SmoothPoint[]): number[] {
  const slopes = points.flatMap((a, index) =>
    points.slice(index + 1).map((b) => (b.value - a.value) / (b.key - a.key)),
  );
  const slope = medianOf(slopes);
  const start = medianOf(points.map(({ key, value }) => value - slope * key));
  return points.map(({ key, value, precision = 1 }) => Math.sqrt(precision) * (value - start - slope * key));
}

interface WeighedValues {
  readonly places: readonly number[];
  readonly values: readonly number[];
  readonly precisions: readonly number[];
  readonly weights: readonly number[];
  readonly length: number;
}

interface SmoothFit {
  readonly line: readonly number[];
  /** Diagonal of the inverse of the normal matrix: the variance of the line in units of the scatter's. */
  readonly inverse: readonly number[];
  /** Share of itself that each value has in the line. */
  readonly leverages: readonly number[];
  readonly scatter: number;
  readonly freedom: number;
}

/** λ from hardly any smoothing to a straight line, in steps of a third of a decade. */
const SMOOTHINGS = Array.from({ length: 22 }, (_, index) => 10 ** (index / 3));

function smoothed(given: WeighedValues): SmoothFit {
  let best: {
    readonly fit: Banded;
    readonly smoothing: number;
    readonly criterion: number;
    readonly square: number;
  };
  for (const smoothing of SMOOTHINGS) {
    const fit = bandedFit(given, smoothing);
    const square = sumOfSquares(given, fit.line, smoothing);
    const count = given.weights.reduce((sum, weight) => sum + weight, 0);
    // −2 ln of the restricted likelihood, the common scatter taken at its best; a straight line takes two away.
    const criterion =
      Math.max(count - 2, 1) * Math.log(Math.max(square, 1e-300)) +
      fit.logDeterminant -
      (given.length - 2) * Math.log(smoothing);
    if (best! === undefined || criterion < best.criterion) best = { fit, smoothing, criterion, square };
  }
  const { fit } = best!;
  const inverse = fit.inverseDiagonal();
  const leverages = given.places.map((place, index) =>
    Math.min(0.999, given.weights[index]! * given.precisions[index]! * inverse[place]!),
  );
  const count = given.weights.reduce((sum, weight) => sum + weight, 0);
  const freedom = Math.max(1, count - leverages.reduce((sum, leverage) => sum + leverage, 0));
  const residualSquare = given.places.reduce(
    (sum, place, index) =>
      sum + given.weights[index]! * given.precisions[index]! * (given.values[index]! - fit.line[place]!) ** 2,
    0,
  );
  return { line: fit.line, inverse, leverages, scatter: Math.sqrt(residualSquare / freedom), freedom };
}

function sumOfSquares(
  { places, values, precisions, weights }: WeighedValues,
  line: readonly number[],
  smoothing: number,
) {
  const misfit = places.reduce(
    (sum, place, index) => sum + weights[index]! * precisions[index]! * (values[index]! - line[place]!) ** 2,
    0,
  );
  let bend = 0;
  for (let place = 1; place + 1 < line.length; place += 1)
    bend += (line[place - 1]! - 2 * line[place]! + line[place + 1]!) ** 2;
  return misfit + smoothing * bend;
}

/** What a fit at one λ gives; the inverse only when it is asked for. */
interface Banded {
  readonly line: number[];
  readonly logDeterminant: number;
  readonly inverseDiagonal: () => number[];
}

/**
 * Solves (W + λ·DᵀD)·f = W·y, whose matrix has two bands beside its diagonal: L·D·Lᵀ without pivoting, as it is positive
 * definite (G. H. Golub, C. F. Van Loan, *Matrix Computations*, ch. 4; from memory).
 */
function bandedFit(
  { places, values, precisions, weights, length }: WeighedValues,
  smoothing: number,
): Banded {
  const diagonal = new Float64Array(length);
  const first = new Float64Array(length);
  const second = new Float64Array(length);
  const right = new Float64Array(length);
  places.forEach((place, index) => {
    const weight = weights[index]! * precisions[index]!;
    diagonal[place]! += weight;
    right[place]! += weight * values[index]!;
  });
  for (let place = 1; place + 1 < length; place += 1) {
    diagonal[place - 1]! += smoothing;
    diagonal[place]! += 4 * smoothing;
    diagonal[place + 1]! += smoothing;
    first[place - 1]! -= 2 * smoothing;
    first[place]! -= 2 * smoothing;
    second[place - 1]! += smoothing;
  }
  let logDeterminant = 0;
  for (let place = 0; place < length; place += 1) {
    const pivot = diagonal[place]!;
    logDeterminant += Math.log(pivot);
    const [a, b] = [first[place]! / pivot, second[place]! / pivot];
    if (place + 1 < length) {
      diagonal[place + 1]! -= a * first[place]!;
      first[place + 1]! -= a * second[place]!;
    }
    if (place + 2 < length) diagonal[place + 2]! -= b * second[place]!;
    first[place] = a;
    second[place] = b;
  }
  const solve = (rightHand: Float64Array): number[] => {
    const x = rightHand.slice();
    for (let place = 0; place < length; place += 1) {
      if (place + 1 < length) x[place + 1]! -= first[place]! * x[place]!;
      if (place + 2 < length) x[place + 2]! -= second[place]! * x[place]!;
    }
    for (let place = 0; place < length; place += 1) x[place]! /= diagonal[place]!;
    for (let place = length - 1; place >= 0; place -= 1) {
      if (place + 1 < length) x[place]! -= first[place]! * x[place + 1]!;
      if (place + 2 < length) x[place]! -= second[place]! * x[place + 2]!;
    }
    return [...x];
  };
  const inverseDiagonal = () =>
    Array.from({ length }, (_, place) => {
      const unit = new Float64Array(length);
      unit[place] = 1;
      return solve(unit)[place]!;
    });
  return { line: solve(right), logDeterminant, inverseDiagonal };
}
