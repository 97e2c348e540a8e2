import {
  english,
  type Metres,
  medianOf,
  message,
  metres,
  type PinLengthFit,
  type PinSizePolicy,
  type TestPinLaw,
} from '@becket/core';
import type { Job } from '@becket/journal';
import { measuredPins, type PinMeasured } from './measured-pins.ts';
import { type PinCounts, pinCounts } from './pin-counts.ts';
import { type PinDriving, pinDriving } from './pin-driving.ts';
import { type PinGroup, pinGroups } from './pin-groups.ts';
import { lengthsOf, limitsOf, type PinLimitsKnown } from './pin-limits.ts';
import { pinPolicyOf } from './pin-policy.ts';
import { type SuggestedRemedy, suggestedRemedies } from './pin-remedies.ts';
import { type PinTorqueMap, pinTorqueMap, type TorqueMapOptions } from './pin-torque-map.ts';
import { type TestPinTried, testPinsOf } from './test-pins.ts';

export interface PinChoice {
  readonly policy: PinSizePolicy;
  readonly isOwnPolicy: boolean;
  readonly map: PinTorqueMap;
  /** Every pin with a diameter. */
  readonly measured: readonly PinMeasured[];
  /** Undefined when no pin was measured. */
  readonly scatter:
    | { readonly count: number; readonly median: Metres; readonly smallest: Metres; readonly largest: Metres }
    | undefined;
  /** Small to large; several where sizes are mixed. */
  readonly groups: readonly PinGroup[];
  readonly isMixed: boolean;
  readonly limits: PinLimitsKnown;
  /** Undefined until hole depth, plate thickness and pin height are known; `lengthsNeed` says which are not. */
  readonly lengths: readonly PinLengthFit[] | undefined;
  readonly lengthsNeed: readonly string[];
  readonly testPins: readonly TestPinTried[];
  readonly law: TestPinLaw | undefined;
  /** How sure the law is, or why there is none, in one sentence. */
  readonly lawSentence: string;
  readonly suggested: readonly SuggestedRemedy[];
  readonly remedies: Job['pinRemedies'];
  readonly counts: PinCounts;
  readonly driving: PinDriving;
  readonly cautions: readonly string[];
}

export interface PinChoiceOptions extends TorqueMapOptions {
  /** Air that a pin needs in the plate hole, on its diameter; 0.5 mm when not given: our own figure, no source. */
  readonly leastClearance?: Metres;
}

const LEAST_CLEARANCE = 0.0005;
const CAUTIONS = [
  message(
    'Support the block from beneath before a pin is driven: a blow on an unsupported block can split it or break the plate.',
  ),
  message('Wear eye protection when pins are driven or knocked out.'),
  message('Fit test pins in the worst and in the best place before the whole set is bought.'),
  message('Whether a block with cracks or parting layers can be kept is a judgement for a specialist.'),
];

/**
 * What the pins as found, their torque, the limits of block and plate and the test pins say about the pins to go in.
 *
 * Mixed sizes are kept apart, each with its own step by the rule of the job. The rule is applied to grip, the string's pull
 * taken out. The program suggests; what each pin gets is decided by a person (`choosePinRemedy`).
 */
export function pinChoice(job: Job, options: PinChoiceOptions = {}): PinChoice {
  const { language = english } = options;
  const policy = pinPolicyOf(job, language);
  const leastClearance = options.leastClearance ?? metres(LEAST_CLEARANCE);
  const map = pinTorqueMap(job, { ...options, stage: 'as found' });
  const measured = measuredPins(job, { map, policy }, language);
  const { tried, law, sentence } = testPinsOf(job, { map, measured }, language);
  const limits = limitsOf(job);
  const groups = pinGroups(measured, map, { policy, law, limits, leastClearance }, language);
  const diameters = measured.map(({ diameter }) => diameter);
  const { lengths, need } = lengthsOf(job, limits, language);
  return {
    policy,
    isOwnPolicy: job.pinPolicy !== undefined,
    map,
    measured,
    scatter:
      diameters.length === 0
        ? undefined
        : {
            count: diameters.length,
            median: metres(medianOf(diameters)),
            smallest: metres(Math.min(...diameters)),
            largest: metres(Math.max(...diameters)),
          },
    groups,
    isMixed: groups.length > 1,
    limits,
    lengths,
    lengthsNeed: need,
    testPins: tried,
    law,
    lawSentence: sentence,
    suggested: suggestedRemedies(groups, { map, policy, law, limits }, language),
    remedies: job.pinRemedies,
    counts: pinCounts(job, map.field, groups, policy),
    driving: pinDriving(job, map.field, language),
    cautions: CAUTIONS.map((caution) => language.say(caution)),
  };
}
