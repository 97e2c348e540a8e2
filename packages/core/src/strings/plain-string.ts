import type { KilogramsPerCubicMetre, Metres, Pascals } from '../units/index.ts';

/** A bare steel string. */
export interface PlainString {
  readonly kind: 'plain';
  readonly speakingLength: Metres;
  readonly diameter: Metres;
  /** Density of the wire; `STEEL_DENSITY`, 7850 kg/m³, when not given. */
  readonly steelDensity?: KilogramsPerCubicMetre;
  /** Young's modulus of the wire; `STEEL_YOUNGS_MODULUS`, 202 GPa, when not given. */
  readonly youngsModulus?: Pascals;
}
