// Values from readings

// Lengths of a section, and whether wound strings agree with themselves
export {
  type FittedLength,
  type LengthFit,
  type LengthFitOptions,
  type LengthOutlier,
  type LengthReading,
  lengthFit,
  studentFactor,
} from './length-fit.ts';
// Which string to measure next
export {
  type NextWireReading,
  type NextWireReadingOptions,
  nextWireReadingSentence,
  nextWireReadings,
} from './next-wire-reading.ts';
export { type RobustSmooth, robustSmooth, type SmoothPoint } from './robust-smooth.ts';
// Questions at entry
export {
  COMMON_SLIP_POLICIES,
  type ReadingAround,
  type SlipContext,
  type SlipKind,
  type SlipPolicy,
  type SlipQuestion,
  type SlipSuggestion,
  type SlipUnit,
  slipQuestions,
  type TypedReading,
} from './slip-questions.ts';
// How a sentence tells a length
export { type SentenceUnit, type SpokenLength, spokenLengths } from './spoken-length.ts';
export {
  medianOf,
  ORIGINS,
  type Origin,
  originOfValue,
  type ReadingAccuracy,
  robustScatter,
  type ValueFromReadings,
  valueFromReadings,
} from './value-from-readings.ts';
// Which size a worn wire was
export {
  COMMON_WIRE_RULES,
  type InferredQuantity,
  type InferredWire,
  inferWireSizes,
  type ShiftDoubt,
  type WireInference,
  type WireInferenceProblem,
  type WireInferenceRules,
  type WireReading,
  type WireSizeStamp,
} from './wire-inference.ts';
export {
  inferWireLattice,
  type LatticeInference,
  type SizeNumberStamp,
  type WireLatticeProblem,
} from './wire-lattice.ts';
export {
  type WoundCheckName,
  type WoundCheckOptions,
  type WoundContradiction,
  type WoundReadings,
  woundContradictions,
} from './wound-checks.ts';
