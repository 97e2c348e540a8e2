import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keptSize, longestSide_px } from './photo-encoding.ts';

describe('keptSize()', () => {
  test('leaves a picture that is small enough as it is', () => {
    expect(keptSize({ width: 2560, height: 10 })).toEqual({ width: 2560, height: 10 });
  });

  test('is never longer than the limit, never nothing, and keeps the shape to a pixel', () => {
    const side = fc.integer({ min: 1, max: 20_000 });
    fc.assert(
      fc.property(side, side, (width, height) => {
        const kept = keptSize({ width, height });
        expect(Math.max(kept.width, kept.height)).toBeLessThanOrEqual(longestSide_px);
        expect(Math.min(kept.width, kept.height)).toBeGreaterThanOrEqual(1);
        const scale = Math.min(1, longestSide_px / Math.max(width, height));
        expect(Math.abs(kept.width - width * scale)).toBeLessThanOrEqual(1);
        expect(Math.abs(kept.height - height * scale)).toBeLessThanOrEqual(1);
      }),
    );
  });
});
