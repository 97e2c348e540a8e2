import { inches, mils } from '@becket/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayInWords, timeInWords } from './dates.ts';
import { lengthInWords, lengthText, smallLengthText } from './lengths.ts';

describe('lengthText()', () => {
  it('prints the published diameters of American sizes 14 and 18 (0.033 in = 0.838 mm, 0.041 in = 1.041 mm)', () => {
    // Source: table of sizes in the encyclopedia article "Piano wire", as in core/tables/us-wire-sizes.
    expect([mils(33), mils(41)].map((size) => lengthText(size, 'mm', 'diameter'))).toEqual([
      '0.838',
      '1.041',
    ]);
    expect(lengthText(mils(33), 'in', 'diameter')).toBe('0.0330');
  });

  it('agrees in both units within the rounding of each', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0005, max: 2.6, noNaN: true }), (length) => {
        const millimetres = Number(lengthText(length, 'mm', 'length'));
        const inInches = Number(lengthText(length, 'in', 'length'));
        expect(Math.abs(millimetres - inInches * 25.4)).toBeLessThan(0.05 + 0.005 * 25.4 + 1e-9);
      }),
      { seed: 3 },
    );
  });

  it('stands in running text with both units', () => {
    expect(lengthInWords(inches(40), 'length', 'in')).toBe('40.00 in (1016.0 mm)');
  });
});

describe('smallLengthText()', () => {
  it('never prints something as nothing', () => {
    expect(smallLengthText(0.00001, 'mm', 'length')).toBe('<0.1');
    expect(smallLengthText(0.0000001, 'mm', 'diameter')).toBe('<0.001');
    expect(smallLengthText(0.0000001, 'in', 'diameter')).toBe('<0.0001');
    expect(smallLengthText(0, 'mm', 'length')).toBe('0.0');
    expect(smallLengthText(0.0003, 'mm', 'length')).toBe('0.3');
  });
});

describe('days and times in words', () => {
  it('are those of UTC', () => {
    expect(dayInWords('2026-12-31T23:59:00.000Z')).toBe('31 December 2026');
    expect(timeInWords('2026-03-01T10:05:59.000Z')).toBe('1 March 2026, 10:05 UTC');
  });
});
