import {
  gigapascals,
  inches,
  type KilogramsPerCubicMetre,
  kilogramsPerCubicMetre,
  type Metres,
  metres,
  type Pascals,
  requirePositive,
} from '../units/index.ts';

/** Density of music wire. Common practice: the round figure of spring-steel handbooks; one author uses 7833. */
export const STEEL_DENSITY: KilogramsPerCubicMetre = kilogramsPerCubicMetre(7850);

/** Density of copper winding wire. Common practice; handbooks give 8920 to 8960. */
export const COPPER_DENSITY: KilogramsPerCubicMetre = kilogramsPerCubicMetre(8930);

/** Density of soft-iron winding wire, as on some old strings. From memory; handbooks give 7850 to 7880. */
export const IRON_DENSITY: KilogramsPerCubicMetre = kilogramsPerCubicMetre(7870);

/**
 * Young's modulus of music wire when nothing better is known.
 * Source: the value used with the published string set in checks/checks.json (chab-…); handbooks give 190 to 207 GPa.
 */
export const STEEL_YOUNGS_MODULUS: Pascals = gigapascals(202);

/**
 * Linear expansion of carbon steel near room temperature [1/K].
 * Common practice; handbooks give 11 to 12 · 10⁻⁶ (makeitfrom.com prints 12 · 10⁻⁶ for A228 wire).
 */
export const STEEL_EXPANSION_PER_KELVIN = 11.5e-6;

/** Linear expansion of grey cast iron, the plate [1/K]. From memory; handbooks give 10 to 11 · 10⁻⁶. */
export const CAST_IRON_EXPANSION_PER_KELVIN = 10.5e-6;

/** A band of wire diameters with one modulus. */
export interface ModulusBand {
  /** The band reaches up to and includes this diameter. */
  readonly upTo: Metres;
  readonly youngsModulus: Pascals;
}

/**
 * Young's modulus of A228 music wire by diameter, thin to thick: a spring maker's table in steps, not a smooth law.
 * Source: Shigley's Mechanical Engineering Design, mechanical properties of spring wires: 29.5, 29.0, 28.5 and 28.0 Mpsi up
 * to .032, .063, .125 in and above (from memory).
 */
export const MUSIC_WIRE_MODULUS_BANDS: readonly ModulusBand[] = [
  { upTo: inches(0.032), youngsModulus: gigapascals(203.4) },
  { upTo: inches(0.063), youngsModulus: gigapascals(200) },
  { upTo: inches(0.125), youngsModulus: gigapascals(196.5) },
  { upTo: metres(Number.POSITIVE_INFINITY), youngsModulus: gigapascals(193) },
];

/**
 * Young's modulus of music wire of a given diameter, from the spring maker's table above.
 *
 * Error: steps of 1.7 % between bands; published values for one diameter differ by about 4 %.
 * Throws: RangeError when the diameter is not positive.
 * @example  musicWireModulus(millimetres(1)) / 1e9  // ≈ 200 GPa
 */
export function musicWireModulus(diameter: Metres): Pascals {
  requirePositive(diameter, 'diameter', "Young's modulus of music wire");
  return MUSIC_WIRE_MODULUS_BANDS.find((band) => diameter <= band.upTo)!.youngsModulus;
}
