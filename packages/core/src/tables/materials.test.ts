import { describe, expect, it } from 'vitest';
import { gigapascals, inches, millimetres } from '../units/index.ts';
import { MUSIC_WIRE_MODULUS_BANDS, musicWireModulus, STEEL_DENSITY, STEEL_YOUNGS_MODULUS } from './index.ts';

describe('musicWireModulus()', () => {
  it('is 29.5, 29.0, 28.5 and 28.0 Mpsi by diameter (Shigley, mechanical properties of spring wires; from memory)', () => {
    const pascalsPerMpsi = 6.894757293168361e9;
    for (const [diameter, mpsi] of [
      [0.031, 29.5],
      [0.032, 29.5],
      [0.033, 29],
      [0.063, 29],
      [0.064, 28.5],
      [0.125, 28.5],
      [0.126, 28],
    ] as const) {
      // The metric column is rounded to 0.5 GPa at worst.
      expect(Math.abs(musicWireModulus(inches(diameter)) - mpsi * pascalsPerMpsi)).toBeLessThan(0.5e9);
    }
  });

  it('never rises with the diameter and brackets the default', () => {
    const moduli = MUSIC_WIRE_MODULUS_BANDS.map((band) => band.youngsModulus);
    expect(moduli).toEqual([...moduli].sort((a, b) => b - a));
    expect(STEEL_YOUNGS_MODULUS).toBeGreaterThan(gigapascals(196.5));
    expect(STEEL_YOUNGS_MODULUS).toBeLessThan(gigapascals(203.4));
  });

  it('refuses a diameter that is not positive', () => {
    expect(() => musicWireModulus(millimetres(0))).toThrow(RangeError);
  });
});

describe('densities', () => {
  it('agree with the density a spring maker prints for EN 10270-1 wire, 7.85 kg/dm³ (mollificiomodenese.it)', () => {
    expect(STEEL_DENSITY / 1000).toBe(7.85);
  });
});
