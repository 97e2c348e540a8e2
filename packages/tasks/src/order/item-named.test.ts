import { stockItemId } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { itemNamed, quantityOf } from './item-named.ts';

describe('itemNamed()', () => {
  it.each([
    'wire 0.991 mm',
    'tuning pin 7.16 x 63.5 mm',
    'tuning pin 7.16 x any length',
    'felt glue (piece)',
  ])('reads what the stock is listed by: %s', (id) => {
    expect(stockItemId(itemNamed(id))).toBe(id);
  });

  it('reads inches and a decimal comma', () => {
    // 0.039 in × 25.4 mm/in = 0.9906 mm, the inch of ISO 80000-3.
    expect(itemNamed('wire .039 in')).toEqual({ kind: 'wire', diameter_m: expect.closeTo(0.0009906, 12) });
    expect(itemNamed('Tuning pin 7,163 mm x 63,5 mm')).toEqual({
      kind: 'tuning pin',
      diameter_m: expect.closeTo(0.007163, 12),
      length_m: expect.closeTo(0.0635, 12),
    });
    expect(itemNamed('tuning pin 7.16 mm')).toEqual({
      kind: 'tuning pin',
      diameter_m: expect.closeTo(0.00716, 12),
    });
  });

  it.each(['wire', 'wire 0.991', 'wire 41 mm', 'tuning pin 7.16', 'felt', 'felt (barrels)'])(
    'says what is needed when it finds %s',
    (text) => {
      expect(() => itemNamed(text)).toThrow(/^Cannot tell what/);
    },
  );
});

describe('quantityOf()', () => {
  it.each([
    ['500 g', 'g', 500],
    ['1.5kg', 'g', 1500],
    ['0,25 kg', 'g', 250],
    ['2 m', 'mm', 2000],
    ['240', 'piece', 240],
    ['1 set', 'set', 1],
    ['0', 'g', 0],
  ] as const)('reads %s in %s as %d', (text, unit, whole) => {
    expect(quantityOf(text, unit)).toBe(whole);
  });

  it.each([
    ['500 g', 'piece'],
    ['1.5', 'piece'],
    ['-3', 'g'],
    ['', 'g'],
    ['0.0001 kg', 'g'],
  ] as const)('refuses %s in %s', (text, unit) => {
    expect(() => quantityOf(text, unit)).toThrow(/^Cannot take the quantity/);
  });
});
