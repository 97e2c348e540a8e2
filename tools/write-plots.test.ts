import { describe, expect, it } from 'vitest';
import { svgOf } from './plots/plot.ts';
import { fixed, percent, scientific, signed } from './plots/topic.ts';
import { currentText, explanationFiles, withTables } from './write-plots.ts';

describe('the plots and tables of docs/explanation', () => {
  const files = [...explanationFiles()];

  it.each(files)(
    '%s is what the code gives now (else: node --import tsx tools/write-plots.ts)',
    (file, text) => {
      const current = currentText(file);
      expect(current).toBeDefined();
      if (!file.endsWith('.svg')) {
        expect(current).toBe(text);
        return;
      }
      // Coordinates are rounded to a tenth; another version of Node may round one of them the other way.
      const number = /-?\d+(\.\d+)?/g;
      expect(current!.replace(number, '#')).toBe(text.replace(number, '#'));
      const [now, then] = [text.match(number)!.map(Number), current!.match(number)!.map(Number)];
      now.forEach((value, index) => {
        expect(Math.abs(value - then[index]!)).toBeLessThanOrEqual(0.11);
      });
    },
  );

  it('stay on the sheet: no line leaves its axes', () => {
    for (const [file, text] of files.filter(([name]) => name.endsWith('.svg'))) {
      for (const [, path] of text.matchAll(/<path class="line c\d"[^>]* d="(M[^"h]+)"/g)) {
        for (const [, x, y] of path!.matchAll(/([\d.-]+),([\d.-]+)/g)) {
          expect(Number(x), file).toBeGreaterThanOrEqual(71.9);
          expect(Number(x), file).toBeLessThanOrEqual(700.1);
          expect(Number(y), file).toBeGreaterThanOrEqual(39.9);
          expect(Number(y), file).toBeLessThanOrEqual(344.1);
        }
      }
    }
  });
});

describe('withTables()', () => {
  const table = { name: 'a', header: ['x', 'y'], rows: [['1', '2']] };

  it('fills the place of a table and leaves the rest', () => {
    const page = 'before\n<!-- measured: a -->\nold\n<!-- /measured -->\nafter';
    expect(withTables(page, [table], 'page')).toBe(
      'before\n<!-- measured: a -->\n| x   | y   |\n| --- | --- |\n| 1   | 2   |\n<!-- /measured -->\nafter',
    );
  });

  it('refuses a table without a place and a place without a table', () => {
    expect(() => withTables('nothing', [table], 'page')).toThrow("has no place for 'a'");
    expect(() => withTables('<!-- measured: b -->\n<!-- /measured -->', [], 'page')).toThrow(
      "nothing measures 'b'",
    );
  });
});

describe('svgOf()', () => {
  const plot = {
    title: 'A < B',
    description: 'what it shows',
    x: { label: 'x', domain: [0, 1] },
    y: { label: 'y', domain: [1, 10], kind: 'log' },
    series: [
      {
        label: 'one',
        points: [
          [0, 1],
          [0.5, 0],
          [1, 10],
        ],
      },
    ],
  } as const;

  it('says what it shows to those who cannot see it, escapes text, and follows dark surroundings', () => {
    const svg = svgOf(plot);
    expect(svg).toContain('<title id="title">A &lt; B</title>');
    expect(svg).toContain('<desc id="description">what it shows</desc>');
    expect(svg).toContain('prefers-color-scheme: dark');
  });

  it('breaks the line where a value has no place on the axis', () => {
    expect(svgOf(plot)).toMatch(/d="M72,344ZM700,40Z"/);
  });

  it('refuses more lines than can be told apart', () => {
    const series = Array.from({ length: 7 }, () => plot.series[0]);
    expect(() => svgOf({ ...plot, series })).toThrow('at most 6 lines');
  });
});

describe('numbers on the pages', () => {
  it('have a proper minus, a plus where they are differences, and no minus zero', () => {
    expect(fixed(-1.25, 1)).toBe('−1.3');
    expect(fixed(-0.001, 1)).toBe('0.0');
    expect(signed(0.001, 1)).toBe('0.0');
    expect(signed(2, 1)).toBe('+2.0');
    expect(percent(-0.031)).toBe('−3.1 %');
    expect(scientific(0.000238)).toBe('2.38·10⁻⁴');
  });
});
