import { type Metres, type Newtons, type Pascals, pascals, requirePositive } from '../units/index.ts';

/**
 * Tensile stress in a wire.
 *
 *     σ = T / (π · d² / 4)
 *
 * @param wire.tension   T [N], > 0
 * @param wire.diameter  d [m], > 0; of a wound string the core, since the winding carries no tension
 * @returns σ [Pa]
 *
 * Holds for: straight wire; at a bend over a pin or a hitch the outer fibre bears more.
 * Error: u(σ)/σ = u(T)/T ⊕ 2·u(d)/d, unless T was itself computed from d: then of a plain string d cancels and
 * σ = ρ·(2·L·f)².
 * Throws: RangeError when an input is not positive and finite.
 * Source: definition.
 * @example  wireStress({ tension: newtons(700), diameter: millimetres(1) }) / 1e6  // ≈ 891 MPa
 */
export function wireStress(wire: { tension: Newtons; diameter: Metres }): Pascals {
  const task = 'stress';
  const tension = requirePositive(wire.tension, 'tension', task);
  const diameter = requirePositive(wire.diameter, 'diameter', task);
  return pascals(tension / ((Math.PI * diameter ** 2) / 4));
}
