import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateTotals, type PricedLine } from './estimate-totals.ts';
import { minorUnits } from './minor-units.ts';
import { taxedTotal } from './tax.ts';

const rate = fc.constantFrom(0, 500, 700, 810, 1900, 2000, 2550, 10_000);
const line = (id: string) =>
  fc.record({
    id: fc.constant(id),
    group: fc.constantFrom('labour' as const, 'materials' as const, 'other' as const),
    amount: fc.oneof(
      fc.record({
        by: fc.constant('time' as const),
        minutes: fc.integer({ min: 0, max: 100_000 }),
        hourlyRateMinorUnits: fc.integer({ min: -1e6, max: 1e6 }),
      }),
      fc.record({
        by: fc.constant('quantity' as const),
        quantity_thousandths: fc.integer({ min: 0, max: 1e7 }),
        unitPriceMinorUnits: fc.integer({ min: -1e7, max: 1e7 }),
      }),
    ),
    taxRate_basisPoints: rate,
    ifFound: fc.option(fc.constant('a crack'), { nil: undefined }),
  });
const estimate = fc.record({
  pricesIncludeTax: fc.boolean(),
  lines: fc
    .integer({ min: 0, max: 12 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => line(`line ${index}`)))),
});
const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);

describe('taxedTotal()', () => {
  it('takes the tax out of a price by hand: 119.00 with 19 % is 100.00 and 19.00', () => {
    const total = taxedTotal([{ amount: minorUnits(11900), rate_basisPoints: 1900 }], {
      pricesIncludeTax: true,
    });
    expect(total).toMatchObject({ net: 10000, tax: 1900, gross: 11900 });
  });

  it('rounds the tax of the sum of a rate, not of each amount: three times 0.33 at 5 % is 0.05, not 0.06', () => {
    // 0.99 · 5 % = 0.0495 → 0.05; each alone 0.0165 → 0.02, three times 0.06.
    const third = { amount: minorUnits(33), rate_basisPoints: 500 };
    expect(taxedTotal([third, third, third], { pricesIncludeTax: false }).tax).toBe(5);
  });

  it('rounds half a unit of tax away from zero, both ways', () => {
    // 0.10 · 5 % = half a cent.
    const tax = (amount: number) =>
      taxedTotal([{ amount: minorUnits(amount), rate_basisPoints: 500 }], { pricesIncludeTax: false }).tax;
    expect([tax(10), tax(-10)]).toEqual([1, -1]);
  });

  it('lists the rates from the highest down, 0 % among them', () => {
    const amounts = [0, 700, 1900, 700].map((rate_basisPoints) => ({
      amount: minorUnits(100),
      rate_basisPoints,
    }));
    const { classes } = taxedTotal(amounts, { pricesIncludeTax: false });
    expect(classes.map((one) => [one.rate_basisPoints, one.net, one.tax])).toEqual([
      [1900, 100, 19],
      [700, 200, 14],
      [0, 100, 0],
    ]);
  });

  it('is within half a minor unit a rate of the exact fraction', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        rate,
        fc.boolean(),
        (amount, own, pricesIncludeTax) => {
          const { tax, net, gross } = taxedTotal([{ amount: minorUnits(amount), rate_basisPoints: own }], {
            pricesIncludeTax,
          });
          // |tax − s·r/w| ≤ ½, multiplied through by 2w to stay in whole numbers.
          const whole = BigInt(pricesIncludeTax ? 10_000 + own : 10_000);
          const miss = 2n * (BigInt(tax) * whole - BigInt(amount) * BigInt(own));
          expect((miss < 0n ? -miss : miss) <= whole).toBe(true);
          expect(net + tax).toBe(gross);
          expect(pricesIncludeTax ? gross : net).toBe(amount);
        },
      ),
      { seed: 1 },
    );
  });

  it('refuses a rate that is not one', () => {
    for (const rate_basisPoints of [-1, 10_001, 19.5, Number.NaN])
      expect(() =>
        taxedTotal([{ amount: minorUnits(1), rate_basisPoints }], { pricesIncludeTax: false }),
      ).toThrow(RangeError);
  });
});

