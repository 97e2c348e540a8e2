import { describe, expect, it } from 'vitest';
import { COMMON_SHOP_POLICY, withLimit } from './index.ts';

describe('the shop policy', () => {
  it('is plain data: it comes back from JSON as it was', () => {
    expect(JSON.parse(JSON.stringify(COMMON_SHOP_POLICY))).toEqual(COMMON_SHOP_POLICY);
  });

  it('tags every default as common practice', () => {
    for (const limit of Object.values(COMMON_SHOP_POLICY.limits))
      expect(limit.source).toBe('common practice');
    expect(COMMON_SHOP_POLICY.uncertainties.source).toBe('common practice');
    expect(COMMON_SHOP_POLICY.pins.source).toBe('common practice');
  });

  it('changes one limit and leaves the policy it came from alone', () => {
    const own = withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', 0.6, 'our shop');
    expect(own.limits.highestBreakShare).toMatchObject({ value: 0.6, source: 'our shop', unit: '1' });
    expect(COMMON_SHOP_POLICY.limits.highestBreakShare.value).toBe(0.65);
    expect({ ...own.limits, highestBreakShare: 0 }).toEqual({
      ...COMMON_SHOP_POLICY.limits,
      highestBreakShare: 0,
    });
  });

  it('refuses a limit that cannot be one', () => {
    for (const wrong of [0, -1, Number.NaN]) {
      expect(() => withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', wrong, 'x')).toThrow(/must be > 0/);
    }
    expect(() => withLimit(COMMON_SHOP_POLICY, 'notesLookedAtInTenor', 2.5, 'x')).toThrow(
      /whole number from 2/,
    );
    expect(() => withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', 0.6, ' ')).toThrow(SyntaxError);
  });
});
