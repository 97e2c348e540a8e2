import { type Metres, metres, micrometres, requirePositive } from '../units/index.ts';
import type { PinSizePolicy } from './pin-size-rule.ts';

type ListedSize = PinSizePolicy['sizes'][number];

/** Which listed size one pin is, and how sure that is. */
export interface PinSizeGuess {
  readonly size: ListedSize;
  /** Chance that it is this size, if it is one of the list and all are as likely beforehand. */
  readonly probability: number;
  /** True when the pin is too far from every size of the list to be one of them. */
  readonly isUnlisted: boolean;
}

/**
 * Standard uncertainty of a pin's diameter as a sign of its size: the micrometer, the thread, rust, and how pins of one box
 * differ. Our own figure, common practice, no source.
 */
export const COMMON_PIN_SCATTER: Metres = micrometres(20);
/** As many standard uncertainties away a pin is none of the list. Our own figure. */
const FURTHEST = 3;

/**
 * The listed size nearest to a pin as it was measured.
 *
 *     P(size) = φ((d − D)/u) / Σ φ((d − Dᵢ)/u)
 *
 * @param diameter  d, over the thread [m], > 0
 * @param sizes     D, the shop's list; at least one
 * @param scatter   u [m]; `COMMON_PIN_SCATTER` when not given
 *
 * Throws: RangeError when the list is empty or a figure is not > 0.
 * Source: Bayes' rule with even odds beforehand.
 * @example pinSizeGuess(millimetres(7.17), COMMON_PIN_SIZES).size.label  // = 2/0
 */
export function pinSizeGuess(
  diameter: Metres,
  sizes: readonly ListedSize[],
  scatter: Metres = COMMON_PIN_SCATTER,
): PinSizeGuess {
  const task = 'the size of a pin';
  requirePositive(diameter, 'the diameter', task);
  requirePositive(scatter, 'the scatter of diameters', task);
  requirePositive(sizes.length, 'the number of listed sizes', task);
  const distances = sizes.map(({ diameter_m }) => (diameter - diameter_m) / scatter);
  const nearest = distances.reduce(
    (best, distance, index) => (Math.abs(distance) < Math.abs(distances[best]!) ? index : best),
    0,
  );
  const closest = distances[nearest]!;
  // Relative to the nearest, so that a pin far from all does not divide nothing by nothing.
  const weights = distances.map((distance) => Math.exp((closest ** 2 - distance ** 2) / 2));
  return {
    size: sizes[nearest]!,
    probability: 1 / weights.reduce((sum, weight) => sum + weight, 0),
    isUnlisted: Math.abs(closest) > FURTHEST,
  };
}

/** Pins of one size as found. */
export interface PinSizeGroup<P> {
  readonly size: ListedSize;
  readonly pins: readonly P[];
  readonly median: Metres;
  readonly smallest: Metres;
  readonly largest: Metres;
  /** Pins whose size is less than `SURE_SIZE` sure, and pins of no listed size. */
  readonly doubtful: number;
  readonly unlisted: number;
}

/** Below this a pin's size is in doubt. Our own figure. */
export const SURE_SIZE = 0.9;

/**
 * Pins grouped by the listed size each is nearest to, small to large; a size of which there is no pin has no group.
 *
 * Throws: as `pinSizeGuess`.
 * @example pinSizeGroups([{ diameter: millimetres(7.16) }, { diameter: millimetres(7.4) }], COMMON_PIN_SIZES).map((group) => group.size.label)  // = ["2/0","4/0"]
 */
export function pinSizeGroups<P extends { readonly diameter: Metres }>(
  pins: readonly P[],
  sizes: readonly ListedSize[],
  scatter: Metres = COMMON_PIN_SCATTER,
): PinSizeGroup<P>[] {
  const guessed = pins.map((pin) => ({ pin, guess: pinSizeGuess(pin.diameter, sizes, scatter) }));
  return sizes.flatMap((size): PinSizeGroup<P>[] => {
    const own = guessed.filter(({ guess }) => guess.size === size);
    if (own.length === 0) return [];
    const diameters = own.map(({ pin }) => pin.diameter as number).sort((a, b) => a - b);
    const middle = diameters.length >> 1;
    return [
      {
        size,
        pins: own.map(({ pin }) => pin),
        median: metres(
          diameters.length % 2 === 1 ? diameters[middle]! : (diameters[middle - 1]! + diameters[middle]!) / 2,
        ),
        smallest: metres(diameters[0]!),
        largest: metres(diameters.at(-1)!),
        doubtful: own.filter(({ guess }) => guess.probability < SURE_SIZE).length,
        unlisted: own.filter(({ guess }) => guess.isUnlisted).length,
      },
    ];
  });
}
