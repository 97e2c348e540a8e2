import { plainLinearDensity } from '../strings/index.ts';
import {
  type Kilograms,
  type KilogramsPerCubicMetre,
  kilograms,
  type Metres,
  metres,
  requireNotNegative,
  requirePositive,
} from '../units/index.ts';
import { message } from '../words/index.ts';

/**
 * Mass of a length of plain wire.
 *
 *     m = (π/4) · d² · ρ · L
 *
 * @param wire.diameter  d [m], > 0
 * @param wire.length    L [m], ≥ 0
 * @param wire.density   ρ [kg/m³], > 0; default steel, 7850 kg/m³
 * @returns m [kg]
 *
 * Error: relative error is twice that of d plus those of L and ρ.
 * Throws: RangeError when an input is outside its range.
 * Source: geometry.
 * @example  wireMass({ diameter: millimetres(1), length: metres(100) })  // ≈ 0.61654 kg
 */
export function wireMass(wire: {
  readonly diameter: Metres;
  readonly length: Metres;
  readonly density?: KilogramsPerCubicMetre | undefined;
}): Kilograms {
  const length = requireNotNegative(wire.length, 'length', 'the mass of a wire');
  return kilograms(plainLinearDensity(wire) * length);
}

/**
 * Length of plain wire of a given mass: the way back from `wireMass`.
 *
 *     L = m / ((π/4) · d² · ρ)
 *
 * Throws: RangeError when an input is outside its range.
 * Source: geometry.
 * @example  wireLength({ diameter: millimetres(1), mass: kilograms(0.5) })  // ≈ 81.098 m
 */
export function wireLength(wire: {
  readonly diameter: Metres;
  readonly mass: Kilograms;
  readonly density?: KilogramsPerCubicMetre | undefined;
}): Metres {
  const mass = requireNotNegative(wire.mass, 'mass', 'the length of a wire');
  return metres(mass / plainLinearDensity(wire));
}

/** What is bought beyond what is cut: plain data, so that a shop can keep its own. */
export interface WireAllowance {
  /** Where the figures come from; printed beside every quantity. */
  readonly source: string;
  /** Spoilt wire as a share of what is cut: kinks, breaks, the ends of a coil. */
  readonly spoilageShare: number;
  /** Wires of the longest cut kept with the piano, of each size. */
  readonly spareWires: number;
}

/** A tenth for spoilage and one spare wire of each size. Our own starting figures. */
export const STARTING_WIRE_ALLOWANCE: WireAllowance = {
  source: message('our own starting figures'),
  spoilageShare: 0.1,
  spareWires: 1,
};

/** Wire of one size, part by part, so that a list can show its sum. */
export interface WireNeed {
  readonly wires: number;
  /** Sum of the cut lengths. */
  readonly cut: Metres;
  readonly spoilage: Metres;
  readonly spare: Metres;
  readonly total: Metres;
  readonly mass: Kilograms;
}

/**
 * Wire of one size that a set of cut wires asks for.
 *
 *     L = Σ cut + s · Σ cut + n · max(cut)
 *
 * @param need.diameter   of the size [m], > 0
 * @param need.cuts       length to cut of each wire [m], each > 0
 * @param need.allowance  s spoilageShare ≥ 0, n spareWires ≥ 0
 * @returns each part [m] and the mass of the whole [kg]; all zero without a wire
 *
 * Throws: RangeError when an input is outside its range.
 * Source: counting; the allowance names its own.
 * @example  wireNeed({ diameter: millimetres(1), cuts: [metres(2), metres(3)], allowance: STARTING_WIRE_ALLOWANCE }).total  // ≈ 8.5 m
 */
export function wireNeed(need: {
  readonly diameter: Metres;
  readonly cuts: readonly Metres[];
  readonly allowance: WireAllowance;
  readonly density?: KilogramsPerCubicMetre | undefined;
}): WireNeed {
  const task = 'the wire to buy';
  const share = requireNotNegative(need.allowance.spoilageShare, 'the share of spoilage', task);
  const spares = requireNotNegative(need.allowance.spareWires, 'the count of spare wires', task);
  let [cut, longest] = [0, 0];
  for (const length of need.cuts) {
    cut += requirePositive(length, 'a cut length', task);
    longest = Math.max(longest, length);
  }
  const total = metres(cut + share * cut + spares * longest);
  return {
    wires: need.cuts.length,
    cut: metres(cut),
    spoilage: metres(share * cut),
    spare: metres(spares * longest),
    total,
    mass: wireMass({ diameter: need.diameter, length: total, density: need.density }),
  };
}
