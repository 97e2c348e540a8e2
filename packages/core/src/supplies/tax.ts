import { addToGroup } from '../lists/index.ts';
import { roundedRatio } from './exact-price.ts';
import { type MinorUnits, minorUnitsFrom, sumOfMoney } from './minor-units.ts';

/** An amount with the tax on it; net + tax = gross, exactly. */
export interface TaxedAmount {
  readonly net: MinorUnits;
  readonly tax: MinorUnits;
  readonly gross: MinorUnits;
}

/** What stands under one rate of tax. */
export interface TaxClass extends TaxedAmount {
  /** Hundredths of a per cent: 1900 is 19 %. */
  readonly rate_basisPoints: number;
}

/** The whole, and its classes by rate, the highest first; the classes add up to the whole exactly. */
export interface TaxedTotal extends TaxedAmount {
  readonly classes: readonly TaxClass[];
}

const WHOLE_BASIS_POINTS = 10_000n;

/**
 * Tax on amounts of several rates. The amounts of one rate are added up first and the tax of their sum is rounded once.
 *
 *     prices without tax:  tax = s · r / 10 000            gross = s + tax
 *     prices with tax:     tax = s · r / (10 000 + r)      net = s − tax
 *
 * @param amounts                    amount [minor units] and r, its rate of tax [basis points], from 0 to 10 000
 * @param options.pricesIncludeTax   whether the amounts hold the tax already
 * @returns net, tax and gross of the whole and of each rate [minor units]; s is the sum of the amounts of a rate
 *
 * Holds for: taxes that are a share of the price, such as value added tax. Which rate a piece of work has, whether a sum may be rounded
 * by rate, and what a bill must state, is for local rules.
 * Error: none before the rounding of each rate's tax, which is half a minor unit at most, a half away from zero.
 * Throws: RangeError when a rate is not a whole number from 0 to 10 000, or a sum is too large to be held exactly.
 * Source: common practice; for the tax within a price, price · r / (100 % + r).
 * @example taxedTotal([{ amount: minorUnits(10000), rate_basisPoints: 1900 }], { pricesIncludeTax: false }).gross  // = 11900
 * @example taxedTotal([{ amount: minorUnits(11900), rate_basisPoints: 1900 }], { pricesIncludeTax: true }).net  // = 10000
 */
export function taxedTotal(
  amounts: readonly { readonly amount: MinorUnits; readonly rate_basisPoints: number }[],
  { pricesIncludeTax }: { readonly pricesIncludeTax: boolean },
): TaxedTotal {
  const sums = new Map<number, MinorUnits[]>();
  for (const { amount, rate_basisPoints: rate } of amounts) {
    if (!(Number.isInteger(rate) && rate >= 0 && rate <= 10_000))
      throw new RangeError(
        `Cannot compute the tax as a rate must be a whole number of basis points from 0 to 10000: current value is ${rate}`,
      );
    addToGroup(sums, rate, amount);
  }
  const classes = [...sums]
    .sort(([one], [other]) => other - one)
    .map(([rate, own]): TaxClass => {
      const sum = sumOfMoney(own);
      const whole = WHOLE_BASIS_POINTS + (pricesIncludeTax ? BigInt(rate) : 0n);
      const tax = minorUnitsFrom(roundedRatio(BigInt(sum) * BigInt(rate), whole));
      return {
        rate_basisPoints: rate,
        net: pricesIncludeTax ? minorUnitsFrom(BigInt(sum) - BigInt(tax)) : sum,
        tax,
        gross: pricesIncludeTax ? sum : minorUnitsFrom(BigInt(sum) + BigInt(tax)),
      };
    });
  return {
    net: sumOfMoney(classes.map(({ net }) => net)),
    tax: sumOfMoney(classes.map(({ tax }) => tax)),
    gross: sumOfMoney(classes.map(({ gross }) => gross)),
    classes,
  };
}
