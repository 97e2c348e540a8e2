import { makeLanguage } from '@becket/core';
import { describe, expect, test } from 'vitest';
import { lengthField, typedSizes } from './pins-state.ts';

describe('typedSizes()', () => {
  test.each([
    '2/0 0.282, 3/0 0.286',
    '2/0 0.282,3/0 0.286',
    '2/0 0.282; 3/0 0.286;',
    ' 2/0  0.282 ,\n3/0 0.286,',
  ])('reads %j', (text) => {
    expect(typedSizes(text).map((one) => one.split(/\s+/))).toEqual([
      ['2/0', '0.282'],
      ['3/0', '0.286'],
    ]);
  });

  test.each(['2/0 0,282; 3/0 0,286', '2/0 0,282, 3/0 0,286', '2/0 0,282,3/0 0,286'])('reads %j', (text) => {
    expect(typedSizes(text)).toEqual(['2/0 0,282', '3/0 0,286']);
  });
});

test('a field of a length starts with the decimal mark of its reader', () => {
  expect(lengthField(0.00725, 'mm')).toBe('7.25 mm');
  expect(lengthField(0.00725, 'mm', makeLanguage('de-DE'))).toBe('7,25 mm');
  expect(lengthField(undefined, 'mm')).toBe('');
});
