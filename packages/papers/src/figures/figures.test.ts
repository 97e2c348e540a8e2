import { english, inches, makeLanguage, mils, newtonMetres } from '@becket/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { percentText, thousandthsText } from './amounts.ts';
import { lengthInWords, lengthText, smallLengthText } from './lengths.ts';
import { torqueInWords } from './torques.ts';

describe('lengthText()', () => {
  it('prints the published diameters of American sizes 14 and 18 (0.033 in = 0.838 mm, 0.041 in = 1.041 mm)', () => {
    // Source: table of sizes in the encyclopedia article "Piano wire", as in core/tables/us-wire-sizes.
    expect([mils(33), mils(41)].map((size) => lengthText(size, 'mm', 'diameter', english))).toEqual([
      '0.838',
      '1.041',
    ]);
    expect(lengthText(mils(33), 'in', 'diameter', english)).toBe('0.0330');
  });

  it('agrees in both units within the rounding of each', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0005, max: 2.6, noNaN: true }), (length) => {
        const millimetres = Number(lengthText(length, 'mm', 'length', english));
        const inInches = Number(lengthText(length, 'in', 'length', english));
        expect(Math.abs(millimetres - inInches * 25.4)).toBeLessThan(0.05 + 0.005 * 25.4 + 1e-9);
      }),
      { seed: 3 },
    );
  });

  it('stands in running text with both units', () => {
    expect(lengthInWords(inches(40), 'length', 'in', english)).toBe('40.00 in (1016.0 mm)');
  });
});

describe('smallLengthText()', () => {
  it('never prints something as nothing', () => {
    expect(smallLengthText(0.00001, 'mm', 'length', english)).toBe('<0.1');
    expect(smallLengthText(0.0000001, 'mm', 'diameter', english)).toBe('<0.001');
    expect(smallLengthText(0.0000001, 'in', 'diameter', english)).toBe('<0.0001');
    expect(smallLengthText(0, 'mm', 'length', english)).toBe('0.0');
    expect(smallLengthText(0.0003, 'mm', 'length', english)).toBe('0.3');
  });
});

describe('figures in German', () => {
  const german = makeLanguage('de-DE');

  it('have a decimal comma in both units', () => {
    expect(lengthInWords(inches(40), 'length', 'in', german)).toBe('40,00 in (1016,0 mm)');
    expect(smallLengthText(0.00001, 'mm', 'length', german)).toBe('<0,1');
    expect(torqueInWords(newtonMetres(13.56), 'mm', german)).toBe('13,6 N·m (120 in·lbf)');
    expect([thousandthsText(2345, german), percentText(810, german)]).toEqual(['2,345', '8,1 %']);
  });
});
