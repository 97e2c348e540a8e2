import type { Content } from 'pdfmake/interfaces';
import type { Drawing } from '../page-tree.ts';
import { ink, quiet } from './look.ts';

const pointsPerMillimetre = 72 / 25.4;

/**
 * A drawing set at true scale. Everything is written in points already, so that nothing between here and the paper scales it:
 * a printer that does shows it on the rulers that such a drawing carries.
 */
export function drawingContent(drawing: Drawing): Content {
  const [width, height] = [drawing.width_mm, drawing.height_mm].map((length) => length * pointsPerMillimetre);
  return {
    stack: [{ svg: drawingSvg(drawing), font: 'paper', width, height }],
    unbreakable: true,
  } as Content;
}

/** The drawing as an SVG text, one unit a point. */
export function drawingSvg({ width_mm, height_mm, lines, texts }: Drawing): string {
  const drawn = lines.map(({ from_mm, to_mm, weight_mm, tone, dashed }) => {
    const [x1, y1] = from_mm.map(points);
    const [x2, y2] = to_mm.map(points);
    const colour = tone === 'quiet' ? quiet : ink;
    const dash = dashed === true ? ' stroke-dasharray="3 2"' : '';
    return `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="${colour}" stroke-width="${points(weight_mm)}"${dash}/>`;
  });
  const written = texts.map(({ at_mm, text, size_mm, anchor, tone }) => {
    const [x, y] = at_mm.map(points);
    const placed = anchor === undefined ? '' : ` text-anchor="${anchor}"`;
    return `<text x="${x}" y="${y}" font-family="paper" font-size="${points(size_mm)}" fill="${tone === 'quiet' ? quiet : ink}"${placed}>${escaped(text)}</text>`;
  });
  const [width, height] = [width_mm, height_mm].map(points);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${[...drawn, ...written].join('')}</svg>`;
}

/** Four digits: a ten-thousandth of a point is 0.04 µm. */
const points = (millimetres: number): string => (millimetres * pointsPerMillimetre).toFixed(4);

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
