import { describe, expect, it } from 'vitest';
import { withLimit } from './index.ts';
import { beyond, findings, grand, lenient, ofRule } from './testing/findings-of.ts';

describe('what is told of loads', () => {
  it('tells the load on either side of every strut and judges the step', () => {
    const told = ofRule(findings(grand, lenient), 'load beside a strut');
    expect(told.map(({ keys }) => keys)).toEqual([
      [20, 21],
      [43, 44],
      [64, 65],
    ]);
    const judged = beyond(grand, withLimit(lenient, 'largestLoadStepOverStrut', 0.2, 'test'));
    expect(judged.map(({ rule, keys }) => [rule, keys])).toEqual([['load step over a strut', [20, 21]]]);
  });

  it('judges the total load from above always, from below only for a whole compass', () => {
    const heavy = withLimit(lenient, 'highestTotalLoad', 150_000, 'test');
    expect(ofRule(beyond(grand, heavy), 'total load')[0]!.sentence).toMatch(
      /pull 182\.5 kN, over limit 150\.0 kN, test/,
    );
    const light = withLimit(lenient, 'lowestTotalLoad', 200_000, 'test');
    expect(ofRule(beyond(grand, light), 'total load')).toHaveLength(1);
    const part = findings(grand.slice(0, 40), light);
    expect(ofRule(part, 'total load')[0]).toMatchObject({ weight: 'for information' });
    expect(ofRule(part, 'total load')[0]!.sentence).toContain('The 40 notes that can be computed');
  });
});
