import { type Cents, cents, requirePositive } from '../units/index.ts';

/**
 * How far above its pitch a string may be pulled before it stands at a given share of its break load.
 *
 *     c = 600 · log₂(s_max / s)
 *
 * @param string.breakShare    s, share of the break load at pitch, > 0; from `breakShare`
 * @param string.highestShare  s_max, the share it must not pass, > 0; the shop's limit
 * @returns c [cents above pitch]; negative where the string stands above the limit at its pitch already
 *
 * Holds for: a string whose length and mass stay as they are; then tension goes with the square of the frequency.
 * Error: u(c) = 866 cents · u(s)/s: 5 % of the strength of the wire are 43 cents. The limit has to have room for that.
 * Throws: RangeError when a share is not positive and finite.
 * Source: M. Mersenne's law, T ∝ f²; a cent is the 1200th part of an octave.
 * @example overpullLimit({ breakShare: 0.6, highestShare: 0.65 })  // ≈ 69.29 cents
 */
export function overpullLimit(string: { breakShare: number; highestShare: number }): Cents {
  const task = 'how far a string may be pulled above its pitch';
  const share = requirePositive(string.breakShare, 'the share of the break load', task);
  const highest = requirePositive(string.highestShare, 'the highest share', task);
  return cents(600 * Math.log2(highest / share));
}

/**
 * Tension of a string that stands some cents off its pitch, as a multiple of its tension at pitch.
 *
 *     T / T₀ = 2^(c / 600)
 *
 * @param offset  c [cents], negative below pitch
 * Holds for: as `overpullLimit`.
 * Source: M. Mersenne's law.
 * @example tensionFactor(cents(-100))  // ≈ 0.8909
 */
export const tensionFactor = (offset: Cents): number => 2 ** (offset / 600);
