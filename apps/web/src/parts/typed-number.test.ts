import { makeLanguage } from '@becket/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberAsTyped, readTypedNumber } from './typed-number.ts';

describe('readTypedNumber()', () => {
  test.each([
    ['1.025', 1.025, undefined],
    [' 1,025 ', 1.025, undefined],
    ['.041', 0.041, undefined],
    ['+0.0410\r', 0.041, undefined],
    ['0.041 in', 0.041, 'in'],
    ['0.041"', 0.041, 'in'],
    ['41 thou', 0.041, 'in'],
    ['15 3/8"', 15.375, 'in'],
    ['3/8', 0.375, 'in'],
    ['1203.5mm', 1203.5, 'mm'],
    ['120.35 cm', 1203.5, 'mm'],
    ['1025 µm', 1025, 'um'],
  ])('reads %j', (text, value, unit) => {
    expect(readTypedNumber(text)).toEqual({ is: 'number', value, unit });
  });

  test.each(['1.234,5', 'abc', '12 kg', '1 2', '--', '3/0', '15 3/8 mm'])('does not guess at %j', (text) => {
    expect(readTypedNumber(text)).toMatchObject({ is: 'problem' });
  });

  test('reads back every number it could have been given, with a comma too', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (value) => {
        const text = value.toFixed(4);
        const expected = { is: 'number', value: Number(text), unit: undefined };
        expect(readTypedNumber(text)).toEqual(expected);
        expect(readTypedNumber(text.replace('.', ','))).toEqual(expected);
      }),
    );
  });

  test('an empty field is empty, not zero', () => {
    expect(readTypedNumber('  ')).toEqual({ is: 'empty' });
  });
});

describe('numberAsTyped()', () => {
  test.each([
    ['1.020', '1.020'],
    ['+001.020mm', '1.020'],
    ['-0.35', '-0.35'],
    ['0.0405', '0.0405'],
    ['00', '0'],
    [' 1,020 mm ', '1.020'],
    ['.0405"', '0.0405'],
    ['-,5', '-0.5'],
    ['15 3/8 in', '15 3/8'],
    ['41 thou', '0.041'],
    ['10 cm', '100'],
  ])('reads %j back as %j', (text, words) => {
    const typed = readTypedNumber(text);
    expect(typed.is === 'number' && numberAsTyped(text, typed.value)).toBe(words);
  });

  test.each([
    ['1.020', '1,020'],
    ['1,020 mm', '1,020'],
    ['15 3/8 in', '15 3/8'],
    ['41 thou', '0,041'],
  ])('reads %j back as %j to a German', (text, words) => {
    const typed = readTypedNumber(text);
    expect(typed.is === 'number' && numberAsTyped(text, typed.value, makeLanguage('de-DE'))).toBe(words);
  });
});
