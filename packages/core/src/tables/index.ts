// How strong wire is

export { A228_MAXIMUM, A228_MINIMUM } from './astm-a228.ts';
export { EN_10270_SH_MINIMUM, EN_10270_SM_MINIMUM } from './en-10270.ts';
export {
  CAREFUL_MUSIC_WIRE_LAW,
  type HandbookStrengthLawInput,
  handbookStrengthLaw,
  SHIGLEY_A228_LAW,
} from './handbook-strength-law.ts';

// What wire is made of

export {
  CAST_IRON_EXPANSION_PER_KELVIN,
  COPPER_DENSITY,
  IRON_DENSITY,
  type ModulusBand,
  MUSIC_WIRE_MODULUS_BANDS,
  musicWireModulus,
  STEEL_DENSITY,
  STEEL_EXPANSION_PER_KELVIN,
  STEEL_YOUNGS_MODULUS,
} from './materials.ts';

// The sizes in which wire is drawn

export { METRIC_WIRE_SIZES } from './metric-wire-sizes.ts';
export {
  diametersOfSize,
  disputesOf,
  latticeDiameters,
  type NearestSize,
  nearestSize,
  type SizeLattice,
  sizeLabel,
  sizeLattice,
  type WireSize,
} from './size-lattice.ts';
export { PUBLISHED_STRENGTH_TABLES, strengthTableNamed } from './strength-tables.ts';
export { type TestedWire, type TestedWireTable, testedStrengthTable } from './tested-wire.ts';
export { US_WIRE_SIZES } from './us-wire-sizes.ts';
export {
  type InterpolatedStrengthTableInput,
  interpolatedStrengthTable,
  REAL_WIRE_REMARK,
  rangeOfTable,
  type StrengthLawInput,
  type StrengthPoint,
  strengthLawTable,
  type WireStrength,
  type WireStrengthTable,
} from './wire-strength.ts';
