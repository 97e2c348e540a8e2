import { english } from '@becket/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../page-tree.ts';
import { axisOver, placeOnAxis } from './axis.ts';
import { chartSvg } from './chart-svg.ts';
import { keyAxis } from './key-axis.ts';

const positive = fc.double({ min: 0.01, max: 3000, noNaN: true });

describe('axisOver()', () => {
  it('holds every value between its ends, and every tick too, linear or logarithmic', () => {
    fc.assert(
      fc.property(fc.array(positive, { minLength: 1 }), fc.constantFrom('linear', 'log'), (values, scale) => {
        const axis = axisOver(values, { name: 'length', scale: scale as 'linear' | 'log' }, english)!;
        for (const value of [...values, ...axis.ticks.map(({ at }) => at)]) {
          const place = placeOnAxis(axis, value);
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(1 + 1e-9);
        }
        expect(axis.ticks.length).toBeGreaterThan(0);
      }),
      { seed: 7 },
    );
  });

  it('has ticks at 1, 2 and 5 times powers of ten on a logarithmic axis', () => {
    const axis = axisOver([52, 1700], { name: 'length, mm', scale: 'log' }, english);
    expect(axis?.ticks.map(({ text }) => text)).toEqual(['50', '100', '200', '500', '1000', '2000']);
  });

  it('puts equal ratios at equal distances on a logarithmic axis', () => {
    const axis = axisOver([50, 2000], { name: 'length', scale: 'log' }, english)!;
    const step = placeOnAxis(axis, 200) - placeOnAxis(axis, 100);
    expect(placeOnAxis(axis, 1000) - placeOnAxis(axis, 500)).toBeCloseTo(step, 12);
  });

  it('is nothing where there is nothing to show', () => {
    expect(axisOver([], { name: 'length', scale: 'linear' }, english)).toBeUndefined();
    expect(axisOver([0, Number.NaN], { name: 'length', scale: 'log' }, english)).toBeUndefined();
  });
});

describe('chartSvg()', () => {
  const axis = {
    name: 'key <1 & 2>',
    scale: 'linear',
    from: 0,
    to: 10,
    ticks: [{ at: 5, text: '5' }],
  } as const;
  const chart: Chart = {
    is: 'chart',
    title: 'a chart',
    words: 'in words',
    x: axis,
    y: axis,
    bands: [{ from: 1, to: 4, name: 'bass' }],
    series: [
      {
        name: 'plain',
        mark: 'dot',
        points: [
          [0, 0],
          [5, 5],
          [10, 10],
        ],
      },
      { name: 'core', mark: 'ring', points: [[2, 8]] },
    ],
  };
  const svg = chartSvg(chart, { width: 400, height: 200, fontFamily: 'paper' });
  const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);

  it('draws one mark a point and one a series in the key', () => {
    expect(circles).toHaveLength(4 + 2);
  });

  it('puts the ends of the axes at the corners of the plot and the middle in the middle', () => {
    const [low, middle, high] = circles as [number[], number[], number[]];
    expect(middle[0]).toBeCloseTo((low[0]! + high[0]!) / 2, 1);
    expect(middle[1]).toBeCloseTo((low[1]! + high[1]!) / 2, 1);
    expect(low[1]).toBeGreaterThan(high[1]!);
  });

  it('writes words as words', () => {
    expect(svg).toContain('key &#60;1 &#38; 2&#62;');
    expect(svg).toContain('>bass<');
  });
});

describe('keyAxis()', () => {
  it('ticks its ends and each C between, save one that an end would write over', () => {
    const axis = keyAxis(1, 88, english);
    expect(axis.ticks.map(({ text }) => text)).toEqual([
      '1 A0',
      '16 C2',
      '28 C3',
      '40 C4',
      '52 C5',
      '64 C6',
      '76 C7',
      '88 C8',
    ]);
    expect([axis.from, axis.to]).toEqual([0.5, 88.5]);
    // C3 is the beginning itself.
    expect(keyAxis(28, 51, english).ticks.map(({ at }) => at)).toEqual([28, 40, 51]);
  });
});
