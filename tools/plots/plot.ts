import { scaleLinear, scaleLog } from 'd3-scale';
import { area, line } from 'd3-shape';

/** One axis: what it shows, from where to where. */
export interface Axis {
  readonly label: string;
  readonly domain: readonly [low: number, high: number];
  readonly kind?: 'linear' | 'log';
  /** Where ticks stand; chosen from the domain unless given. */
  readonly ticks?: readonly number[];
  readonly tickText?: (value: number) => string;
}

export type Point = readonly [x: number, y: number];

/** A line of the plot. Lines differ by dash as well as by colour, so that they are told apart in grey too. */
export interface Series {
  readonly label: string;
  readonly points: readonly Point[];
  /** Dots at the points instead of a line through them. */
  readonly dots?: boolean;
  /** A shaded band around the line: half its height at each point. */
  readonly halfBand?: readonly number[];
}

export interface Plot {
  readonly title: string;
  /** For those who do not see it: what the plot shows, in a sentence. */
  readonly description: string;
  readonly x: Axis;
  readonly y: Axis;
  /** At most six. */
  readonly series: readonly Series[];
}

const width = 720;
const height = 400;
const margin = { left: 72, right: 20, top: 40, bottom: 56 };
const legendRow = 20;
const dashes = ['', '8 4', '2 4', '10 4 2 4', '14 5', '4 3'];

/** Colours on light and on dark ground; each pair has a contrast of at least 3 : 1 with its ground (WCAG 2.2, 1.4.11). */
const style = `
  text { font: 13px system-ui, sans-serif; fill: #1b1b1b; }
  .title { font-weight: 600; font-size: 15px; }
  .ground { fill: #ffffff; }
  .grid { stroke: #1b1b1b; stroke-opacity: 0.14; }
  .axis { stroke: #1b1b1b; stroke-opacity: 0.7; }
  .line { fill: none; stroke-width: 2; stroke-linejoin: round; }
  .band { stroke: none; fill-opacity: 0.2; }
  .c0 { stroke: #0b5ea8; } .f0 { fill: #0b5ea8; }
  .c1 { stroke: #b1470a; } .f1 { fill: #b1470a; }
  .c2 { stroke: #1c7a4c; } .f2 { fill: #1c7a4c; }
  .c3 { stroke: #8a3a8f; } .f3 { fill: #8a3a8f; }
  .c4 { stroke: #5d5d5d; } .f4 { fill: #5d5d5d; }
  .c5 { stroke: #8a6a00; } .f5 { fill: #8a6a00; }
  @media (prefers-color-scheme: dark) {
    text { fill: #ececec; }
    .ground { fill: #16181b; }
    .grid, .axis { stroke: #ececec; }
    .c0 { stroke: #6db7ff; } .f0 { fill: #6db7ff; }
    .c1 { stroke: #ff9a5c; } .f1 { fill: #ff9a5c; }
    .c2 { stroke: #5fd39a; } .f2 { fill: #5fd39a; }
    .c3 { stroke: #dd9be2; } .f3 { fill: #dd9be2; }
    .c4 { stroke: #b9b9b9; } .f4 { fill: #b9b9b9; }
    .c5 { stroke: #e3c04b; } .f5 { fill: #e3c04b; }
  }`;

