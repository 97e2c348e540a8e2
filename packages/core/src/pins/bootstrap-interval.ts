import { requirePositive, requireWithin } from '../units/index.ts';

export interface MeanInterval {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly level: number;
  readonly count: number;
}

/**
 * An interval for the mean of a section from its readings, by the bootstrap-t.
 *
 *     t′ = (x̄′ − x̄) / (s′/√n)  over resamples;   low = x̄ − t′(high) · s/√n,   high = x̄ − t′(low) · s/√n
 *
 * Studentised, because the plain percentile bootstrap of eight or twelve readings is too narrow. Resamples whose
 * readings are all alike have no t′ and are drawn again.
 *
 * @param values            two or more readings, one unit, at least two of them different
 * @param options.level     0.5 to 0.999
 * @param options.resamples 200 or more
 * @param options.random    numbers in [0, 1); handed in, so that a result can be had again
 * @returns undefined when there are fewer than three readings or no scatter: there is no honest interval then
 *
 * Throws: RangeError for a level or a number of resamples outside its range, or a reading that is not finite.
 * Source: B. Efron, R. J. Tibshirani, *An Introduction to the Bootstrap*, 1993, ch. 12; from memory.
 */
export function bootstrapMeanInterval(
  values: readonly number[],
  {
    level = 0.95,
    resamples = 2000,
    random,
  }: { readonly level?: number; readonly resamples?: number; readonly random: () => number },
): MeanInterval | undefined {
  const task = 'a bootstrap interval';
  requirePositive(values.length, 'the number of readings', task);
  requireWithin(level, 0.5, 0.999, 'the level', task);
  requireWithin(resamples, 200, 1e6, 'the number of resamples', task);
  if (values.some((value) => !Number.isFinite(value)))
    throw new RangeError(`Cannot compute ${task} as each reading must be finite`);

  const count = values.length;
  const { mean, standardError } = momentsOf(values);
  if (count < 3 || standardError === 0) return undefined;
  const ratios = new Float64Array(resamples);
  const resample = new Float64Array(count);
  for (let index = 0; index < resamples; index += 1) {
    let drawn: { mean: number; standardError: number };
    do {
      for (let place = 0; place < count; place += 1) resample[place] = values[Math.floor(random() * count)]!;
      drawn = momentsOf(resample);
    } while (drawn.standardError === 0);
    ratios[index] = (drawn.mean - mean) / drawn.standardError;
  }
  ratios.sort();
  const tail = (1 - level) / 2;
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
