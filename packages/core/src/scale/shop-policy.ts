import { COMMON_PIN_SIZE_POLICY, type PinSizePolicy } from '../pins/pin-size-rule.ts';
import { type Message, message } from '../words/index.ts';
import { type AssumedUncertainties, COMMON_UNCERTAINTIES } from './scale.ts';

/** One limit that a shop sets for itself. Plain data. */
export interface ShopLimit {
  readonly value: number;
  /** Unit of the value: '1' for a share or ratio. */
  readonly unit: '1' | 'N' | 'notes';
  /** What the limit is about, in words that can stand beside it. */
  readonly means: Message;
  /** 'common practice' until the shop has set its own. */
  readonly source: string;
}

/** Every limit that the findings of a scale are judged by. */
export interface ScaleLimits {
  readonly highestBreakShare: ShopLimit;
  readonly lowestBreakSharePlain: ShopLimit;
  readonly lowestBreakShareWound: ShopLimit;
  readonly largestTensionStepOverBreak: ShopLimit;
  readonly largestTensionStepInSection: ShopLimit;
  readonly largestInharmonicityStepOverBreak: ShopLimit;
  readonly largestImpedanceStepOverBreak: ShopLimit;
  readonly leastLengthGrowthInTenor: ShopLimit;
  readonly notesLookedAtInTenor: ShopLimit;
  readonly largestTensionSpreadInUnison: ShopLimit;
  readonly largestLoadStepOverStrut: ShopLimit;
  readonly notesLookedAtBesideStrut: ShopLimit;
  readonly highestTotalLoad: ShopLimit;
  readonly lowestTotalLoad: ShopLimit;
}
export type ScaleLimitName = keyof ScaleLimits;

/** How a shop judges: one plain object that can be edited, saved and sent. Nothing in it is physics. */
export interface ShopPolicy {
  readonly limits: ScaleLimits;
  readonly uncertainties: AssumedUncertainties;
  readonly pins: PinSizePolicy;
}

const limit = (value: number, unit: ShopLimit['unit'], means: Message): ShopLimit => ({
  value,
  unit,
  means,
  source: message('common practice'),
});

/**
 * Where a shop starts from. Every figure is common practice without a source, set with the ASTM A228 minimum in mind: by a
 * stronger table the shares come out lower and the limits on them should be lowered too.
 */
export const COMMON_SHOP_POLICY: ShopPolicy = {
  limits: {
    highestBreakShare: limit(0.65, '1', message('highest share of the break load')),
    lowestBreakSharePlain: limit(0.35, '1', message('lowest share of the break load of plain strings')),
    lowestBreakShareWound: limit(0.25, '1', message('lowest share of the break load of wound strings')),
    largestTensionStepOverBreak: limit(
      0.2,
      '1',
      message('largest step of string tension between the notes beside a break'),
    ),
    largestTensionStepInSection: limit(
      0.12,
      '1',
      message('largest step of string tension between neighbours in a section'),
    ),
    largestInharmonicityStepOverBreak: limit(
      1,
      '1',
      message('largest step of B between the notes beside a break'),
    ),
    largestImpedanceStepOverBreak: limit(
      0.5,
      '1',
      message('largest step of the impedance of the whole unison between the notes beside a break'),
    ),
    leastLengthGrowthInTenor: limit(
      0.035,
      '1',
      message('least growth of the speaking length from note to note at the low end of the plain strings'),
    ),
    notesLookedAtInTenor: limit(
      6,
      'notes',
      message('plain notes from the lowest up that are looked at for a foreshortened tenor'),
    ),
    largestTensionSpreadInUnison: limit(
      0.02,
      '1',
      message('largest spread of string tension within one unison'),
    ),
    largestLoadStepOverStrut: limit(
      0.4,
      '1',
      message('largest step of the load of a note from one side of a strut to the other'),
    ),
    notesLookedAtBesideStrut: limit(
      5,
      'notes',
      message('notes on each side of a strut whose load is compared'),
    ),
    highestTotalLoad: limit(220_000, 'N', message('highest load of all strings together')),
    lowestTotalLoad: limit(110_000, 'N', message('lowest load of all strings of a whole compass together')),
  },
  uncertainties: COMMON_UNCERTAINTIES,
  pins: COMMON_PIN_SIZE_POLICY,
};

/**
 * The policy with one limit set by the shop.
 *
 * @param policy  left as it is
 * @param name    which limit
 * @param value   in the unit of the limit, finite and above 0; a count of notes is a whole number from 2
 * @param source  who says so: the shop's name, a book, a maker. Never empty
 * Throws: RangeError for a value that cannot be a limit; SyntaxError without a source.
 * @example  withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', 0.6, 'our shop').limits.highestBreakShare.value  // = 0.6
 */
export function withLimit(
  policy: ShopPolicy,
  name: ScaleLimitName,
  value: number,
  source: string,
): ShopPolicy {
  const before = policy.limits[name];
  const isCount = before.unit === 'notes';
  if (!(Number.isFinite(value) && value > 0) || (isCount && !(Number.isInteger(value) && value >= 2))) {
    throw new RangeError(
      `Cannot set the limit '${before.means}' as it must be ${isCount ? 'a whole number from 2' : '> 0'}: found ${value}`,
    );
  }
  if (source.trim() === '') {
    throw new SyntaxError(
      `Cannot set the limit '${before.means}' as a limit needs to say who set it: found no source`,
    );
  }
  return { ...policy, limits: { ...policy.limits, [name]: { ...before, value, source } } };
}
