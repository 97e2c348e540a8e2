import { type MinorUnits, minorUnitsFrom } from './minor-units.ts';

/*
 * Products of money, worked out in whole numbers without limit and rounded once, to the nearest minor unit, a half away
 * from zero (commercial rounding): 0.5 becomes 1 and −0.5 becomes −1, so that a refund mirrors its charge.
 */

/**
 * Nearest whole number to a ratio, a half away from zero.
 *
 * @param numerator    any whole number
 * @param denominator  any whole number above 0
 * Throws: RangeError when the denominator is not above 0.
 * Source: common practice for the rule of the half (commercial rounding).
 * @example roundedRatio(5n, 2n).toString()  // = 3
 * @example roundedRatio(-5n, 2n).toString()  // = -3
 * @example roundedRatio(7n, 3n).toString()  // = 2
 */
export function roundedRatio(numerator: bigint, denominator: bigint): bigint {
  if (denominator <= 0n)
    throw new RangeError(
      `Cannot compute a ratio as the denominator must be > 0: current value is ${denominator}`,
    );
  const size = numerator < 0n ? -numerator : numerator;
  // Whole division cuts off, so that half a denominator is added first: ⌊(2a + b) / 2b⌋ = ⌊a/b + ½⌋.
  const rounded = (2n * size + denominator) / (2n * denominator);
  return numerator < 0n ? -rounded : rounded;
}

/**
 * Price of a quantity.
 *
 *     price = q · p / 1000, rounded to a whole minor unit
 *
 * @param line.quantity_thousandths  q, quantity in thousandths of its unit, a whole number
 * @param line.unitPrice             p, price of one unit [minor units]
 * @returns price [minor units]
 *
 * Error: none before the rounding, which is half a minor unit at most, a half away from zero.
 * Throws: RangeError when the quantity is not a whole number, or the price is too large to be held exactly.
 * @example priceOfQuantity({ quantity_thousandths: 2500, unitPrice: minorUnits(333) })  // = 833
 */
export function priceOfQuantity(line: {
  readonly quantity_thousandths: number;
  readonly unitPrice: MinorUnits;
}): MinorUnits {
  const quantity = wholeNumber(line.quantity_thousandths, 'the quantity in thousandths');
  return minorUnitsFrom(roundedRatio(quantity * BigInt(line.unitPrice), 1000n));
}

/**
 * Price of working time.
 *
 *     price = t · r / 60, rounded to a whole minor unit
 *
 * @param line.minutes     t, time [min], a whole number
 * @param line.hourlyRate  r, price of an hour [minor units]
 * @returns price [minor units]
 *
 * Error: none before the rounding, which is half a minor unit at most, a half away from zero.
 * Throws: RangeError when the time is not a whole number of minutes, or the price is too large to be held exactly.
 * @example priceOfTime({ minutes: 50, hourlyRate: minorUnits(6500) })  // = 5417
 */
export function priceOfTime(line: { readonly minutes: number; readonly hourlyRate: MinorUnits }): MinorUnits {
  return minorUnitsFrom(
    roundedRatio(wholeNumber(line.minutes, 'the time in minutes') * BigInt(line.hourlyRate), 60n),
  );
}

function wholeNumber(value: number, name: string): bigint {
  if (!Number.isSafeInteger(value))
    throw new RangeError(
      `Cannot compute a price as ${name} must be a whole number: current value is ${value}`,
    );
  return BigInt(value);
}
