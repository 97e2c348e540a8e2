import type { PhotoPoint, PrintedMark } from '../page-tree.ts';

/*
 * Marks on a photo as SVG, for paper: dark lines in a light border, seen on any picture and after a photocopier; kinds
 * are told by shape. All lengths are points (1/72 in).
 */

const ink = '#111';
const light = '#fff';
const textSize = 7.5;
const pad = 2;

interface Frame {
  readonly width: number;
  readonly height: number;
  readonly fontFamily: string;
}

/** The marks as an SVG text of this size, to be laid over the picture. */
export function photoMarksSvg(marks: readonly PrintedMark[], frame: Frame): string {
  const { width, height } = frame;
  // Words last: no line of another mark runs through them.
  const parts = [
    ...marks.map((mark) => shapeOf(mark, frame)),
    ...marks.map((mark) => (mark.words === '' ? '' : wordsAt(mark.words, wordsPlace(mark, frame), frame))),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${parts.join('')}</svg>`;
}

const placed = ({ x, y }: PhotoPoint, { width, height }: Frame): PhotoPoint => ({
  x: x * width,
  y: y * height,
});

function shapeOf(mark: PrintedMark, frame: Frame): string {
  if (mark.mark === 'label') {
    const { x, y } = placed(mark.at, frame);
    return (
      `<circle cx="${at(x)}" cy="${at(y)}" r="4" fill="${light}"/>` +
      `<circle cx="${at(x)}" cy="${at(y)}" r="2.6" fill="${ink}"/>`
    );
  }
  const from = placed(mark.from, frame);
  const to = placed(mark.to, frame);
  const direction = Math.atan2(to.y - from.y, to.x - from.x);
  const off = (point: PhotoPoint, angle: number, length: number): PhotoPoint => ({
    x: point.x + Math.cos(direction + angle) * length,
    y: point.y + Math.sin(direction + angle) * length,
  });
  const line = (a: PhotoPoint, b: PhotoPoint) => `M ${at(a.x)} ${at(a.y)} L ${at(b.x)} ${at(b.y)}`;
  const across = (end: PhotoPoint) => line(off(end, Math.PI / 2, 5), off(end, -Math.PI / 2, 5));
  const path = [
    line(from, to),
    ...(mark.mark === 'arrow'
      ? [line(off(to, Math.PI - 0.45, 8), to), line(off(to, Math.PI + 0.45, 8), to)]
      : [across(from), across(to)]),
  ].join(' ');
  const weight = mark.mark === 'scale bar' ? 2 : 1.2;
  const stroke = (colour: string, width: number) =>
    `<path d="${path}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-linecap="round"/>`;
  return stroke(light, weight + 2) + stroke(ink, weight);
}

/** Where the words of a mark stand: above a dot, at the tail of an arrow, over the middle of a length. */
function wordsPlace(mark: PrintedMark, frame: Frame): PhotoPoint {
  if (mark.mark === 'label') {
    const { x, y } = placed(mark.at, frame);
    return { x, y: y - 7 };
  }
  const from = placed(mark.from, frame);
  const to = placed(mark.to, frame);
  if (mark.mark === 'arrow') return { x: from.x, y: from.y + (to.y >= from.y ? -4 : textSize + 4) };
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 - 6 };
}

/** Words on a light ground, kept inside the picture. */
function wordsAt(words: string, { x, y }: PhotoPoint, { width, height, fontFamily }: Frame): string {
  const shown = fitting(words, width - 2 * pad);
  const boxWidth = Math.min(width, widthOf(shown) + 2 * pad);
  const left = Math.min(Math.max(0, x - boxWidth / 2), width - boxWidth);
  const base = Math.min(Math.max(textSize + pad, y), height - pad);
  return (
    `<rect x="${at(left)}" y="${at(base - textSize)}" width="${at(boxWidth)}" height="${textSize + pad + 0.5}" fill="${light}" fill-opacity="0.85"/>` +
    `<text x="${at(left + boxWidth / 2)}" y="${at(base)}" font-family="${fontFamily}" font-size="${textSize}" fill="${ink}" text-anchor="middle">${escaped(shown)}</text>`
  );
}

/** At most the width of these words [pt], by the widest letters of each kind in the condensed face. */
function widthOf(words: string): number {
  let width = 0;
  for (const letter of words)
    width += /[WM@—…]/.test(letter) ? 0.95 : /[A-Z<>&=≈%+]/.test(letter) ? 0.76 : 0.6;
  return width * textSize;
}

/** The words as far as they fit, with a sign where they are cut. */
function fitting(words: string, most: number): string {
  if (widthOf(words) <= most) return words;
  const letters = [...words];
  while (letters.length > 0 && widthOf(`${letters.join('')}…`) > most) letters.pop();
  return `${letters.join('')}…`;
}

const at = (value: number): string => String(Math.round(value * 100) / 100);

const escaped = (words: string): string => words.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);
