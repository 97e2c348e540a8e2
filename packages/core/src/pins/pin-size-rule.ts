import {
  inches,
  inchPounds,
  type Metres,
  metres,
  type NewtonMetres,
  newtonMetres,
  requirePositive,
} from '../units/index.ts';
import { english, type Language, message, sayKnown } from '../words/index.ts';
import { torqueText } from './torque-text.ts';

/** One size in which tuning pins are sold. */
export interface PinSize {
  /** '2/0', as it is written on the box. */
  readonly label: string;
  readonly diameter: Metres;
  readonly source: string;
}

/**
 * The shop's rule for going up in pin size: plain data, so that a shop can keep its own. Figures are SI, with the unit in
 * the name.
 */
export interface PinSizePolicy {
  /** Where the rule comes from; printed beside every advice. */
  readonly source: string;
  /** Small to large. */
  readonly sizes: readonly { readonly label: string; readonly diameter_m: number; readonly source: string }[];
  /** All readings at or above this: the firm case. */
  readonly firmTorque_n_m: number;
  /** Any reading below this: the block itself is in question. */
  readonly veryLooseTorque_n_m: number;
  /** Sizes to go up in the firm case. */
  readonly sizesUpWhenFirm: number;
  /** Sizes to go up when a reading is below firm. */
  readonly sizesUpWhenLoose: number;
}

const LISTED = message('common practice');
const REMEMBERED = message('common practice, from memory');

/**
 * Tuning pin sizes as commonly listed, 1/0 to 8/0. Half size 2½/0 is sold but is not a step of the rule's ladder: the rule
 * goes up by whole sizes.
 */
export const COMMON_PIN_SIZES: PinSizePolicy['sizes'] = [
  { label: '1/0', diameter_m: inches(0.276), source: LISTED },
  { label: '2/0', diameter_m: inches(0.282), source: LISTED },
  { label: '2½/0', diameter_m: inches(0.284), source: LISTED },
  { label: '3/0', diameter_m: inches(0.286), source: REMEMBERED },
  { label: '4/0', diameter_m: inches(0.291), source: REMEMBERED },
  { label: '5/0', diameter_m: inches(0.296), source: REMEMBERED },
  { label: '6/0', diameter_m: inches(0.301), source: REMEMBERED },
  { label: '7/0', diameter_m: inches(0.306), source: REMEMBERED },
  { label: '8/0', diameter_m: inches(0.311), source: REMEMBERED },
];

/**
 * The rule as it is commonly told: all readings about 120 in·lbf (13.6 N·m) or more, one size up; less, two sizes up; very
 * loose, the block itself is in question. Where "very loose" begins is not told; 40 in·lbf (4.5 N·m) is our own figure.
 * Common practice, no source.
 */
export const COMMON_PIN_SIZE_POLICY: PinSizePolicy = {
  source: message('common practice'),
  sizes: COMMON_PIN_SIZES,
  firmTorque_n_m: inchPounds(120),
  veryLooseTorque_n_m: inchPounds(40),
  sizesUpWhenFirm: 1,
  sizesUpWhenLoose: 2,
};

/** What the rule says. */
export type PinSizeAdvice =
  | {
      readonly kind: 'size up';
      readonly sizesUp: number;
      readonly from: PinSize;
      readonly to: PinSize;
      readonly sentence: string;
    }
  | { readonly kind: 'block in question' | 'no larger size'; readonly sentence: string };