/** Draws a plot as a self-contained SVG that reads on light and on dark ground. */
export function svgOf(plot: Plot): string {
  if (plot.series.length > dashes.length) {
    throw new RangeError(`Cannot draw '${plot.title}' as at most ${dashes.length} lines can be told apart`);
  }
  const x = scaleOf(plot.x, [margin.left, width - margin.right]);
  const y = scaleOf(plot.y, [height - margin.bottom, margin.top]);
  const columns = plot.series.some(({ label }) => label.length > 34) ? 1 : 2;
  const legendRows = Math.ceil(plot.series.length / columns);
  const fullHeight = height + legendRows * legendRow + 8;

  const parts: string[] = [];
  for (const tick of ticksOf(plot.x, x)) {
    const at = place(x(tick));
    parts.push(
      `<line class="grid" x1="${at}" x2="${at}" y1="${margin.top}" y2="${height - margin.bottom}"/>`,
    );
    parts.push(
      `<text x="${at}" y="${height - margin.bottom + 18}" text-anchor="middle">${textOf(plot.x, tick)}</text>`,
    );
  }
  for (const tick of ticksOf(plot.y, y)) {
    const at = place(y(tick));
    parts.push(`<line class="grid" x1="${margin.left}" x2="${width - margin.right}" y1="${at}" y2="${at}"/>`);
    parts.push(
      `<text x="${margin.left - 8}" y="${place(y(tick) + 4.5)}" text-anchor="end">${textOf(plot.y, tick)}</text>`,
    );
  }
  parts.push(
    `<path class="axis" fill="none" d="M${margin.left},${margin.top}V${height - margin.bottom}H${width - margin.right}"/>`,
  );
  parts.push(
    `<text x="${(margin.left + width - margin.right) / 2}" y="${height - 14}" text-anchor="middle">${escaped(plot.x.label)}</text>`,
  );
  const middle = (margin.top + height - margin.bottom) / 2;
  parts.push(
    `<text transform="translate(18 ${middle}) rotate(-90)" text-anchor="middle">${escaped(plot.y.label)}</text>`,
  );

  plot.series.forEach((series, index) => {
    const isInside = ([a, b]: Point) => Number.isFinite(x(a)) && Number.isFinite(y(b));
    if (series.halfBand !== undefined) {
      const band = area<number>()
        .x((i) => x(series.points[i]![0]))
        .y0((i) => y(series.points[i]![1] - series.halfBand![i]!))
        .y1((i) => y(series.points[i]![1] + series.halfBand![i]!))
        .digits(1);
      parts.push(`<path class="band f${index}" d="${band(series.points.map((_, i) => i))}"/>`);
    }
    if (series.dots === true) {
      for (const [a, b] of series.points.filter(isInside)) {
        parts.push(`<circle class="f${index}" cx="${place(x(a))}" cy="${place(y(b))}" r="3"/>`);
      }
    } else {
      const path = line<Point>()
        .defined(isInside)
        .x(([a]) => x(a))
        .y(([, b]) => y(b))
        .digits(1);
      parts.push(`<path class="line c${index}"${dash(index)} d="${path(series.points as Point[])}"/>`);
    }
    const column = index % columns;
    const row = Math.floor(index / columns);
    const left = margin.left + column * ((width - margin.left - margin.right) / columns);
    const top = height + row * legendRow;
    parts.push(
      series.dots === true
        ? `<circle class="f${index}" cx="${left + 16}" cy="${top}" r="3"/>`
        : `<path class="line c${index}"${dash(index)} d="M${left},${top}h32"/>`,
    );
    parts.push(`<text x="${left + 40}" y="${top + 4.5}">${escaped(series.label)}</text>`);
  });

  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${fullHeight}" role="img" aria-labelledby="title description">
<title id="title">${escaped(plot.title)}</title>
<desc id="description">${escaped(plot.description)}</desc>
<style>${style}
</style>
<rect class="ground" width="${width}" height="${fullHeight}"/>
<text class="title" x="${margin.left}" y="22">${escaped(plot.title)}</text>
${parts.join('\n')}
</svg>
`;
}

const dash = (index: number) => (dashes[index] === '' ? '' : ` stroke-dasharray="${dashes[index]}"`);

function scaleOf(axis: Axis, range: [number, number]) {
  const scale = axis.kind === 'log' ? scaleLog() : scaleLinear();
  return scale.domain([...axis.domain]).range(range);
}

function ticksOf(axis: Axis, scale: ReturnType<typeof scaleOf>): readonly number[] {
  return axis.ticks ?? scale.ticks(axis.kind === 'log' ? 5 : 8);
}

const textOf = (axis: Axis, value: number) =>
  escaped(axis.tickText?.(value) ?? String(value).replace('-', '−'));

/** A tenth of a unit is finer than any screen shows, and short. */
const place = (value: number) => String(Math.round(value * 10) / 10);

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
