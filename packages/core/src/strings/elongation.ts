import { STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import { type Metres, metres, type Newtons, type Pascals, requirePositive } from '../units/index.ts';

/**
 * How much a wire lengthens when it is drawn up.
 *
 *     ΔL = T · L / (E · A)        A = π · d² / 4
 *
 * @param wire.tension        T [N], > 0
 * @param wire.length         L, all the wire that is stretched, from the pin over front, speaking and back length to the
 *                            hitch pin [m], > 0; pass the speaking length to get its own share
 * @param wire.diameter       d [m], > 0; of a wound string the core
 * @param wire.youngsModulus  E [Pa], > 0; default 202 GPa
 * @returns ΔL [m]
 *
 * Holds for: the same tension all along, i.e. no friction at agraffe, capo or bridge pins, and stress under the elastic
 * limit. New wire also settles by creep and by its bends drawing straight, which this leaves out.
 * Error: u(ΔL)/ΔL = u(T)/T ⊕ u(L)/L ⊕ 2·u(d)/d ⊕ u(E)/E.
 * Throws: RangeError when an input is not positive and finite.
 * Source: Hooke's law.
 * @example  elongation({ tension: newtons(700), length: metres(0.6), diameter: millimetres(1) }) * 1000  // ≈ 2.647 mm
 */
export function elongation(wire: {
  tension: Newtons;
  length: Metres;
  diameter: Metres;
  youngsModulus?: Pascals | undefined;
}): Metres {
  const task = 'elongation';
  const tension = requirePositive(wire.tension, 'tension', task);
  const length = requirePositive(wire.length, 'length', task);
  const diameter = requirePositive(wire.diameter, 'diameter', task);
  const youngsModulus = requirePositive(wire.youngsModulus ?? STEEL_YOUNGS_MODULUS, "Young's modulus", task);
  const area = (Math.PI * diameter ** 2) / 4;
  return metres((tension * length) / (youngsModulus * area));
}
