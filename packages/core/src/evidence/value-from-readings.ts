import { requireNotNegative, requirePositive } from '../units/index.ts';

/** Where a value comes from, the surest first: read on the wire, stamped on the piano, copied from paper, inferred. */
export const ORIGINS = ['measured', 'stamped', 'copied', 'inferred'] as const;
export type Origin = (typeof ORIGINS)[number];

/** A value worked out from several readings of one quantity. */
export interface ValueFromReadings {
  readonly value: number;
  /**
   * Standard uncertainty (JCGM 100:2008), in the unit of the readings. Undefined when nothing speaks for it: a single
   * reading, or several alike, of an instrument whose resolution nobody has said. That is not the same as 0.
   */
  readonly standardUncertainty: number | undefined;
  readonly count: number;
}

export interface ReadingAccuracy {
  /** Smallest step of the instrument, in the unit of the readings; 0 when unknown. */
  readonly resolution?: number;
  /** Standard uncertainty of one reading by this hand and instrument, in the unit of the readings; 0 when unknown. */
  readonly singleReading?: number;
}

/**
 * The value that several readings of one quantity speak for, with its standard uncertainty.
 *
 *     x = median(xᵢ);   s = 1.4826 · b_n · median|xᵢ − x|
 *     u = max( max(s, s₁) · √v_n ,  r/√12 )
 *
 * b_n makes s right on average for a few normal readings, v_n is the variance of the median of n of them: both are
 * listed below and run into their limits, 1 and π/2n. s₁ is what one reading is known to be worth: two readings that
 * happen to be alike do not make it better. The resolution r is a floor that more readings do not lower, since the same
 * display gives the same rounding. With one reading u = max(s₁, r/√12). The median keeps one slip in three from moving
 * the value far.
 *
 * @param readings                n ≥ 1 finite numbers, one unit
 * @param accuracy.resolution     r, ≥ 0
 * @param accuracy.singleReading  s₁, ≥ 0
 *
 * Holds for: readings that are independent of each other. What they share (wear, a zero that is off) is not in u.
 * Error: with fewer than six readings and no s₁, u itself is known to a factor of about two at best.
 * Throws: RangeError without a reading or with one that is not finite.
 * Source: 1.4826 from the normal distribution (P. J. Huber, *Robust Statistics*, 1981, ch. 5; from memory); b_n from
 * C. Croux, P. J. Rousseeuw, "Time-efficient algorithms for two highly robust estimators of scale", 1992 (from memory;
 * the test simulates it); v_n from the efficiency of the median in W. J. Dixon, F. J. Massey, *Introduction to
 * Statistical Analysis*, 1969 (from memory; likewise); r/√12 is the rectangular distribution of JCGM 100:2008, F.2.2.1.
 * @example valueFromReadings([1.02, 1.03, 1.03]).value  // = 1.03
 * @example valueFromReadings([1.02], { resolution: 0.01 }).standardUncertainty  // ≈ 0.00289
 */
export function valueFromReadings(
  readings: readonly number[],
  { resolution = 0, singleReading = 0 }: ReadingAccuracy = {},
): ValueFromReadings {
  const task = 'a value from readings';
  requirePositive(readings.length, 'the number of readings', task);
  const wrong = readings.find((reading) => !Number.isFinite(reading));
  if (wrong !== undefined)
    throw new RangeError(`Cannot compute ${task} as each reading must be finite: found ${wrong}`);
  requireNotNegative(resolution, 'the resolution', task);
  requireNotNegative(singleReading, 'the uncertainty of a single reading', task);

  const count = readings.length;
  const value = medianOf(readings);
  const scatter = robustScatter(readings);
  const uncertainty = Math.max(
    Math.max(scatter, singleReading) * Math.sqrt(varianceOfMedian(count)),
    resolution / Math.sqrt(12),
  );
  return { value, standardUncertainty: uncertainty > 0 ? uncertainty : undefined, count };
}

/**
 * What a value counts as when its readings differ in origin: the surest of them.
 *
 * Throws: RangeError when there is none.
 * @example originOfValue(['copied', 'measured'])  // = measured
 */
export function originOfValue(origins: readonly Origin[]): Origin {
  requirePositive(origins.length, 'the number of readings', 'the origin of a value');
  return ORIGINS.find((origin) => origins.includes(origin))!;
}

/**
 * Middle of the sorted values; half way between the middle two when their number is even.
 * Throws: RangeError without a value.
 * @example medianOf([3, 1, 2, 10])  // = 2.5
 */
export function medianOf(values: readonly number[]): number {
  requirePositive(values.length, 'the number of values', 'a median');
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/**
 * Standard deviation of values, from the median of their distances from their median: s of `valueFromReadings`. It is
 * right on average for normal values and hardly moves when one in three is far off. 0 for a single value.
 */
export function robustScatter(values: readonly number[]): number {
  const centre = medianOf(values);
  const distances = values.map((value) => Math.abs(value - centre));
  return 1.4826 * correctionForFew(values.length) * medianOf(distances);
}

/** b_n for n = 2 … 9; index 0 stands for n = 2. */
const FEW_READINGS = [1.196, 1.495, 1.363, 1.206, 1.2, 1.14, 1.129, 1.107] as const;

const correctionForFew = (count: number): number => FEW_READINGS[count - 2] ?? count / (count - 0.8);

/** Efficiency of the median against the mean for n = 1 … 10; index 0 stands for n = 1. */
const MEDIAN_EFFICIENCY = [1, 1, 0.743, 0.838, 0.697, 0.776, 0.679, 0.743, 0.669, 0.723] as const;

/** v_n, in units of the variance of one reading; beyond the list the limit π/2n, which is then within 4 %. */
function varianceOfMedian(count: number): number {
  return 1 / (count * (MEDIAN_EFFICIENCY[count - 1] ?? 2 / Math.PI));
}
