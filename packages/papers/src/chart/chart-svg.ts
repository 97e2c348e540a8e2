import type { Chart, ChartSeries } from '../page-tree.ts';
import { placeOnAxis } from './axis.ts';

/*
 * A chart as SVG, for paper: black on white, thin grid, sections as faint bands with their names, each series told by
 * the shape of its marks. All lengths here are points (1/72 in).
 */

const ink = '#1a1a1a';
/** As dark as on the rest of a page, so that a photocopy still has it. */
const quiet = '#595959';
const grid = '#d4d4d4';
const band = '#f1f1f1';
const barFill = '#c4c4c4';
const room = { left: 46, right: 8, top: 26, bottom: 34 };
const textSize = 7.5;
const radius = 1.6;

/** The chart as an SVG text of this size, set in `fontFamily`. */
export function chartSvg(
  chart: Chart,
  { width, height, fontFamily }: { width: number; height: number; fontFamily: string },
): string {
  const plotWidth = width - room.left - room.right;
  const plotHeight = height - room.top - room.bottom;
  const xOf = (value: number) => room.left + placeOnAxis(chart.x, value) * plotWidth;
  const yOf = (value: number) => room.top + (1 - placeOnAxis(chart.y, value)) * plotHeight;
  const bottom = room.top + plotHeight;
  const text = (x: number, y: number, words: string, attributes: string) =>
    `<text x="${at(x)}" y="${at(y)}" font-family="${fontFamily}" font-size="${textSize}" ${attributes}>${escaped(words)}</text>`;

  const parts: string[] = [];
  chart.bands.forEach(({ from, to, name }, index) => {
    const left = xOf(from - 0.5);
    const right = xOf(to + 0.5);
    if (index % 2 === 0) {
      parts.push(
        `<rect x="${at(left)}" y="${at(room.top)}" width="${at(right - left)}" height="${at(plotHeight)}" fill="${band}"/>`,
      );
    }
    parts.push(text((left + right) / 2, room.top - 5, name, `fill="${quiet}" text-anchor="middle"`));
  });
  for (const tick of chart.y.ticks) {
    const y = yOf(tick.at);
    parts.push(line(room.left, y, width - room.right, y, grid, 0.5));
    parts.push(text(room.left - 4, y + textSize * 0.35, tick.text, `fill="${ink}" text-anchor="end"`));
  }
  for (const tick of chart.x.ticks) {
    const x = xOf(tick.at);
    parts.push(line(x, bottom, x, bottom + 3, quiet, 0.5));
    parts.push(text(x, bottom + 11, tick.text, `fill="${ink}" text-anchor="middle"`));
  }
  parts.push(line(room.left, bottom, width - room.right, bottom, ink, 0.8));
  parts.push(line(room.left, room.top, room.left, bottom, ink, 0.8));
  parts.push(text(4, room.top - 16, chart.y.name, `fill="${ink}"`));
  for (const series of chart.series) {
    if (series.isJoined === true && series.points.length > 1) {
      const corners = series.points.map(([x, y]) => `${at(xOf(x))},${at(yOf(y))}`).join(' ');
      parts.push(`<polyline points="${corners}" fill="none" stroke="${quiet}" stroke-width="0.6"/>`);
    }
    for (const [x, y] of series.points) {
      parts.push(
        series.mark === 'bar'
          ? bar(xOf(x - (series.barWidth ?? 1) / 2), xOf(x + (series.barWidth ?? 1) / 2), yOf(y), bottom)
          : mark(series.mark, xOf(x), yOf(y)),
      );
    }
  }
  parts.push(...key(chart, text, bottom + 25));
  parts.push(text(width - room.right, bottom + 25, chart.x.name, `fill="${ink}" text-anchor="end"`));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${parts.join('')}</svg>`;
}

function key(
  { series }: Chart,
  text: (x: number, y: number, words: string, attributes: string) => string,
  y: number,
): string[] {
  const parts: string[] = [];
  let x = room.left;
  for (const { name, mark: shape } of series) {
    parts.push(mark(shape, x + radius, y - textSize * 0.35), text(x + 8, y, name, `fill="${ink}"`));
    // About half the type size per letter; names are short and there are few of them.
    x += 8 + name.length * textSize * 0.55 + 14;
  }
  return parts;
}

function mark(shape: ChartSeries['mark'], x: number, y: number): string {
  switch (shape) {
    case 'dot':
      return `<circle cx="${at(x)}" cy="${at(y)}" r="${radius}" fill="${ink}"/>`;
    case 'ring':
      return `<circle cx="${at(x)}" cy="${at(y)}" r="${radius}" fill="none" stroke="${ink}" stroke-width="0.7"/>`;
    case 'square':
      return `<rect x="${at(x - radius)}" y="${at(y - radius)}" width="${2 * radius}" height="${2 * radius}" fill="none" stroke="${ink}" stroke-width="0.7"/>`;
    case 'bar':
      return bar(x - radius, x + radius, y - radius, y + radius);
    case 'cross':
      return (
        line(x - radius, y - radius, x + radius, y + radius, ink, 0.7) +
        line(x - radius, y + radius, x + radius, y - radius, ink, 0.7)
      );
  }
}

function bar(left: number, right: number, top: number, foot: number): string {
  return `<rect x="${at(left)}" y="${at(top)}" width="${at(right - left)}" height="${at(foot - top)}" fill="${barFill}" stroke="${ink}" stroke-width="0.7"/>`;
}

function line(x1: number, y1: number, x2: number, y2: number, colour: string, weight: number): string {
  return `<line x1="${at(x1)}" y1="${at(y1)}" x2="${at(x2)}" y2="${at(y2)}" stroke="${colour}" stroke-width="${weight}"/>`;
}

const at = (value: number): string => String(Math.round(value * 100) / 100);

const escaped = (words: string): string => words.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);
