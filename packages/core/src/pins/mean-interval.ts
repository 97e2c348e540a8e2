import { requirePositive, requireWithin } from '../units/index.ts';
import { studentT } from './student-t.ts';

export interface MeanInterval {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly level: number;
  readonly count: number;
}

/** From this many readings on their own scatter, drawn again and again, says more than Student's factor. */
const FEWEST_TO_RESAMPLE = 8;
/** A resample scatters hardly at all below this share of the scatter of the readings. */
const HARDLY = 0.1;

/**
 * An interval for the mean of a section from its readings: Student's where they are few, the bootstrap-t from eight on.
 *
 *     few:   low, high = x̄ ∓ t(n − 1)·s/√n
 *     else:  t′ = (x̄′ − x̄) / (s′/√n)  over resamples;   low = x̄ − t′(high)·s/√n,   high = x̄ − t′(low)·s/√n
 *
 * A resample of few readings is often two or three of nearly the same value: its s′ is next to nothing, its t′ beyond any measure,
 * and the interval with it. So three readings of 15, 15.01 and 16.2 would reach from 15 to 63. Student's factor takes the
 * readings as normal instead; on slanted ones it holds the mean in 91 to 92 of 100, where the bootstrap-t of three readings holds it
 * in 77 to 87, however wide (a thousand blocks each). Of eight and more the bootstrap-t follows a slant, and is the better one.
 *
 * @param values            three or more readings, one unit, at least two of them different
 * @param options.level     0.5 to 0.999
 * @param options.resamples 200 or more
 * @param options.random    numbers in [0, 1); handed in, so that a result can be had again
 * @returns undefined with fewer than three readings, or where they are alike, or all but so few that the limits would rest on
 * resamples which hardly scatter (s′ under a tenth of s in more of them than lie beyond a limit): there is no honest interval then
 *
 * Throws: RangeError for a level or a number of resamples outside its range, or a reading that is not finite.
 * Source: JCGM 100:2008, G.3.2, for few; B. Efron, R. J. Tibshirani, *An Introduction to the Bootstrap*, 1993, ch. 12, where the
 * bootstrap-t is also said to be erratic in small samples, from memory; the bounds of eight and of a tenth are our own, from the
 * coverage that the test counts.
 * @example meanInterval([14, 15, 16], { random: () => 0.5 })!.high  // ≈ 17.484
 */
export function meanInterval(
  values: readonly number[],
  {
    level = 0.95,
    resamples = 2000,
    random,
  }: { readonly level?: number; readonly resamples?: number; readonly random: () => number },
): MeanInterval | undefined {
  const task = 'an interval of the mean';
  requirePositive(values.length, 'the number of readings', task);
  requireWithin(level, 0.5, 0.999, 'the level', task);
  requireWithin(resamples, 200, 1e6, 'the number of resamples', task);
  if (values.some((value) => !Number.isFinite(value)))
    throw new RangeError(`Cannot compute ${task} as each reading must be finite`);

  const count = values.length;
  const { mean, standardError } = momentsOf(values);
  // Compared rather than computed: the mean of three equal numbers need not be one of them to the last digit.
  if (count < 3 || values.every((value) => value === values[0])) return undefined;
  if (count < FEWEST_TO_RESAMPLE) {
    const reach = studentT(level, count - 1) * standardError;
    return { mean, low: mean - reach, high: mean + reach, level, count };
  }
  const ratios = new Float64Array(resamples);
  const resample = new Float64Array(count);
  const tail = (1 - level) / 2;
  let hardlyScattered = 0;
  for (let index = 0; index < resamples; index += 1) {
    for (let place = 0; place < count; place += 1) resample[place] = values[Math.floor(random() * count)]!;
    const drawn = momentsOf(resample);
    if (drawn.standardError < HARDLY * standardError) hardlyScattered += 1;
    ratios[index] = drawn.standardError === 0 ? 0 : (drawn.mean - mean) / drawn.standardError;
  }
  if (hardlyScattered > tail * resamples) return undefined;
  ratios.sort();
  return {
    mean,
    low: mean - quantile(ratios, 1 - tail) * standardError,
    high: mean - quantile(ratios, tail) * standardError,
    level,
    count,
  };
}

function momentsOf(values: ArrayLike<number>): { mean: number; standardError: number } {
  const count = values.length;
  let sum = 0;
  for (let index = 0; index < count; index += 1) sum += values[index]!;
  const mean = sum / count;
  let squares = 0;
  for (let index = 0; index < count; index += 1) squares += (values[index]! - mean) ** 2;
  return { mean, standardError: count > 1 ? Math.sqrt(squares / (count - 1) / count) : 0 };
}

function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const low = Math.floor(place);
  const high = Math.min(sorted.length - 1, low + 1);
  return sorted[low]! + (place - low) * (sorted[high]! - sorted[low]!);
}
