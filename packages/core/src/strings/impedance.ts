import {
  type KilogramsPerMetre,
  type NewtonSecondsPerMetre,
  type Newtons,
  newtonSecondsPerMetre,
  requirePositive,
} from '../units/index.ts';

/**
 * Characteristic impedance of a string: how much force at its end goes with a given velocity.
 *
 *     Z = √(T · μ)
 *
 * @param string.tension        T [N], > 0
 * @param string.linearDensity  μ, winding included [kg/m], > 0
 * @returns Z [N·s/m]; the strings of a unison add up
 *
 * Holds for: a flexible uniform string. A step of Z over a break is heard as a step of loudness and of decay.
 * Error: u(Z)/Z = ½·u(T)/T ⊕ ½·u(μ)/μ when the two are independent.
 * Throws: RangeError when an input is not positive and finite.
 * Source: theory of the flexible string (e.g. N. H. Fletcher and T. D. Rossing, The Physics of Musical Instruments, ch. 2;
 * from memory).
 * @example  stringImpedance({ tension: newtons(700), linearDensity: plainLinearDensity({ diameter: millimetres(1) }) })  // ≈ 2.0774 N·s/m
 */
export function stringImpedance(string: {
  tension: Newtons;
  linearDensity: KilogramsPerMetre;
}): NewtonSecondsPerMetre {
  const task = 'impedance';
  const tension = requirePositive(string.tension, 'tension', task);
  const linearDensity = requirePositive(string.linearDensity, 'mass per length', task);
  return newtonSecondsPerMetre(Math.sqrt(tension * linearDensity));
}
