import { requirePositive } from '../units/index.ts';

/** A value worked out from several readings of one quantity. */
export interface ValueFromReadings {
  readonly value: number;
  /** Standard uncertainty (JCGM 100:2008), in the unit of the readings. */
  readonly standardUncertainty: number;
  readonly count: number;
}

/**
 * The value that several readings of one quantity speak for, with its standard uncertainty.
 *
 *     x = median(xᵢ);   s = 1.4826 · median|xᵢ − x|;   u² = (1.2533² · max(s, r)²)/n,   r = resolution/√12
 *
 * A single reading has no scatter of its own: `singleReading` stands for it. The median keeps one slip in three from
 * moving the value far.
 *
 * @param readings  one or more finite numbers, one unit
 * @param options.resolution     smallest step of the instrument, in the same unit; 0 when unknown
 * @param options.singleReading  standard uncertainty of one reading by this hand and instrument
 *
 * Throws: RangeError without a reading or with one that is not finite.
 * Source: 1.4826 and 1.2533 are the normal-distribution factors of the median absolute deviation and of the median's
 * standard error (P. J. Huber, *Robust Statistics*, 1981; from memory); r is the rectangular distribution of
 * JCGM 100:2008, F.2.2.1.
 * @example valueFromReadings([1.02, 1.03, 1.03]).value  // = 1.03
 */
export function valueFromReadings(
  readings: readonly number[],
  { resolution = 0, singleReading = 0 }: { readonly resolution?: number; readonly singleReading?: number } = {},
): ValueFromReadings {
  requirePositive(readings.length, 'the number of readings', 'a value from readings');
  const wrong = readings.find((reading) => !Number.isFinite(reading));
  if (wrong !== undefined) throw new RangeError(`Cannot compute a value from readings as each must be finite: found ${wrong}`);
  const value = median(readings);
  const scatter = 1.4826 * median(readings.map((reading) => Math.abs(reading - value)));
  const floor = Math.max(resolution / Math.sqrt(12), singleReading);
  const count = readings.length;
  const standardUncertainty = count === 1 ? floor : (1.2533 * Math.max(scatter, floor)) / Math.sqrt(count);
  return { value, standardUncertainty, count };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
