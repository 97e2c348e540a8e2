// Which pin goes in

export {
  COMMON_PIN_LENGTHS,
  LEAST_GAP_UNDER_PIN,
  type PinLengthFit,
  pinLengthFits,
} from './pin-lengths.ts';

export {
  COMMON_PIN_SCATTER,
  type PinSizeGroup,
  type PinSizeGuess,
  pinSizeGroups,
  pinSizeGuess,
  SURE_SIZE,
} from './pin-size-groups.ts';
export {
  COMMON_PIN_SIZE_POLICY,
  COMMON_PIN_SIZES,
  type PinSize,
  type PinSizeAdvice,
  type PinSizePolicy,
  pinSizeAdvice,
} from './pin-size-rule.ts';

// What a larger pin gains, by the test pins of this block

export {
  FEWEST_TEST_PINS,
  type PredictedGrip,
  predictedGrip,
  type TestPinLaw,
  type TestPinStep,
  testPinLaw,
} from './test-pin-law.ts';

// Grip and margin from torque readings

export { type PinGrip, pinGrip, type StringPull, type TorqueReading } from './grip.ts';
export {
  COMMON_TORQUE_ACCURACY,
  type GripEstimate,
  gripEstimate,
  type KnownPull,
  type TorqueAccuracy,
} from './grip-estimate.ts';

// Torque as the trade reads it

export { torqueText } from './torque-text.ts';

// What a sample of pins can and cannot say

export { type MeanInterval, meanInterval } from './mean-interval.ts';
export { chanceAllMissed, type HiddenZones, hiddenZones } from './missed-zone.ts';
export { type SectionMean, sectionMean } from './section-mean.ts';
export { seededChance } from './seeded-chance.ts';
export { studentShareBelow, studentT } from './student-t.ts';

// Where low pins gather

export type { FieldRegion } from './field-regions.ts';
export {
  type LowPinPattern,
  type LowPinPatternKind,
  lowPinPattern,
  MEANING_OF_PATTERNS,
  type PinInField,
} from './low-pin-pattern.ts';
