import { type Metres, type Newtons, newtons, type Pascals, requirePositive } from '../units/index.ts';

/**
 * Load at which a straight wire breaks.
 *
 *     F = S · π · d² / 4
 *
 * @param wire.diameter  d [m], > 0; of a wound string the core
 * @param wire.strength  S, tensile strength [Pa], > 0
 * @returns F [N]
 *
 * Holds for: sound straight wire. A coil, a loop, a bend or rust lowers it; by how much is not in any table here.
 * Error: u(F)/F = 2·u(d)/d ⊕ u(S)/S.
 * Throws: RangeError when an input is not positive and finite.
 * Source: definition of tensile strength.
 * @example  breakLoad({ diameter: millimetres(0.966), strength: megapascals(2410) })  // ≈ 1766.3 N
 */
export function breakLoad(wire: { diameter: Metres; strength: Pascals }): Newtons {
  const task = 'break load';
  const diameter = requirePositive(wire.diameter, 'diameter', task);
  const strength = requirePositive(wire.strength, 'strength', task);
  return newtons((strength * Math.PI * diameter ** 2) / 4);
}
