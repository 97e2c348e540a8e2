import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import { newtonMetres } from '../units/index.ts';
import { makeLanguage } from '../words/index.ts';
import { regionsOfField } from './field-regions.ts';
import { lowPinPattern, type PinInField } from './low-pin-pattern.ts';
import { seededChance } from './seeded-chance.ts';

/** An invented block of three sections, two or three strings a note. */
const sections = [
  { section: 'bass', firstKey: 1, lastKey: 26 },
  { section: 'tenor', firstKey: 27, lastKey: 58 },
  { section: 'treble', firstKey: 59, lastKey: 88 },
];
const field = Array.from({ length: 88 }, (_, index) => index + 1).flatMap((key) =>
  Array.from({ length: key <= 26 ? 2 : 3 }, (_, string) => ({ key, string: string + 1 })),
);
/** Every third pin read. */
const readPins = field.filter((_, index) => index % 3 === 0);
const patternOf = (isLow: (pin: { key: number; string: number }) => boolean, pins = readPins, seed = 5) =>
  lowPinPattern(
    pins.map((pin): PinInField => ({ ...pin, isLow: isLow(pin) })),
    { sections, random: seededChance(seed) },
  );

function slowScore(pins: readonly PinInField[], region: readonly number[]): number {
  const inside = pins.filter((_, index) => region.includes(index));
  const outside = pins.filter((_, index) => !region.includes(index));
  const rateOf = (some: readonly PinInField[]) => some.filter(({ isLow }) => isLow).length / some.length;
  if (rateOf(inside) <= rateOf(outside)) return 0;
  const likelihood = (some: readonly PinInField[], rate: number) =>
    some.reduce((sum, { isLow }) => sum + Math.log(isLow ? rate : 1 - rate), 0);
  return (
    likelihood(inside, rateOf(inside)) + likelihood(outside, rateOf(outside)) - likelihood(pins, rateOf(pins))
  );
}

