import { STEEL_DENSITY } from '../tables/index.ts';
import {
  type Hertz,
  hertz,
  type KilogramsPerCubicMetre,
  type KilogramsPerMetre,
  type Metres,
  type Newtons,
  newtons,
  requirePositive,
} from '../units/index.ts';

/**
 * Tension of a plain string at a given frequency.
 *
 *     T = π · ρ · (d · L · f)²
 *
 * @param string.diameter        d, wire diameter [m], > 0
 * @param string.speakingLength  L, front termination to bridge pin [m], > 0
 * @param string.frequency       f, first mode of the flexible string [Hz], > 0
 * @param string.density         ρ, wire density [kg/m³], > 0; default steel, 7850 kg/m³
 * @returns T [N]
 *
 * Holds for: a flexible string with fixed ends. Stiffness raises the first partial by √(1 + B), 0.05 % at B = 0.001 and
 * 0.5 % at B = 0.01: a tension from the sounding pitch of the top treble comes out high by about B.
 * Error: u(T)/T = 2·u(d)/d ⊕ 2·u(L)/L ⊕ 2·u(f)/f ⊕ u(ρ)/ρ; 0.01 mm in a 1 mm wire is 2 %. Three digits deserve print.
 * Throws: RangeError when an input is not positive and finite.
 * Source: M. Mersenne's law with μ = ρ·π·d²/4; c = π·ρ = 24 662 as in J. Mas Cabré, PTG Journal, July 2000, p. 62 (quoted).
 * @example  stringTension({ diameter: millimetres(1), speakingLength: metres(0.4), frequency: hertz(423.6), density: kilogramsPerCubicMetre(7830) })  // ≈ 706 N
 */
export function stringTension(string: {
  diameter: Metres;
  speakingLength: Metres;
  frequency: Hertz;
  density?: KilogramsPerCubicMetre | undefined;
}): Newtons {
  const task = 'tension';
  const diameter = requirePositive(string.diameter, 'diameter', task);
  const speakingLength = requirePositive(string.speakingLength, 'speaking length', task);
  const frequency = requirePositive(string.frequency, 'frequency', task);
  const density = requirePositive(string.density ?? STEEL_DENSITY, 'density', task);
  return newtons(Math.PI * density * (diameter * speakingLength * frequency) ** 2);
}

/**
 * Frequency of a uniform flexible string from its tension and mass per length.
 *
 *     f = √(T / μ) / (2 · L)
 *
 * @param string.tension         T [N], > 0
 * @param string.speakingLength  L [m], > 0
 * @param string.linearDensity   μ [kg/m], > 0
 * @returns f, first mode of the flexible string [Hz]
 *
 * Holds for: uniform strings; a wound string with bare ends needs its exact modes.
 * Error: u(f)/f = ½·u(T)/T ⊕ u(L)/L ⊕ ½·u(μ)/μ.
 * Throws: RangeError when an input is not positive and finite.
 * Source: M. Mersenne, Harmonie universelle, 1636 (from memory).
 * @example  stringFrequency({ tension: newtons(670), speakingLength: metres(0.62), linearDensity: kilogramsPerMetre(0.003934 / 0.62) })  // ≈ 262.06 Hz
 */
export function stringFrequency(string: {
  tension: Newtons;
  speakingLength: Metres;
  linearDensity: KilogramsPerMetre;
}): Hertz {
  const task = 'frequency';
  const tension = requirePositive(string.tension, 'tension', task);
  const speakingLength = requirePositive(string.speakingLength, 'speaking length', task);
  const linearDensity = requirePositive(string.linearDensity, 'mass per length', task);
  return hertz(Math.sqrt(tension / linearDensity) / (2 * speakingLength));
}
