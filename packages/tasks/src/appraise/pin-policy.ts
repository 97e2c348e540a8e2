import { COMMON_PIN_SIZE_POLICY, type Language, type PinSizePolicy, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';

/** The rule of the job for going up in pin size, or the common one, which says where it comes from in this language. */
export function pinPolicyOf({ pinPolicy }: Job, language: Language): PinSizePolicy {
  if (pinPolicy !== undefined) return pinPolicy;
  return { ...COMMON_PIN_SIZE_POLICY, source: sayKnown(COMMON_PIN_SIZE_POLICY.source, language) };
}