describe('lowPinPattern()', () => {
  it('names a section of which most pins are low', () => {
    const pattern = patternOf(({ key }) => key >= 59 && key % 5 !== 0);
    expect(pattern).toMatchObject({ kind: 'one section', region: { firstKey: 59, lastKey: 88 } });
    expect(pattern.chance).toBeLessThanOrEqual(0.01);
    expect(pattern.looksLike).toContain('in the section treble');
    expect(pattern.oftenMeans).not.toBe('');
  });

  it('names a line inside the field', () => {
    const pattern = patternOf(({ key }) => key >= 38 && key <= 48);
    expect(pattern.kind).toBe('a line inside the field');
    expect(pattern.region!.firstKey).toBeGreaterThanOrEqual(35);
    expect(pattern.region!.lastKey).toBeLessThanOrEqual(51);
  });

  it('names a row of pins along the block, which neighbours alone would not show', () => {
    const everyPin = field.filter(({ key }) => key % 4 === 0 && key > 26);
    const pattern = patternOf(({ string }) => string === 2, everyPin);
    expect(pattern).toMatchObject({ kind: 'a line inside the field', region: { row: 2 } });
    expect(pattern.looksLike).toContain('in the row of string 2');
  });

  it('names the flange where pins beside the struts are low', () => {
    const pattern = patternOf(
      ({ key }) => [1, 2, 25, 26, 27, 28, 57, 58, 59, 60, 87, 88].includes(key),
      field.filter((_, index) => index % 2 === 0),
    );
    expect(pattern.kind).toBe('along the flange');
    expect(pattern.looksLike).toContain('beside the struts');
  });

  it('calls evenly spread low pins scattered, and says with what chance', () => {
    const pattern = patternOf(({ key }) => key % 11 === 0);
    expect(pattern.kind).toBe('scattered');
    expect(pattern.chance).toBeGreaterThan(0.05);
    expect(pattern.region).toBeUndefined();
  });

  it('tells none, everywhere and too few apart', () => {
    expect(patternOf(() => false).kind).toBe('none');
    expect(patternOf(() => true).kind).toBe('everywhere');
    expect(patternOf(({ key }) => key < 3, readPins.slice(0, 7)).kind).toBe('cannot tell');
    expect(patternOf(() => false, []).kind).toBe('cannot tell');
  });

  // By construction the chance of a false alarm is one in twenty; 200 fields of a fair lot give 10 ± 3.1, and 19 is three of
  // those above. The bench counts more of them.
  it('seldom sees a pattern in pins that are low by lot', () => {
    const lot = seededChance(77);
    let named = 0;
    for (let turn = 0; turn < 200; turn += 1) {
      const pattern = lowPinPattern(
        readPins.slice(0, 50).map((pin): PinInField => ({ ...pin, isLow: lot() < 0.25 })),
        { sections, random: seededChance(turn), shuffles: 99 },
      );
      if (pattern.region !== undefined) named += 1;
    }
    expect(named).toBeLessThanOrEqual(19);
  });

  it('finds the loosest zone of a block that is loose all over', () => {
    const lot = seededChance(3);
    const pins = readPins.map((pin): PinInField => {
      const grip = newtonMetres((pin.key >= 38 && pin.key <= 48 ? 5 : 10) + 2 * lot());
      return { ...pin, grip, isLow: grip < 13.6 };
    });
    const withGrips = lowPinPattern(pins, { sections, random: seededChance(1) });
    expect(withGrips).toMatchObject({ kind: 'a line inside the field', low: pins.length });
    expect(withGrips.below).toBeGreaterThan(6);
    expect(withGrips.looksLike).toContain('The lowest pins gather from');
    const withoutGrips = pins.map(({ key, string, isLow }) => ({ key, string, isLow }));
    expect(lowPinPattern(withoutGrips, { sections, random: seededChance(1) }).kind).toBe('everywhere');
  });

  it('makes nothing of the lowest of firm pins', () => {
    const pins = readPins.map((pin): PinInField => {
      const grip = newtonMetres(pin.key < 20 ? 14 : 18);
      return { ...pin, grip, isLow: pin.key === 60 };
    });
    expect(lowPinPattern(pins, { sections, random: seededChance(1) }).region).toBeUndefined();
  });

  // The slow way: every region counted pin by pin, and the likelihoods written out.
  it('finds the region that trying all of them one by one finds', () => {
    const lot = seededChance(9);
    for (let turn = 0; turn < 12; turn += 1) {
      const first = 3 + Math.floor(lot() * 70);
      const pins = readPins.map(
        (pin): PinInField => ({
          ...pin,
          isLow: lot() < (pin.key >= first && pin.key < first + 12 ? 0.9 : 0.1),
        }),
      );
      const pattern = lowPinPattern(pins, { sections, random: seededChance(turn), shuffles: 99 });
      if (pattern.region === undefined) continue;
      const scores = regionsOfField(pins, sections).map((region) => ({
        region,
        score: slowScore(pins, region.pins) - region.price,
      }));
      const best = Math.max(...scores.map(({ score }) => score));
      const found = slowScore(pins, pattern.region.pins) - pattern.region.price;
      expect(found).toBeCloseTo(best, 9);
    }
  });

  it('is the same every time with one seed', () => {
    const isLow = ({ key }: { key: number }) => key >= 38 && key <= 48;
    expect(patternOf(isLow)).toEqual(patternOf(isLow));
  });

  it('needs no string numbers', () => {
    const pins = readPins.map(({ key }) => ({ key, string: undefined, isLow: key >= 59 }));
    expect(lowPinPattern(pins, { sections, random: seededChance(1) }).kind).toBe('one section');
  });
});

describe('a pattern in German', () => {
  it('says where the low pins gather, what it often means and how sure it is', () => {
    const pins = readPins.map((pin): PinInField => ({ ...pin, isLow: pin.key > 58 }));
    const pattern = lowPinPattern(pins, { sections, random: seededChance(5) }, makeLanguage('de-DE', german));
    expect(pattern.looksLike).toBe(
      `Schwache Wirbel häufen sich im Abschnitt treble: dort ${pattern.low} von ${pattern.low}, sonst 0 von ${pattern.read - pattern.low}.`,
    );
    expect(pattern.oftenMeans).toMatch(/^Oft frühere Arbeiten/);
    expect(pattern.howSure).toMatch(
      /^Der bloße Zufall bringt das bei 0,1 % der Mischungen hervor: eindeutig\./,
    );
  });
});
