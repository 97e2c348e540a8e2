import { describe, expect, it } from 'vitest';
import { inches, metres, millimetres } from '../units/index.ts';
import { pinLengthFits } from './pin-lengths.ts';
import { pinSizeGroups, pinSizeGuess } from './pin-size-groups.ts';
import { COMMON_PIN_SIZES } from './pin-size-rule.ts';

describe('pinSizeGuess()', () => {
  it('knows every size of the list by its own diameter', () => {
    for (const size of COMMON_PIN_SIZES) {
      const guess = pinSizeGuess(metres(size.diameter_m), COMMON_PIN_SIZES);
      expect(guess).toMatchObject({ size: { label: size.label }, isUnlisted: false });
    }
  });

  it('is in two minds half way between two sizes', () => {
    // 0.293 5 in lies between 4/0 (0.291) and 5/0 (0.296), far from the others.
    const guess = pinSizeGuess(inches(0.2935), COMMON_PIN_SIZES, millimetres(0.04));
    expect(guess.probability).toBeCloseTo(0.5, 2);
  });

  // By hand: u = 0.02 mm; 7.20 mm is 0.0372 mm from 2/0 (7.1628) and 0.0136 mm from 2½/0 (7.2136):
  // exp(−(1.86² − 0.68²)/2) = exp(−1.499) = 0.2235; 1/(1 + 0.2235) = 0.817, 3/0 (7.2644) adds exp(−4.95).
  it('gives the chance worked by hand', () => {
    const guess = pinSizeGuess(millimetres(7.2), COMMON_PIN_SIZES);
    expect(guess.size.label).toBe('2½/0');
    expect(guess.probability).toBeCloseTo(0.812, 2);
  });

  it('says when a pin is none of the list, without dividing nothing by nothing', () => {
    expect(pinSizeGuess(millimetres(6.2), COMMON_PIN_SIZES)).toMatchObject({
      size: { label: '1/0' },
      isUnlisted: true,
      probability: 1,
    });
  });
});

describe('pinSizeGroups()', () => {
  it('keeps mixed sizes apart, each with its own middle', () => {
    const pins = [7.16, 7.17, 7.15, 7.39, 7.4].map((one) => ({ diameter: millimetres(one) }));
    const groups = pinSizeGroups(pins, COMMON_PIN_SIZES);
    expect(groups.map(({ size, pins: own }) => [size.label, own.length])).toEqual([
      ['2/0', 3],
      ['4/0', 2],
    ]);
    expect(groups[0]!.median).toBeCloseTo(0.00716, 9);
    expect(groups[1]!.median).toBeCloseTo(0.007395, 9);
    expect(pinSizeGroups([], COMMON_PIN_SIZES)).toEqual([]);
  });
});

describe('pinLengthFits()', () => {
  // By hand: 2⅜ in = 60.3 mm; less 8 mm of plate and 20 mm above it are 32.3 mm, 2.7 mm above the bottom of 35 mm.
  // 2½ in = 63.5 mm would sit 35.5 mm deep.
  it('takes plate and coil off the length and leaves air under the pin', () => {
    const fits = pinLengthFits({
      holeDepth: millimetres(35),
      plateThickness: millimetres(8),
      height: millimetres(20),
    });
    expect(fits.map(({ label, fits: one }) => [label, one])).toEqual([
      ['2 in', true],
      ['2⅛ in', true],
      ['2¼ in', true],
      ['2⅜ in', true],
      ['2½ in', false],
    ]);
    expect(fits[3]!.gapUnder * 1000).toBeCloseTo(2.675, 9);
    expect(fits[4]!.sentence).toContain('too long');
  });

  it('says when a pin does not reach the block', () => {
    const [short] = pinLengthFits({
      holeDepth: millimetres(35),
      plateThickness: millimetres(31),
      height: millimetres(20),
    });
    expect(short).toMatchObject({ fits: false });
    expect(short!.sentence).toContain('does not reach');
  });
});
