import { describe, expect, it } from 'vitest';
import { equalTemperedFrequency } from '../pitch/index.ts';
import { hertz } from '../units/index.ts';
import { breakBeats } from './break-beats.ts';

const keys = Array.from({ length: 60 }, (_, index) => index + 15);
const tuning = { referencePitch: hertz(440) };
const flat = keys.map((key) => ({ key, inharmonicity: 0 }));
/** B that falls to the break at 31, jumps there, and rises to the treble; the proposed one does not jump. */
const jumping = keys.map((key) => ({
  key,
  inharmonicity: 1e-4 * 2 ** ((key - 31) / 8) * (key < 31 ? 2.2 : 1),
}));
const even = keys.map((key) => ({ key, inharmonicity: 1e-4 * 2 ** ((key - 31) / 8) }));

describe('breakBeats()', () => {
  it('is equal temperament for strings without stiffness', () => {
    const { beats } = breakBeats({ before: flat, after: flat, breakKey: 31, tuning });
    const f = (key: number) => equalTemperedFrequency(key, hertz(440));
    for (const { interval, lowerKey, upperKey, lowerPartial, upperPartial, before, after } of beats) {
      // Definition of a beat: the difference of the two partials.
      const rate = upperPartial * f(upperKey) - lowerPartial * f(lowerKey);
      expect(before).toBeCloseTo(rate, 8);
      expect(after).toBeCloseTo(rate, 8);
      if (interval === 'octave') expect(before).toBeCloseTo(0, 8);
    }
    // F3–A3 beats 6.93 times a second: the published table of equal temperament, checks.json.
    const third = beats.find(({ interval, lowerKey }) => interval === 'major third' && lowerKey === 33);
    expect(third!.before).toBeCloseTo(6.93, 2);
  });

  it('lists thirds, fifths and octaves within reach, and says which lie across the break', () => {
    const { beats } = breakBeats({ before: jumping, after: even, breakKey: 31, reach: 8, tuning });
    const fifths = beats.filter(({ interval, lowerPartial }) => interval === 'fifth' && lowerPartial === 3);
    expect(fifths.map(({ lowerKey }) => lowerKey)).toEqual([23, 24, 25, 26, 27, 28, 29, 30, 31]);
    expect(fifths.map(({ isAcrossBreak }) => isAcrossBreak)).toEqual([
      false,
      true,
      true,
      true,
      true,
      true,
      true,
      true,
      false,
    ]);
    expect(beats.some(({ interval }) => interval === 'octave')).toBe(true);
    expect(beats.every(({ lowerKey, upperKey }) => lowerKey >= 23 && upperKey < 39)).toBe(true);
  });

  it('runs more evenly through the break when B does not jump there', () => {
    const { evenness } = breakBeats({ before: jumping, after: even, breakKey: 31, tuning });
    for (const { interval, largestStepBefore, largestStepAfter } of evenness) {
      if (interval === 'major third' || interval === 'fifth')
        expect(largestStepAfter).toBeLessThan(largestStepBefore);
    }
  });

  it('refuses scales of different keys', () => {
    expect(() => breakBeats({ before: flat, after: flat.slice(1), breakKey: 31, tuning })).toThrow(
      /same keys/,
    );
  });
});
