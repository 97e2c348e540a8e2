import { type NewtonMetres, newtonMetres, requireWithin } from '../units/index.ts';
import type { GripEstimate } from './grip-estimate.ts';
import { meanInterval } from './mean-interval.ts';
import { studentT } from './student-t.ts';

/** What the pins read in a section say of all its pins. */
export interface SectionMean {
  readonly mean: NewtonMetres;
  /** Undefined with fewer than three pins, or when nearly all are alike: there is no honest interval then. */
  readonly interval:
    | { readonly low: NewtonMetres; readonly high: NewtonMetres; readonly level: number }
    | undefined;
  readonly lowest: NewtonMetres;
  readonly read: number;
  readonly pins: number;
}

/**
 * Mean grip of all pins of a section from those that were read, with its interval.
 *
 *     half-width upwards = √( (c·b↑)² + (z·u_shared)² ),  downwards likewise;   c² = 1 − n/N + (n/N)·min(1, ū²_own/s²)
 *
 * b is how far the interval of `meanInterval` reaches; c takes off what sampling error is not there once most pins of a section of N
 * have been read, but leaves what the hand adds to each; z is the normal factor of the level (1.96 for 95 %). u_shared, the
 * wrench and friction, is added since it moves all readings alike and no number of pins lowers it.
 *
 * @param grips   of the pins that were read, one each, at least one
 * @param pins    N, pins of the section
 * @param random  numbers in [0, 1), seeded
 *
 * Holds for: pins taken at random or evenly. Those that were read because they felt loose pull the mean down.
 * Error: coverage is measured by `npm run bench pins`.
 * Throws: RangeError when more pins were read than there are, or none.
 * Source: finite population correction, any handbook of sampling; the interval as in `meanInterval`.
 */
export function sectionMean(
  grips: readonly Pick<GripEstimate, 'grip' | 'ownUncertainty' | 'sharedUncertainty'>[],
  {
    pins,
    level = 0.95,
    random,
  }: { readonly pins: number; readonly level?: number; readonly random: () => number },
): SectionMean {
  const read = grips.length;
  requireWithin(read, 1, pins, 'the number of pins read', 'the mean grip of a section');
  const values = grips.map(({ grip }) => grip as number);
  const mean = values.reduce((sum, value) => sum + value, 0) / read;
  const drawn = meanInterval(values, { level, random });
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, read - 1);
  const own = grips.reduce((sum, { ownUncertainty }) => sum + ownUncertainty ** 2, 0) / read;
  const shared = grips.reduce((sum, { sharedUncertainty }) => sum + sharedUncertainty, 0) / read;
  const correction = Math.sqrt(1 - read / pins + (read / pins) * Math.min(1, own / variance));
  const reach = (far: number): number => Math.hypot(correction * far, normalFactor(level) * shared);
  return {
    mean: newtonMetres(mean),
    interval:
      drawn === undefined
        ? undefined
        : {
            // Few readings with a loose pin among them can reach below what a grip can be.
            low: newtonMetres(Math.max(0, mean - reach(mean - drawn.low))),
            high: newtonMetres(mean + reach(drawn.high - mean)),
            level,
          },
    lowest: newtonMetres(Math.min(...values)),
    read,
    pins,
  };
}

/** z with which mean ± z·u holds the share `level` of a normal distribution, to 0.2 %: Student's of a thousand degrees of freedom. */
const normalFactor = (level: number): number => studentT(level, 1000);
