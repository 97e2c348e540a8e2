import { makeLanguage } from '@becket/core';
import { foldOrders, type Order } from '@becket/journal';
import { readOrders } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { checkGroups } from './check-groups.ts';
import { bassDraft, draftTo, priceText } from './order-words.ts';
import { deliveryOf, measureOf, stringAfter } from './received-form.ts';
import { newStockForm, stockMoveOf } from './stock-form.ts';

const check = (id: string, key: number) => ({
  id,
  keys: [key],
  sentence: `about ${id}`,
  signs: `about ${id}`,
  signed: undefined,
});
const order = {
  id: '01HF7YAT02GGGGGGGGGGGGGGGG',
  lines: [
    { line: 1, what: 'wire', unit: 'coil', quantity: 3, received: 1, outstanding: 2 },
    { line: 2, what: 'pins', unit: 'pack of 50', quantity: 5, received: 0, outstanding: 5 },
  ],
} as unknown as Order;

describe('checkGroups()', () => {
  it('draws a figure that is missing at several notes together, and keeps each contradiction alone', () => {
    const groups = checkGroups([
      check('A0/missing/loop-style', 1),
      check('A#0/missing/loop-style', 2),
      check('A#0/break-share', 2),
      check('C1/missing/loop-style', 4),
    ]);
    expect(groups.map(({ sentence }) => sentence)).toEqual([
      'about A#0/break-share',
      'The loop style is not stated: A0 to A#0, C1.',
    ]);
    expect(groups[1]?.checks).toHaveLength(3);
  });
});

describe('a delivery as it is typed', () => {
  it('is all that is outstanding where nothing is typed, and less where it is', () => {
    expect(deliveryOf(order, {}, '2026-03-02').lines).toEqual([
      { line: 1, quantity: 2 },
      { line: 2, quantity: 5 },
    ]);
    expect(deliveryOf(order, { 1: '1', 2: '0' }, '2026-03-02').lines).toEqual([{ line: 1, quantity: 1 }]);
  });

  it('refuses halves, words and nothing at all', () => {
    expect(() => deliveryOf(order, { 1: '1.5' }, '2026-03-02')).toThrow(/whole number of 0 or more/);
    expect(() => deliveryOf(order, { 1: 'two' }, '2026-03-02')).toThrow(/for wire, 'two'/);
    expect(() => deliveryOf(order, { 1: '0', 2: '' }, '2026-03-02')).toThrow(/every count is 0/);
  });
});

describe('a string measured when it came', () => {
  const form = { string: '20/2', quantity: 'core-diameter', value: '' } as const;

  // 1 in = 25.4 mm, exact (international inch).
  it('is read in the unit of the screen, or in the one typed', () => {
    expect(measureOf(order, { ...form, value: '1.1' }, 'mm', '2026-03-02').measured[0]).toMatchObject({
      key: 20,
      string: 2,
      value_m: 0.0011,
      asRead: { value: 1.1, unit: 'mm' },
    });
    const [inches] = measureOf(order, { ...form, value: '.0433 in' }, 'mm', '2026-03-02').measured;
    expect(inches?.value_m).toBeCloseTo(0.00109982, 10);
  });

  it('leads to the next string, and stays at the last', () => {
    const set = { bassStrings: [1, 2].map((string) => ({ key: 20, string, lengths_m: {} })) };
    expect(stringAfter(set, '20/1')).toBe('20/2');
    expect(stringAfter(set, '20/2')).toBe('20/2');
  });

  it('needs a string and a length', () => {
    expect(() => measureOf(order, { ...form, string: '', value: '1' }, 'mm', '2026-03-02')).toThrow(
      /Choose it/,
    );
    for (const value of ['', 'thick', '-1'])
      expect(() => measureOf(order, { ...form, value }, 'mm', '2026-03-02')).toThrow(/length above 0/);
  });
});

describe('a stock movement as it is typed', () => {
  it('reads wire in grams and pins in pieces, with the length where there is one', () => {
    const wire = stockMoveOf({ ...newStockForm, diameter: '.039 in', quantity: '400' }, 'mm');
    expect(wire).toMatchObject({ kind: 'stock-counted', quantity: 400 });
    expect('item' in wire && wire.item.kind === 'wire' ? wire.item.diameter_m : 0).toBeCloseTo(0.0009906, 10);
    expect(
      stockMoveOf(
        { ...newStockForm, action: 'keep at least', kind: 'tuning pin', diameter: '7.16', quantity: '50' },
        'mm',
      ),
    ).toMatchObject({ kind: 'stock-minimum-set', minimum: 50, item: { kind: 'tuning pin' } });
  });

  it('refuses what is no quantity, no diameter and no name', () => {
    expect(() => stockMoveOf({ ...newStockForm, diameter: '1', quantity: '0.5' }, 'mm')).toThrow(/in grams/);
    expect(() => stockMoveOf({ ...newStockForm, quantity: '5' }, 'mm')).toThrow(/diameter of the wire/);
    expect(() => stockMoveOf({ ...newStockForm, kind: 'other', quantity: '5' }, 'mm')).toThrow(
      /what it is called/,
    );
    expect(() =>
      stockMoveOf({ ...newStockForm, action: 'used', diameter: '1', quantity: '0' }, 'mm'),
    ).toThrow(/1 or more/);
  });
});

describe('draftTo()', () => {
  it('finds the draft that still stands to a supplier', () => {
    const one = (supplier: string, state: Order['state']) =>
      ({ ...order, supplier, state, what: 'supplies' }) as Order;
    const orders = [one('A', 'drafted'), one('B', 'sent')];
    expect(draftTo('A', orders)).toBe(orders[0]);
    expect(draftTo('B', orders)).toBeUndefined();
  });
});

describe('bassDraft()', () => {
  it('finds the bass set that was drafted and not sent, and no other order', () => {
    const one = (what: Order['what'], state: Order['state']) => ({ ...order, what, state }) as Order;
    const draft = one('bass strings', 'drafted');
    expect(bassDraft([draft, one('supplies', 'drafted')])).toBe(draft);
    expect(bassDraft([one('bass strings', 'sent'), one('supplies', 'drafted')])).toBeUndefined();
  });
});

describe('words of an order', () => {
  it('writes a price with its currency', () => {
    expect(priceText(1450, 'EUR', makeLanguage('en-GB'))).toBe('14.50 EUR');
    expect(priceText(123450, 'EUR', makeLanguage('de-DE'))).toBe('1.234,50 EUR');
  });
});

describe('the orders of a job', () => {
  it('are none before anything is drafted', async () => {
    const context = testContext();
    const job = await testJob(context);
    expect(await readOrders(context, job)).toEqual(foldOrders([]));
  });
});
