// Which pin goes in
export {
  COMMON_PIN_SIZE_POLICY,
  COMMON_PIN_SIZES,
  type PinSize,
  type PinSizeAdvice,
  type PinSizePolicy,
  pinSizeAdvice,
} from './pin-size-rule.ts';
