import { inches, inMetres, millimetres } from '@becket/core';
import { describe, expect, test } from 'vitest';
import { lengthText, uncertaintyText } from './length-text.ts';

describe('lengthText()', () => {
  test('tells a diameter to a micrometre or to a ten-thousandth of an inch', () => {
    expect(lengthText(inMetres(millimetres(1.0254)), 'mm', 'diameter')).toBe('1.025 mm');
    expect(lengthText(inMetres(inches(0.041)), 'in', 'diameter')).toBe('0.0410 in');
  });

  test('tells a length to a tenth of a millimetre or to a thousandth of an inch', () => {
    expect(lengthText(inMetres(millimetres(1203.46)), 'mm', 'length')).toBe('1203.5 mm');
    expect(lengthText(inMetres(inches(47.38)), 'in', 'length')).toBe('47.380 in');
  });
});

describe('lengthText() in the unit of an instrument', () => {
  // One inch is 25.4 mm exactly (international yard and pound agreement, 1959).
  test.each([
    ['mil', '40.5 mil'],
    ['um', '1029 µm'],
    ['m', '0.001029 m'],
    ['in', '0.0405 in'],
  ] as const)('in %s', (unit, words) => {
    expect(lengthText(0.0405 * 0.0254, unit, 'diameter')).toBe(words);
  });
});

describe('uncertaintyText()', () => {
  test('never says that nothing is uncertain when something is', () => {
    expect(uncertaintyText(inMetres(millimetres(0.0001)), 'mm', 'diameter')).toBe('± < 0.001 mm');
    expect(uncertaintyText(inMetres(millimetres(0.0006)), 'mm', 'diameter')).toBe('± 0.001 mm');
    expect(uncertaintyText(undefined, 'mm', 'diameter')).toBe('');
    expect(uncertaintyText(inMetres(millimetres(0.0041)), 'mm', 'diameter')).toBe('± 0.004 mm');
  });
});
