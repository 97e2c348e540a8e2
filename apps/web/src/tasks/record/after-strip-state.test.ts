import { plainMoneyText } from '@becket/core';
import { describe, expect, test } from 'vitest';
import { damageOf, newDamageForm, priceOf } from './after-strip-state.ts';

const form = {
  ...newDamageForm(),
  what: 'a crack in the bridge cap',
  whatToDo: 'recap the bridge',
  why: 'it lay under the strings',
};

describe('priceOf()', () => {
  // Minor units of EUR, JPY and KWD are 2, 0 and 3 digits: ISO 4217, list one.
  test.each([
    ['450', 'EUR', 45000],
    ['19,99', 'EUR', 1999],
    ['450', 'JPY', 450],
    ['450', 'HUF', 45_000],
    ['1.234', 'KWD', 1234],
    ['', 'EUR', undefined],
  ])('%j in %s is %j minor units', (typed, currency, minor) => {
    const price = priceOf(typed, currency);
    expect(price).toBe(minor);
    if (price !== undefined) expect(priceOf(plainMoneyText(price, currency), currency)).toBe(minor);
  });

  test('refuses parts of a minor unit, less than nothing, and a currency that is none', () => {
    expect(() => priceOf('1.005', 'EUR')).toThrow('at most 2 digits');
    expect(() => priceOf('-1', 'EUR')).toThrow('0 or more');
    expect(() => priceOf('1', 'EU')).toThrow('three letters');
  });
});

describe('damageOf()', () => {
  test('a price that nobody gave is left out, and is not nothing', () => {
    expect(damageOf(form)).toEqual({
      place: {},
      what: 'a crack in the bridge cap',
      gravity: 'mend before stringing',
      whatToDo: 'recap the bridge',
      reason: 'it lay under the strings',
    });
    expect(damageOf({ ...form, price: '0', days: '0,5', section: 'bass', note: 'A0' })).toMatchObject({
      place: { key: 1, section: 'bass' },
      priceMinorUnits: 0,
      currency: 'EUR',
      days: 0.5,
    });
  });

  test.each(['what', 'whatToDo', 'why'] as const)('wants %s', (field) => {
    expect(() => damageOf({ ...form, [field]: ' ' })).toThrow('is needed, nothing was found');
  });
});