describe('estimateTotals()', () => {
  it('adds up: lines to groups, groups and conditional lines to the whole, classes to totals, net and tax to gross', () => {
    fc.assert(
      fc.property(estimate, (one) => {
        const totals = estimateTotals(one);
        const { labour, materials, other } = totals.groups;
        expect(labour + materials + other + totals.conditional).toBe(sum(totals.amounts.values()));
        const written = one.pricesIncludeTax ? 'gross' : 'net';
        expect(totals.firm[written]).toBe(labour + materials + other);
        expect(totals.withConditional[written]).toBe(labour + materials + other + totals.conditional);
        for (const total of [totals.firm, totals.withConditional]) {
          expect(total.net + total.tax).toBe(total.gross);
          for (const part of ['net', 'tax', 'gross'] as const)
            expect(sum(total.classes.map((own) => own[part]))).toBe(total[part]);
        }
      }),
      { seed: 2 },
    );
  });

  it('holds every total that any choice of conditional lines comes to between low and high', () => {
    fc.assert(
      fc.property(estimate, fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }), (one, chosen) => {
        const { low, high } = estimateTotals(one);
        const lines = one.lines.filter(({ ifFound }, index) => ifFound === undefined || chosen[index]);
        const { gross } = estimateTotals({ ...one, lines }).withConditional;
        expect(low).toBeLessThanOrEqual(gross);
        expect(gross).toBeLessThanOrEqual(high);
      }),
      { seed: 3 },
    );
  });

  it('does not depend on the order of the lines', () => {
    fc.assert(
      fc.property(estimate, (one) => {
        const { amounts: _, ...sums } = estimateTotals(one);
        const { amounts: __, ...turned } = estimateTotals({ ...one, lines: [...one.lines].reverse() });
        expect(turned).toEqual(sums);
      }),
      { seed: 4 },
    );
  });

  it('comes out as by hand', () => {
    const lines: PricedLine[] = [
      // 14 h at 65.00 = 910.00
      {
        id: 'stringing',
        group: 'labour',
        amount: { by: 'time', minutes: 840, hourlyRateMinorUnits: 6500 },
        taxRate_basisPoints: 1900,
      },
      // 2.345 kg at 21.90 = 51.3555 → 51.36
      {
        id: 'wire',
        group: 'materials',
        amount: { by: 'quantity', quantity_thousandths: 2345, unitPriceMinorUnits: 2190 },
        taxRate_basisPoints: 1900,
      },
      // 2 h 20 at 65.00 = 151.666… → 151.67, if found
      {
        id: 'bridge',
        group: 'labour',
        amount: { by: 'time', minutes: 140, hourlyRateMinorUnits: 6500 },
        taxRate_basisPoints: 1900,
        ifFound: 'a cracked bridge cap',
      },
    ];
    const totals = estimateTotals({ pricesIncludeTax: false, lines });
    expect([...totals.amounts.values()]).toEqual([91000, 5136, 15167]);
    // 961.36 · 19 % = 182.6584 → 182.66; 1113.03 · 19 % = 211.4757 → 211.48
    expect(totals.firm).toMatchObject({ net: 96136, tax: 18266, gross: 114402 });
    expect(totals.withConditional).toMatchObject({ net: 111303, tax: 21148, gross: 132451 });
    expect([totals.low, totals.high, totals.minutes]).toEqual([114402, 132451, 840]);
  });

  it('is empty for no lines, and refuses two lines of one id and a sum that is not held exactly', () => {
    expect(estimateTotals({ pricesIncludeTax: true, lines: [] }).firm).toEqual({
      net: 0,
      tax: 0,
      gross: 0,
      classes: [],
    });
    const huge: PricedLine = {
      id: 'a',
      group: 'other',
      amount: { by: 'quantity', quantity_thousandths: 1e9, unitPriceMinorUnits: 1e12 },
      taxRate_basisPoints: 0,
    };
    expect(() => estimateTotals({ pricesIncludeTax: true, lines: [huge] })).toThrow(
      'Cannot hold this amount',
    );
    const small = { ...huge, amount: { ...huge.amount, quantity_thousandths: 1 } } as PricedLine;
    expect(() => estimateTotals({ pricesIncludeTax: true, lines: [small, small] })).toThrow('found twice');
  });
});
