import { describe, expect, it } from 'vitest';
import { COMMON_SHOP_POLICY, type ScaleNote } from '../scale/index.ts';
import { stringTension, woundStringTension } from '../strings/index.ts';
import { rescaleNotes } from './rescale-notes.ts';
import { examplePianos } from './testing/example-pianos.ts';

const { limits } = COMMON_SHOP_POLICY;
const { notes: grand } = examplePianos[0]!;
const options = { limits, tensionDown: 0.1, tensionUp: 0.2, breakMayMove: 2 };
const byKey = new Map(rescaleNotes(grand, options).map((note) => [note.asFound.key, note]));

describe('rescaleNotes()', () => {
  it('draws the limits round what was found', () => {
    for (const { asFound, lowestTension, highestTension } of byKey.values()) {
      const { string, frequency } = asFound;
      const tension =
        string.kind === 'wound'
          ? woundStringTension(string, frequency)
          : stringTension({ ...string, frequency });
      expect(lowestTension / tension).toBeCloseTo(0.9, 12);
      expect(highestTension / tension).toBeCloseTo(1.2, 12);
    }
    expect(byKey.get(60)!.lowestBreakShare).toBe(limits.lowestBreakSharePlain.value);
    expect(byKey.get(20)!.lowestBreakShare).toBe(limits.lowestBreakShareWound.value);
  });

  it('lets the break move by so many notes and no further', () => {
    // The example has wound notes to 30 and plain ones from 31.
    const plain = [...byKey.values()]
      .filter(({ mayBePlain }) => mayBePlain)
      .map(({ asFound }) => asFound.key);
    const wound = [...byKey.values()]
      .filter(({ mayBeWound }) => mayBeWound)
      .map(({ asFound }) => asFound.key);
    expect(Math.min(...plain)).toBe(29);
    expect(Math.max(...wound)).toBe(32);
    const fixed = rescaleNotes(grand, { ...options, breakMayMove: 0 });
    for (const { asFound, mayBePlain, mayBeWound } of fixed) {
      expect(mayBePlain).toBe(asFound.string.kind === 'plain');
      expect(mayBeWound).toBe(asFound.string.kind === 'wound');
    }
  });

  it('takes bare ends from the nearest wound note of the bridge, and from no other bridge', () => {
    const ends = (key: number) => byKey.get(key)!.windingEnds;
    const found = (key: number) => {
      const { string } = byKey.get(key)!.asFound;
      return string.kind === 'wound'
        ? string.layers.map(({ bareFront, bareBack }) => ({ bareFront, bareBack }))
        : [];
    };
    expect(ends(1)).toEqual(found(1));
    expect(ends(1)).toHaveLength(2);
    expect(ends(32)).toEqual(found(30));
    // Without wound notes on the treble bridge nothing is known of bare ends there.
    const apart = grand.filter(({ key }) => key < 27 || key > 30);
    const plainOnly = rescaleNotes(apart, options).find(({ asFound }) => asFound.key === 31)!;
    expect(plainOnly.windingEnds).toEqual([]);
  });

  it('puts notes in order and takes a scale without a break', () => {
    const plain: ScaleNote[] = grand.filter(({ key }) => key > 80).reverse();
    const notes = rescaleNotes(plain, options);
    expect(notes.map(({ asFound }) => asFound.key)).toEqual([81, 82, 83, 84, 85, 86, 87, 88]);
    expect(notes.every(({ mayBePlain, mayBeWound }) => mayBePlain && !mayBeWound)).toBe(true);
  });

  it('refuses a range that is none', () => {
    expect(() => rescaleNotes(grand, { ...options, tensionDown: -0.1 })).toThrow(/how far tension may fall/);
    expect(() => rescaleNotes(grand, { ...options, breakMayMove: Number.NaN })).toThrow(
      /how far the break may move/,
    );
  });
});
