import { describe, expect, it } from 'vitest';
import { millimetres } from '../units/index.ts';
import { withLimit } from './index.ts';
import { beyond, findings, grand, lenient, ofRule, withString } from './testing/findings-of.ts';

describe('what is told of break shares', () => {
  it('gathers neighbours into one finding and gaps into two', () => {
    const policy = withLimit(lenient, 'highestBreakShare', 0.69, 'test');
    const together = ofRule(beyond(grand, policy), 'break share over the ceiling');
    expect(together).toHaveLength(1);
    expect(together[0]!.keys).toEqual([86, 87, 88]);
    expect(together[0]!.sentence).toContain('on 3 notes, A#7 to C8');
    const apart = beyond(
      grand.filter((note) => note.key !== 87),
      policy,
    );
    expect(apart.map(({ keys }) => keys)).toEqual([[86], [88]]);
  });

  it('has a floor of its own for plain and for wound strings', () => {
    const plain = beyond(grand, withLimit(lenient, 'lowestBreakSharePlain', 0.355, 'test'));
    expect(plain).toHaveLength(1);
    expect(plain[0]).toMatchObject({ rule: 'break share under the floor', keys: [21, 22] });
    const wound = beyond(grand, withLimit(lenient, 'lowestBreakShareWound', 0.365, 'test'));
    expect(wound).toHaveLength(1);
    expect(wound[0]).toMatchObject({ rule: 'break share under the floor', keys: [1] });
  });

  it('says where a wire lies outside the strength table', () => {
    const [finding] = ofRule(
      findings(withString(60, { diameter: millimetres(0.6) }), lenient),
      'outside the strength table',
    );
    expect(finding!.keys).toEqual([60]);
    expect(finding!.sentence).toContain('lies outside the sizes of ASTM A228 minimum');
  });
});
