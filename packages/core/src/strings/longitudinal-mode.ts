import { STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import {
  type Hertz,
  hertz,
  type KilogramsPerMetre,
  type Metres,
  type Pascals,
  requirePositive,
} from '../units/index.ts';

/**
 * Frequency at which a string swings along itself.
 *
 *     f_m = m · √(E · A / μ) / (2 · L)        A = π · d² / 4
 *
 * @param string.speakingLength  L [m], > 0
 * @param string.coreDiameter    d, the wire that carries tension [m], > 0
 * @param string.linearDensity   μ, winding included [kg/m], > 0
 * @param string.youngsModulus   E [Pa], > 0; default 202 GPa
 * @param string.mode            m, 1 or more; default 1
 * @returns f_m [Hz]
 *
 * Holds for: uniform strings with fixed ends. For plain wire it is √(E/ρ)/(2L), whatever the diameter and nearly whatever
 * the tension: retuning does not move it, only a change of length or winding does. A winding adds mass and no stiffness.
 * Error: u(f)/f = u(L)/L ⊕ ½·u(E)/E ⊕ ½·u(μ)/μ ⊕ u(d)/d; about 2 % from E alone.
 * Throws: RangeError when an input is not positive and finite.
 * Source: wave equation of a bar; H. A. Conklin, J. Acoust. Soc. Am. 100 (1996) 1286, part III (page from memory): about
 * 2500 Hz for one metre of plain steel.
 * @example  longitudinalMode({ speakingLength: metres(1), coreDiameter: millimetres(1), linearDensity: plainLinearDensity({ diameter: millimetres(1) }) })  // ≈ 2536.4 Hz
 */
export function longitudinalMode(string: {
  speakingLength: Metres;
  coreDiameter: Metres;
  linearDensity: KilogramsPerMetre;
  youngsModulus?: Pascals | undefined;
  mode?: number | undefined;
}): Hertz {
  const task = 'the longitudinal mode';
  const speakingLength = requirePositive(string.speakingLength, 'speaking length', task);
  const coreDiameter = requirePositive(string.coreDiameter, 'core diameter', task);
  const linearDensity = requirePositive(string.linearDensity, 'mass per length', task);
  const youngsModulus = requirePositive(
    string.youngsModulus ?? STEEL_YOUNGS_MODULUS,
    "Young's modulus",
    task,
  );
  const mode = requirePositive(string.mode ?? 1, 'mode number', task);
  const area = (Math.PI * coreDiameter ** 2) / 4;
  const waveSpeed = Math.sqrt((youngsModulus * area) / linearDensity);
  return hertz((mode * waveSpeed) / (2 * speakingLength));
}
