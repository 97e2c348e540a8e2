import { A4_KEY, type Hertz, hertz, requireKey, requirePositive } from '../units/index.ts';

/**
 * Frequency of a key in equal temperament, for partials that are exact multiples of the first.
 *
 *     f = f_A · 2^((key − 49)/12)
 *
 * @param key             key number, 1 = A0 … 88 = C8; A4 is 49
 * @param referencePitch  f_A, frequency of A4 [Hz], > 0: 440 by ISO 16 (from memory), 442 or 435 where an instrument
 *                        is kept there
 * @returns f [Hz]
 *
 * Holds for: the definition; no stretch. For a piano's own targets see `stretchedTuning`.
 * Error: the relative error of the reference pitch, unchanged.
 * Throws: RangeError when the key is not on the keyboard or the reference pitch is not positive and finite.
 * Source: the MIDI tuning convention, f = 440 · 2^((m − 69)/12) with m = key + 20.
 * @example equalTemperedFrequency(40, hertz(440))  // ≈ 261.6256 Hz
 */
export function equalTemperedFrequency(key: number, referencePitch: Hertz): Hertz {
  requireKey(key, 'an equal-tempered frequency');
  const pitch = requirePositive(referencePitch, 'the reference pitch', 'an equal-tempered frequency');
  return hertz(pitch * 2 ** ((key - A4_KEY) / 12));
}
