import { requirePositive } from '../units/index.ts';

/** Losses of one string: both parts of the rate at which its partials die away. */
interface StringLoss {
  /** Pitch of the string in keys: 16 = C2. */
  readonly key: number;
  /** b₁ [1/s]: alike for every partial. */
  readonly even: number;
  /** b₂ [m²/s]: grows with the square of the wave number. */
  readonly withWaveNumber: number;
}

/** C4 and its place in the table were compared with a second publication that uses them; C2 and C7 are from memory. */
const FITTED_LOSSES: readonly [StringLoss, StringLoss, StringLoss] = [
  { key: 16, even: 0.25, withWaveNumber: 7.5e-5 },
  { key: 40, even: 1.1, withWaveNumber: 2.7e-4 },
  { key: 76, even: 9.17, withWaveNumber: 2.1e-3 },
];

/**
 * How fast partial n of a piano string dies away.
 *
 *     a(t) = a₀ · e^(−σ_n·t)        σ_n = b₁ + b₂ · (n·π/L)²
 *
 * @param string.key             where on the keyboard, 1 to 88: it sets b₁ and b₂
 * @param string.speakingLength  L [m], > 0
 * @param string.partial         n, 1 or more
 * @returns σ_n [1/s]; the sound falls by 60 dB in 6.91/σ_n seconds
 *
 * b₁ and b₂ are straight lines in their logarithms between C2, C4 and C7, carried on beyond. Two scales are compared
 * under one law, so that a difference that is heard comes from the strings and not from the decay.
 * Holds for: telling scales apart by ear. It knows nothing of one piano's soundboard, bridge or age, and nothing of the
 * slow second part of a real decay.
 * Error: a plausible decay, not a prediction; a factor of two either way is ordinary.
 * Throws: RangeError when the key, the length or the partial is not positive.
 * Source: J. Bensa, S. Bilbao, R. Kronland-Martinet, J. O. Smith, J. Acoust. Soc. Am. 114 (2003) 1095, table of fitted
 * values (from memory); what lies between them is our own.
 * @example  partialDecay({ key: 40, speakingLength: 0.62, partial: 1 })  // ≈ 1.10693 1/s
 */
export function partialDecay(string: { key: number; speakingLength: number; partial: number }): number {
  const task = 'the decay of a partial';
  const key = requirePositive(string.key, 'the key', task);
  const speakingLength = requirePositive(string.speakingLength, 'speaking length', task);
  const partial = requirePositive(string.partial, 'the partial number', task);
  const [low, middle, high] = FITTED_LOSSES;
  const [from, to] = key < middle.key ? [low, middle] : [middle, high];
  const share = (key - from.key) / (to.key - from.key);
  const between = (one: number, other: number) => one * (other / one) ** share;
  const waveNumber = (partial * Math.PI) / speakingLength;
  return between(from.even, to.even) + between(from.withWaveNumber, to.withWaveNumber) * waveNumber ** 2;
}
