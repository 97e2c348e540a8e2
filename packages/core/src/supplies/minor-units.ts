import { type Quantity, quantity } from '../units/quantity.ts';

/*
 * Money as whole minor units of its currency: 1250 is EUR 12.50 and JPY 1250. Sums of whole numbers are exact; a product
 * with a quantity is worked out exactly and rounded once, see `priceOfQuantity`.
 */

/** An amount of money in whole minor units of its currency. The currency is told beside it. */
export type MinorUnits = Quantity<'money in minor units'>;

/**
 * An amount of money from a plain whole number.
 *
 * Throws: RangeError when it is not a whole number that a computer holds exactly (at most 2⁵³ − 1 either way).
 * Source: the definition above.
 * @example minorUnits(1250)  // = 1250
 */
export function minorUnits(value: number): MinorUnits {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(
      `Cannot hold this amount of money: a whole number of minor units from -${Number.MAX_SAFE_INTEGER} to ` +
        `${Number.MAX_SAFE_INTEGER} is needed, ${value} was found. Check the prices and the quantities.`,
    );
  }
  // −0 would be written with its sign.
  return quantity('money in minor units', value === 0 ? 0 : value);
}

/** An amount from exact arithmetic. Throws: RangeError when it is too large to be held exactly as a number. */
export function minorUnitsFrom(value: bigint): MinorUnits {
  return minorUnits(Number(value));
}

export const inMinorUnits = (amount: MinorUnits): number => amount;

/**
 * Sum of amounts in one currency.
 *
 * Throws: RangeError when the sum is too large to be held exactly.
 * @example sumOfMoney([minorUnits(1250), minorUnits(-250)])  // = 1000
 */
export function sumOfMoney(amounts: readonly MinorUnits[]): MinorUnits {
  return minorUnitsFrom(amounts.reduce((sum, amount) => sum + BigInt(amount), 0n));
}
