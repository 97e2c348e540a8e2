import { requireNotNegative, requirePositive } from '../units/index.ts';
import { message } from '../words/index.ts';

/** What is bought beyond one pin a string: plain data, so that a shop can keep its own. */
export interface PinAllowance {
  readonly source: string;
  /** Spares as a share of the pins of a size. */
  readonly spareShare: number;
  /** Spares of a size at the least. */
  readonly leastSpares: number;
}

/** One in fifty, and two of each size at the least. Our own starting figures. */
export const STARTING_PIN_ALLOWANCE: PinAllowance = {
  source: message('our own starting figures'),
  spareShare: 0.02,
  leastSpares: 2,
};

/** Things that are bought whole: pins, bushings, punchings. */
export interface CountNeed {
  readonly needed: number;
  readonly spares: number;
  /** To be driven before the set is bought, or before the rest is. */
  readonly test: number;
  readonly total: number;
}

/**
 * Pins of one size and length to have at hand.
 *
 *     total = n + max(least, ⌈s · n⌉) + test
 *
 * @param need.needed     n, one a string
 * @param need.test       pins driven only to try the block
 * @param need.allowance  s spareShare, and the least count of spares
 * @returns each part; no spares where no pin is needed
 *
 * Throws: RangeError when a count is negative.
 * Source: counting; the allowance names its own.
 * @example  pinsNeeded({ needed: 230, test: 4, allowance: STARTING_PIN_ALLOWANCE }).total  // = 239
 */
export function pinsNeeded({
  needed,
  test = 0,
  allowance,
}: {
  readonly needed: number;
  readonly test?: number | undefined;
  readonly allowance: PinAllowance;
}): CountNeed {
  const task = 'the pins to have at hand';
  requireNotNegative(needed, 'the count of pins', task);
  requireNotNegative(test, 'the count of test pins', task);
  const share = requireNotNegative(allowance.spareShare, 'the share of spares', task);
  // 0.02 · 150 is 3.0000000000000004 in binary: that is three spares and not four.
  const spares = needed === 0 ? 0 : Math.max(allowance.leastSpares, Math.ceil(share * needed - 1e-9));
  return { needed, spares, test, total: needed + spares + test };
}

/** Packs to buy of something sold in packs, and what is left over. */
export interface PacksToBuy {
  readonly packs: number;
  readonly pieces: number;
  readonly left: number;
}

/**
 * Whole packs that hold a quantity.
 *
 * @param quantity  ≥ 0, in the unit in which the pack is told
 * @param packSize  > 0
 * Throws: RangeError when an input is outside its range.
 * @example  packsToBuy(239, 50).packs  // = 5
 */
export function packsToBuy(quantity: number, packSize: number): PacksToBuy {
  const task = 'the packs to buy';
  requireNotNegative(quantity, 'the quantity', task);
  const packs = Math.ceil(quantity / requirePositive(packSize, 'the size of a pack', task));
  return { packs, pieces: packs * packSize, left: packs * packSize - quantity };
}