/**
 * Pin size to go up to when the block is kept, from the torque of the pins as found.
 *
 * @param input.readings  torque [N·m], each > 0; all taken the same way (see how-to: direction and string on or off), at least one
 * @param input.asFound   size of the pins as found, by label
 * @param input.policy    the shop's rule; `COMMON_PIN_SIZE_POLICY` when not given
 * @param language        of the sentence; the source of a shop's own rule stays as typed
 * @returns the advice with the sentence to print; a size only where the rule gives one
 *
 * Holds for: a drilled wooden block that is sound between the holes. The rule does not see cracks, delamination or oil: have
 * the block examined where any is suspected, and fit test pins in the worst and the best place before buying a set.
 * A half size as found counts as the whole size below it: from 2½/0 one size up is 3/0.
 * Throws: RangeError for no readings, a reading that is not positive, or a size that is not in the policy.
 * Source: the policy names it.
 * @example  pinSizeAdvice({ readings: [inchPounds(130), inchPounds(145)], asFound: '2/0' }).to.label  // = 3/0
 */
export function pinSizeAdvice(
  input: {
    readings: readonly NewtonMetres[];
    asFound: string;
    policy?: PinSizePolicy;
  },
  language: Language = english,
): PinSizeAdvice {
  const { say } = language;
  const policy = input.policy ?? COMMON_PIN_SIZE_POLICY;
  const task = 'the pin size to go up to';
  if (input.readings.length === 0) {
    throw new RangeError(`Cannot compute ${task} as at least one torque reading is needed: found none`);
  }
  for (const reading of input.readings) requirePositive(reading, 'torque', task);
  const found = policy.sizes.find((size) => size.label === input.asFound);
  if (found === undefined) {
    throw new RangeError(
      `Cannot compute ${task} as the size as found must be one of ${policy.sizes.map((size) => size.label).join(', ')}: ` +
        `found '${input.asFound}'`,
    );
  }

  const lowest = newtonMetres(Math.min(...input.readings));
  const isFirm = lowest >= policy.firmTorque_n_m;
  const evidence = {
    readings: input.readings.length,
    lowest: torqueText(lowest, language),
    source: sayKnown(policy.source, language),
  };
  if (lowest < policy.veryLooseTorque_n_m) {
    return {
      kind: 'block in question',
      sentence: say(
        'The block itself is in question: the lowest of {readings, plural, one {# reading} other {# readings}} is {lowest}, under {limit} ({source}). Have it examined before a pin size is chosen.',
        { ...evidence, limit: torqueText(newtonMetres(policy.veryLooseTorque_n_m), language) },
      ),
    };
  }
  const sizesUp = isFirm ? policy.sizesUpWhenFirm : policy.sizesUpWhenLoose;
  const to = sizeAbove(policy, found, sizesUp);
  const reasons = {
    ...evidence,
    sizes: sizesUp,
    from: found.label,
    side: isFirm ? 'firm' : 'under',
    limit: torqueText(newtonMetres(policy.firmTorque_n_m), language),
  };
  if (to === undefined) {
    return {
      kind: 'no larger size',
      sentence: say(
        "Go up {sizes, plural, one {# size} other {# sizes}} from {from}: the lowest of {readings, plural, one {# reading} other {# readings}} is {lowest}, {side, select, firm {at or above} other {under}} {limit} ({source}); but the shop's list has no such size.",
        reasons,
      ),
    };
  }
  return {
    kind: 'size up',
    sizesUp,
    from: pinSize(found),
    to: pinSize(to),
    sentence: say(
      'Go up {sizes, plural, one {# size} other {# sizes}} from {from} to {to}: the lowest of {readings, plural, one {# reading} other {# readings}} is {lowest}, {side, select, firm {at or above} other {under}} {limit} ({source}). Fit test pins in the worst and the best place first.',
      { ...reasons, to: to.label },
    ),
  };
}

type ListedSize = PinSizePolicy['sizes'][number];

/** Whole sizes only: a half size is stepped over, and counts as the whole size below it when it was found. */
function sizeAbove(policy: PinSizePolicy, found: ListedSize, steps: number): ListedSize | undefined {
  const larger = policy.sizes.filter(
    (size) => size.diameter_m > found.diameter_m && !size.label.includes('½'),
  );
  return steps === 0 ? found : larger[steps - 1];
}

function pinSize(size: ListedSize): PinSize {
  return { label: size.label, diameter: metres(size.diameter_m), source: size.source };
}
