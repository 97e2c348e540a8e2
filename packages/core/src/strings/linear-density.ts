import { STEEL_DENSITY } from '../tables/index.ts';
import {
  type KilogramsPerCubicMetre,
  type KilogramsPerMetre,
  kilogramsPerMetre,
  type Metres,
  requirePositive,
} from '../units/index.ts';

/**
 * Mass per length of plain wire.
 *
 *     μ = ρ · π · d² / 4
 *
 * @param wire.diameter  d [m], > 0
 * @param wire.density   ρ [kg/m³], > 0; default steel, 7850 kg/m³
 * @returns μ [kg/m]
 *
 * Holds for: round wire. Error: relative error is twice that of d plus that of ρ.
 * Throws: RangeError when an input is not positive and finite.
 * Source: geometry. For a wound string see `fullLinearDensity`.
 * @example  plainLinearDensity({ diameter: millimetres(1) })  // ≈ 0.0061654 kg/m
 */
export function plainLinearDensity(wire: {
  diameter: Metres;
  density?: KilogramsPerCubicMetre | undefined;
}): KilogramsPerMetre {
  const task = 'mass per length';
  const diameter = requirePositive(wire.diameter, 'diameter', task);
  const density = requirePositive(wire.density ?? STEEL_DENSITY, 'density', task);
  return kilogramsPerMetre((density * Math.PI * diameter ** 2) / 4);
}
