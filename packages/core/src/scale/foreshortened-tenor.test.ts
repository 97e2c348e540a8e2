import { describe, expect, it } from 'vitest';
import type { PlainString } from '../strings/index.ts';
import { metres } from '../units/index.ts';
import { COMMON_SHOP_POLICY, withLimit } from './index.ts';
import { beyond, grand, lenient, ofRule } from './testing/findings-of.ts';
import { changed } from './testing/invented-grand.ts';

describe('what is told of the low end of the plain strings', () => {
  it('finds a foreshortened tenor by the growth of its speaking lengths', () => {
    // The lowest plain notes all as long as A#2: a tenor cut short.
    const short = changed(grand, (note) =>
      note.key >= 21 && note.key <= 26
        ? {
            string: {
              ...(note.string as PlainString),
              speakingLength: metres(grand[26]!.string.speakingLength * 1.02 ** (27 - note.key)),
            },
          }
        : undefined,
    );
    const [finding, ...others] = ofRule(
      beyond(short, withLimit(lenient, 'leastLengthGrowthInTenor', 0.035, 'test')),
      'foreshortened tenor',
    );
    expect(others).toEqual([]);
    expect(finding!.keys).toEqual([21, 22, 23, 24, 25, 26]);
    expect(finding!.figure).toBeCloseTo(0.02, 9);
    expect(finding!.sentence).toMatch(/from A#2 down to F2 .* grows by 2\.0 % a note \(limit 3\.5 %, test\)/);
    expect(ofRule(beyond(grand, COMMON_SHOP_POLICY), 'foreshortened tenor')).toEqual([]);
  });
});
