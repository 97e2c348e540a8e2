import { describe, expect, it } from 'vitest';
import { isInKeyRange, keyRangeAt } from './key-range.ts';

const bass = { name: 'bass', firstKey: 1, lastKey: 20 };
const treble = { name: 'treble', firstKey: 22, lastKey: 88 };

describe('isInKeyRange()', () => {
  it('takes in both ends and nothing beyond them', () => {
    expect([21, 22, 55, 88, 89].map((key) => isInKeyRange(key, treble))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
  });
});

describe('keyRangeAt()', () => {
  it('finds the run of a key, the first of two that overlap, and none between two', () => {
    expect(keyRangeAt(20, [bass, treble])).toBe(bass);
    expect(keyRangeAt(22, [bass, treble])).toBe(treble);
    expect(keyRangeAt(21, [bass, treble])).toBeUndefined();
    const whole = { name: 'whole', firstKey: 1, lastKey: 88 };
    expect(keyRangeAt(20, [whole, bass])).toBe(whole);
    expect(keyRangeAt(1, [])).toBeUndefined();
  });
});
