// Which pin goes in

export {
  COMMON_PIN_SIZE_POLICY,
  COMMON_PIN_SIZES,
  type PinSize,
  type PinSizeAdvice,
  type PinSizePolicy,
  pinSizeAdvice,
} from './pin-size-rule.ts';

// Grip and margin from torque readings

export { type PinGrip, pinGrip, type StringPull, type TorqueReading } from './grip.ts';

// What a sample of pins can and cannot say

export { bootstrapMeanInterval, type MeanInterval } from './bootstrap-interval.ts';
export { chanceAllMissed, type HiddenZones, hiddenZones } from './missed-zone.ts';
