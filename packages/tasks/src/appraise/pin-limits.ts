import {
  english,
  type Language,
  type Metres,
  medianOf,
  metres,
  type PinLengthFit,
  pinLengthFits,
} from '@becket/core';
import type { Job, Ulid } from '@becket/journal';

/** What this block and plate allow, as far as it was measured. */
export interface PinLimitsKnown {
  readonly largestDiameter: Metres | undefined;
  readonly plateHoleDiameter: Metres | undefined;
  readonly holeDepth: Metres | undefined;
  readonly plateThickness: Metres | undefined;
  readonly entry: Ulid | undefined;
}

/** The limits as they stand. */
export function limitsOf({ pinLimits }: Job): PinLimitsKnown {
  const of = (value: number | undefined) => (value === undefined ? undefined : metres(value));
  return {
    largestDiameter: of(pinLimits?.largestDiameter_m),
    plateHoleDiameter: of(pinLimits?.plateHoleDiameter_m),
    holeDepth: of(pinLimits?.holeDepth_m),
    plateThickness: of(pinLimits?.plateThickness_m),
    entry: pinLimits?.entry,
  };
}

/** The pin lengths that fit, or what is needed to say so. */
export function lengthsOf(
  job: Job,
  { holeDepth, plateThickness }: PinLimitsKnown,
  language: Language = english,
): { readonly lengths: readonly PinLengthFit[] | undefined; readonly need: readonly string[] } {
  const { say } = language;
  const heights = job.readings.filter(
    ({ quantity, stage }) => quantity === 'pin-height' && stage === 'as found',
  );
  const height = heights.length === 0 ? undefined : medianOf(heights.map(({ value_si }) => value_si));
  const need = [
    ...(holeDepth === undefined ? [say('the depth of the pin hole')] : []),
    ...(plateThickness === undefined ? [say('the thickness of plate and bushing')] : []),
    ...(height === undefined ? [say('the height of a pin above the plate')] : []),
  ];
  if (holeDepth === undefined || plateThickness === undefined || height === undefined)
    return { lengths: undefined, need };
  return { lengths: pinLengthFits({ holeDepth, plateThickness, height: metres(height) }, language), need };
}
