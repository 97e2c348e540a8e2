import { describe, expect, it } from 'vitest';
import { noMoreThanFound, typedLoad, typedPercent, typedRatio, withPartLoad } from './plan-limits.ts';

describe('a limit as it is typed', () => {
  it.each([
    ['165', 165_000],
    ['160,5 kN', 160_500],
    ['', 'none'],
    ['0', undefined],
    ['heavy', undefined],
  ])('reads a load typed as %j', (text, load) => {
    expect(typedLoad(text)).toBe(load);
  });

  it.each([
    ['65', 0.65],
    ['62,5 %', 0.625],
    ['0', undefined],
    ['100', undefined],
    ['', undefined],
    ['much', undefined],
  ])('reads a percentage typed as %j', (text, share) => {
    expect(typedPercent(text)).toBe(share);
  });

  it('reads a ratio from 1, with either decimal mark', () => {
    expect(typedRatio('4,5')).toBe(4.5);
    expect(typedRatio('1')).toBe(1);
    for (const none of ['', '0.9', 'thick']) expect(typedRatio(none)).toBeUndefined();
  });
});

describe('loads of single bridges and sections', () => {
  const bass = { of: 'bridge', name: 'bass' } as const;

  it('are set, set anew and taken away one by one', () => {
    const once = withPartLoad([], bass, 36_000);
    const both = withPartLoad(once, { of: 'section', name: 'bass' }, 30_000);
    expect(withPartLoad(both, bass, 35_000)).toEqual([
      { of: 'section', name: 'bass', highest_n: 30_000 },
      { ...bass, highest_n: 35_000 },
    ]);
    expect(withPartLoad(both, bass, undefined)).toEqual([{ of: 'section', name: 'bass', highest_n: 30_000 }]);
  });

  it('are no more than was found for every bridge at once, rounded up so that what was found keeps them', () => {
    const found = [
      { name: 'bass', load: 35_871.2 },
      { name: 'long', load: 131_860 },
    ];
    expect(noMoreThanFound(withPartLoad([], bass, 1), 'bridge', found)).toEqual([
      { ...bass, highest_n: 35_880 },
      { of: 'bridge', name: 'long', highest_n: 131_860 },
    ]);
  });
});
