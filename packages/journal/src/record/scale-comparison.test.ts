import {
  analyseScale,
  equalTemperedFrequency,
  hertz,
  metres,
  millimetres,
  type ScaleNote,
} from '@becket/core';
import { describe, expect, it } from 'vitest';
import { breaksOf, scaleComparison, tensionUnevenness, tuned, wiresNeeded } from './scale-comparison.ts';

/** Plain notes whose lengths make every tension alike: L·f constant at one diameter. */
function level(keys: readonly number[], diameter_mm = 1): ScaleNote[] {
  return keys.map((key) => {
    const frequency = equalTemperedFrequency(key, hertz(440));
    return {
      key,
      section: key < 40 ? 'tenor' : 'treble',
      bridge: 'long',
      strings: 3,
      frequency,
      string: { kind: 'plain', speakingLength: metres(176 / frequency), diameter: millimetres(diameter_mm) },
    };
  });
}
const keys = Array.from({ length: 30 }, (_, index) => 30 + index);
const quick = { uncertainties: 'left out' } as const;
const of = (notes: readonly ScaleNote[]) => analyseScale(notes, quick);
const pitch = hertz(440);

describe('tensionUnevenness()', () => {
  it('is nothing where tension is level, and by hand where one note stands out', () => {
    expect(tensionUnevenness(of(level(keys)))).toBeCloseTo(0, 9);
    // One note 10 % thicker: ln T rises by 2·ln 1.1 there; bends +1, −2, +1 of it over 28 middles: √(6·(2 ln 1.1)²/28).
    const notes = level(keys).map((note) => (note.key === 45 ? level([45], 1.1)[0]! : note));
    expect(tensionUnevenness(of(notes))).toBeCloseTo(Math.sqrt((6 * (2 * Math.log(1.1)) ** 2) / 28), 9);
  });

  it('says nothing of two notes, nor of notes that do not stand side by side', () => {
    expect(tensionUnevenness(of(level([30, 31])))).toBeUndefined();
    expect(tensionUnevenness(of(level([30, 32, 34])))).toBeUndefined();
  });
});

describe('scaleComparison()', () => {
  it('takes worn wire on the size that it had for no change, and half a size further for one', () => {
    const worn = level(keys).map((note) =>
      note.key === 50 && note.string.kind === 'plain'
        ? { ...note, string: { ...note.string, diameter: millimetres(0.992) } }
        : note,
    );
    expect(scaleComparison(of(worn), of(level(keys)), pitch).changed).toEqual([]);
    const other = level(keys).map((note) => (note.key === 50 ? level([50], 1.025)[0]! : note));
    expect(scaleComparison(of(worn), of(other), pitch).changed.map(({ key }) => key)).toEqual([50]);
  });

  it('compares loads over the notes that both scales have', () => {
    const { loads } = scaleComparison(of(level(keys).slice(1)), of(level(keys)), pitch);
    const all = loads.find(({ of: what }) => what === 'all')!;
    expect(all.after!.load).toBeCloseTo(all.before!.load, 6);
  });

  it('beats alike where nothing changed, and over a break only', () => {
    const two = level(keys).map((note) => (note.key < 45 ? { ...note, bridge: 'short' } : note));
    const { beats, breaks, tunedBy } = scaleComparison(of(two), of(two), pitch);
    expect(breaks).toEqual([45]);
    expect(tunedBy).toBe('stretch');
    expect(beats.length).toBeGreaterThan(0);
    for (const { before, after } of beats) expect(after).toBe(before);
    // A third of equal temperament is wide: 5·f against 4·f·2^(4/12) (definition of the interval).
    for (const { interval, before } of beats)
      if (interval === 'major third') expect(before!).toBeGreaterThan(0);
    expect(scaleComparison(of(level(keys)), of(level(keys)), pitch).beats).toEqual([]);
  });
});

describe('tuned()', () => {
  it('hardly moves its neighbours when one note is missing, and leaves that note out', () => {
    const [whole, without] = [level(keys), level(keys.filter((key) => key !== 50))].map(
      (notes) => tuned(of(notes), pitch)!,
    );
    expect(without!.map(({ key }) => key)).toEqual(keys.filter((key) => key !== 50));
    for (const { key, firstPartial } of without!) {
      const same = whole!.find((one) => one.key === key)!.firstPartial;
      expect(Math.abs(1200 * Math.log2(firstPartial / same)), `key ${key}`).toBeLessThan(0.05);
    }
  });

  it('has no stretch for a few notes, or without A4', () => {
    expect(tuned(of(level([45, 46, 47, 48, 49])), pitch)).toBeUndefined();
    expect(tuned(of(level(Array.from({ length: 30 }, (_, index) => 1 + index))), pitch)).toBeUndefined();
  });
});

describe('breaksOf() and wiresNeeded()', () => {
  it('do not take a missing note for a break', () => {
    expect(breaksOf(of(level([30, 31, 40, 41])))).toEqual([]);
  });

  it('count strings by size, thick to thin', () => {
    const wires = wiresNeeded(of([...level([30, 31], 1.1), ...level([32, 33, 34])]));
    expect(wires.map(({ use, strings, keys: at }) => [use, strings, at])).toEqual([
      ['plain', 6, [30, 31]],
      ['plain', 9, [32, 33, 34]],
    ]);
  });
});
