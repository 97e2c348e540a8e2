import { roundedRatio } from './exact-price.ts';
import { type MinorUnits, minorUnitsFrom } from './minor-units.ts';

/**
 * An amount as it is paid in coins, where the smallest coin is several minor units.
 *
 *     to pay = step · round(amount / step)
 *
 * @param amount  [minor units]
 * @param step    the smallest coin [minor units], a whole number above 0: 5 for Swiss francs
 * @returns what is paid, and what the rounding adds to the amount (below 0 where it takes away): amount + added = toPay
 *
 * Error: half a step at most, a half away from zero. Where a country rounds cash otherwise, its rule stands.
 * Throws: RangeError when the step is not a whole number above 0.
 * Source: common practice.
 * @example inCash(minorUnits(1248), 5)  // = {"toPay":1250,"added":2}
 */
export function inCash(
  amount: MinorUnits,
  step: number,
): { readonly toPay: MinorUnits; readonly added: MinorUnits } {
  if (!(Number.isSafeInteger(step) && step > 0))
    throw new RangeError(
      `Cannot round to coins as the smallest coin must be a whole number of minor units > 0: current value is ${step}`,
    );
  const toPay = minorUnitsFrom(roundedRatio(BigInt(amount), BigInt(step)) * BigInt(step));
  return { toPay, added: minorUnitsFrom(BigInt(toPay) - BigInt(amount)) };
}
