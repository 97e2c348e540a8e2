import { requirePositive, requireWithin } from '../units/index.ts';

/** Contact of the hammer [s], key: at A0 and C8; straight in the logarithm between. From memory, see the source below. */
const CONTACT_AT_A0 = 4e-3;
const CONTACT_AT_C8 = 0.6e-3;

/**
 * How strongly a hammer sets partial n going, as it pushes the bridge.
 *
 *     F_n ∝ |sin(n·π·β)| / (1 + (2·f_n·τ)²)
 *
 * @param strike.partial    n, 1 or more
 * @param strike.frequency  f_n [Hz], > 0
 * @param strike.position   β, distance from the front termination ÷ speaking length, 0 to 1; 1/8 is common practice
 * @param strike.key        1 to 88: it sets τ, how long the hammer touches, 4 ms at A0 to 0.6 ms at C8
 * @returns a number without unit, to be compared with other partials only
 *
 * A short push at one point of a flexible string gives every mode the speed sin(n·π·β), so its swing falls as 1/n and
 * the force on the bridge, which goes with n times the swing, not at all. The second factor is the softness of the hammer:
 * the spectrum of a push that lasts τ, without its zeros.
 * Holds for: telling scales apart by ear; both are struck alike. It is no model of a hammer.
 * Throws: RangeError when an input is out of range.
 * Source: N. H. Fletcher and T. D. Rossing, The Physics of Musical Instruments, struck string (from memory); times of
 * contact: A. Askenfelt and E. Jansson, J. Acoust. Soc. Am. 88 (1990) 52 (from memory); the second factor is our own.
 * @example  strikeAmplitude({ partial: 8, frequency: 1760, position: 1 / 8, key: 37 })  // ≈ 0
 */
export function strikeAmplitude(strike: {
  partial: number;
  frequency: number;
  position: number;
  key: number;
}): number {
  const task = 'how strongly a partial sounds';
  const partial = requirePositive(strike.partial, 'the partial number', task);
  const frequency = requirePositive(strike.frequency, 'frequency', task);
  const position = requireWithin(strike.position, 0, 1, 'the strike position', task);
  const key = requirePositive(strike.key, 'the key', task);
  const contact = CONTACT_AT_A0 * (CONTACT_AT_C8 / CONTACT_AT_A0) ** ((key - 1) / 87);
  const amplitude = Math.abs(Math.sin(partial * Math.PI * position)) / (1 + (2 * frequency * contact) ** 2);
  // A node under the hammer leaves nothing; rounding would leave 1e-16.
  return amplitude < 1e-12 ? 0 : amplitude;
}
