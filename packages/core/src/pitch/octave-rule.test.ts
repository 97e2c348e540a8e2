import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type OctaveRule, octaveShares, usualOctaveRule } from './octave-rule.ts';

describe('octaveShares()', () => {
  it('is 6:3 in the bass, 4:2 in the middle and 2:1 in the treble', () => {
    expect(octaveShares(1, usualOctaveRule)).toEqual([{ lowerPartial: 6, share: 1 }]);
    expect(octaveShares(16, usualOctaveRule)).toEqual([{ lowerPartial: 6, share: 1 }]);
    expect(octaveShares(34, usualOctaveRule)).toEqual([{ lowerPartial: 4, share: 1 }]);
    expect(octaveShares(76, usualOctaveRule)).toEqual([{ lowerPartial: 2, share: 1 }]);
  });

  it('mixes two kinds between anchors, by distance', () => {
    expect(octaveShares(19, usualOctaveRule)).toEqual([
      { lowerPartial: 6, share: 0.75 },
      { lowerPartial: 4, share: 0.25 },
    ]);
  });

  it('always has shares that add up to 1', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 76 }), (key) => {
        const sum = octaveShares(key, usualOctaveRule).reduce((total, { share }) => total + share, 0);
        expect(sum).toBeCloseTo(1, 12);
      }),
      { seed: 4 },
    );
  });

  it('refuses a rule that is none', () => {
    const rule = (...anchors: OctaveRule['anchors']): OctaveRule => ({ name: 'mine', anchors, source: '' });
    expect(() => octaveShares(1, rule())).toThrow('at least one anchor is needed');
    expect(() => octaveShares(1, rule({ lowerKey: 1, lowerPartial: 3 }))).toThrow(
      "Cannot use the octave rule 'mine' as the lower partial of an octave must be even, 2 or more: current value is 3",
    );
    expect(() =>
      octaveShares(1, rule({ lowerKey: 9, lowerPartial: 4 }, { lowerKey: 9, lowerPartial: 2 })),
    ).toThrow('found key 9 after key 9');
  });
});
