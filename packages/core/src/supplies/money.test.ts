import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inCash } from './cash-rounding.ts';
import { currencyCodes, currencyDigits } from './currency-digits.ts';
import { priceOfQuantity, priceOfTime, roundedRatio } from './exact-price.ts';
import { minorUnits, sumOfMoney } from './minor-units.ts';

/** ISO 4217 list one as published, extracted by the script beside it. */
const listed = (
  JSON.parse(
    readFileSync(new URL('../../../../oracles/currency-digits/values.json', import.meta.url), 'utf8'),
  ) as { digits: Record<string, string> }
).digits;

/** Amounts that leave room for what is added in a test. */
const amount = fc.integer({ min: -1e12, max: 1e12 }).map(minorUnits);

describe('currencyDigits()', () => {
  it('has every currency of ISO 4217 list one with its digits, and XCG, which came after that list', () => {
    const inUse = Object.entries(listed).filter(([, digits]) => digits !== 'N.A.');
    expect(inUse.length).toBeGreaterThan(160);
    for (const [code, digits] of inUse) expect([code, currencyDigits(code)]).toEqual([code, Number(digits)]);
    expect(currencyCodes.filter((code) => listed[code] === undefined)).toEqual(['XCG']);
  });

  it('refuses gold, codes for tests, small letters and what is no code', () => {
    const none = Object.keys(listed).filter((code) => listed[code] === 'N.A.');
    expect(none).toContain('XAU');
    for (const code of [...none, 'eur', 'EURO', '', 'AAA'])
      expect(() => currencyDigits(code), code).toThrow(`'${code}' was found`);
  });
});

describe('minorUnits()', () => {
  it('takes whole numbers that are held exactly, and nothing else', () => {
    expect(minorUnits(Number.MAX_SAFE_INTEGER)).toBe(Number.MAX_SAFE_INTEGER);
    expect(Object.is(minorUnits(-0), 0)).toBe(true);
    for (const value of [0.5, Number.NaN, Number.POSITIVE_INFINITY, Number.MAX_SAFE_INTEGER + 1])
      expect(() => minorUnits(value)).toThrow(RangeError);
  });

  it('is refused for a sum that is not held exactly, where adding floats would be silently wrong', () => {
    const most = minorUnits(Number.MAX_SAFE_INTEGER);
    expect(() => sumOfMoney([most, minorUnits(2)])).toThrow('Check the prices');
    // In between it may be beyond: only the sum counts.
    expect(sumOfMoney([most, minorUnits(2), minorUnits(-3)])).toBe(Number.MAX_SAFE_INTEGER - 1);
  });
});

describe('roundedRatio()', () => {
  it('is the nearest whole number by exact fractions, a half away from zero', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }),
        fc.bigInt({ min: 1n, max: 10n ** 9n }),
        (numerator, denominator) => {
          const rounded = roundedRatio(numerator, denominator);
          // |a/b − r| ≤ ½ in whole numbers, and at a half exactly r is the one further from zero.
          const twice = 2n * (numerator - rounded * denominator);
          const distance = twice < 0n ? -twice : twice;
          expect(distance <= denominator).toBe(true);
          if (distance === denominator) {
            const size = (value: bigint) => (value < 0n ? -value : value);
            expect(size(rounded * denominator) > size(numerator)).toBe(true);
          }
        },
      ),
      { seed: 1 },
    );
  });

  it('rounds halves as a hand does: 0.5 to 1, 1.5 to 2, 2.5 to 3, and the same below zero', () => {
    expect([1n, 3n, 5n, -1n, -3n, -5n].map((halves) => Number(roundedRatio(halves, 2n)))).toEqual([
      1, 2, 3, -1, -2, -3,
    ]);
    expect(() => roundedRatio(1n, 0n)).toThrow(RangeError);
  });
});

describe('priceOfQuantity() and priceOfTime()', () => {
  it('agree with exact fractions for any quantity, time and price', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e6 }),
        fc.integer({ min: -1e10, max: 1e10 }).map(minorUnits),
        (count, price) => {
          const half = (numerator: bigint, denominator: bigint) => {
            // Written the other way round from the code: cut off, then look at what is left over.
            const cut = numerator / denominator;
            const left = numerator % denominator;
            const isHalf = 2n * (left < 0n ? -left : left) >= denominator;
            return Number(isHalf ? cut + (numerator < 0n ? -1n : 1n) : cut);
          };
          expect(priceOfQuantity({ quantity_thousandths: count, unitPrice: price })).toBe(
            half(BigInt(count) * BigInt(price), 1000n),
          );
          expect(priceOfTime({ minutes: count, hourlyRate: price })).toBe(
            half(BigInt(count) * BigInt(price), 60n),
          );
        },
      ),
      { seed: 2 },
    );
  });

  it('is right where floating point is not: 1.005 × 1.00 is 1.01, though 1.005 in binary lies below', () => {
    expect(Math.round(1.005 * 100)).toBe(100);
    expect(priceOfQuantity({ quantity_thousandths: 1005, unitPrice: minorUnits(100) })).toBe(101);
  });

  it('is the price itself for one unit and for one hour, and mirrors a refund', () => {
    expect(priceOfQuantity({ quantity_thousandths: 1000, unitPrice: minorUnits(777) })).toBe(777);
    expect(priceOfTime({ minutes: 60, hourlyRate: minorUnits(777) })).toBe(777);
    expect(priceOfTime({ minutes: 30, hourlyRate: minorUnits(-777) })).toBe(-389);
    expect(priceOfTime({ minutes: 30, hourlyRate: minorUnits(777) })).toBe(389);
  });

  it('refuses part of a thousandth and part of a minute', () => {
    const price = minorUnits(100);
    expect(() => priceOfQuantity({ quantity_thousandths: 0.5, unitPrice: price })).toThrow(RangeError);
    expect(() => priceOfTime({ minutes: 0.5, hourlyRate: price })).toThrow('whole number');
    expect(() =>
      priceOfQuantity({ quantity_thousandths: Number.MAX_SAFE_INTEGER, unitPrice: minorUnits(1e12) }),
    ).toThrow('Cannot hold this amount');
  });
});

describe('inCash()', () => {
  it('lands on the coin, half a coin away at most, and says what it added', () => {
    fc.assert(
      fc.property(amount, fc.constantFrom(1, 5, 10, 25, 100), (value, step) => {
        const { toPay, added } = inCash(value, step);
        expect(Math.abs(toPay % step)).toBe(0);
        expect(2 * Math.abs(added)).toBeLessThanOrEqual(step);
        expect(value + added).toBe(toPay);
      }),
      { seed: 3 },
    );
    expect(() => inCash(minorUnits(1), 0)).toThrow(RangeError);
  });
});
