import { english, type Language } from '@becket/core';
import type { PhotoMark, PhotoScale } from '@becket/journal';
import { type LengthUnit, lengthText, otherUnit, uncertaintyText } from '../parts/length-text.ts';

export const markKinds = ['arrow', 'label', 'distance'] as const;
export type MarkKind = (typeof markKinds)[number];

/** A point on a photo, as shares of its width and height from the top left. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A mark that is being drawn: where the hand is, and where it began, once it has. */
export interface Drawing {
  readonly at: Point;
  readonly from: Point | undefined;
}

export const inside = ({ x, y }: Point): Point => ({
  x: Math.min(1, Math.max(0, x)),
  y: Math.min(1, Math.max(0, y)),
});

/** Steps of the cross under the arrow keys, as shares of the photo. */
export const crossSteps = { fine: 0.002, plain: 0.01, coarse: 0.05 } as const;

const directions: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** Where the cross is after an arrow key; undefined for any other key. */
export function movedBy(at: Point, key: string, step: number): Point | undefined {
  const direction = directions[key];
  return direction && inside({ x: at.x + direction.x * step, y: at.y + direction.y * step });
}

/** Shorter than this share of the photo, a stroke was a slip of the finger. */
const shortest = 0.01;

/**
 * The mark that a stroke makes: an arrow to its end, a length from end to end, or a place for a label (whose words are
 * still to come). Undefined for a stroke that is too short to be meant.
 */
export function markOf(kind: MarkKind, from: Point, to: Point): PhotoMark | undefined {
  if (kind === 'label') return { mark: 'label', at: to, text: ' ' };
  const isShort = Math.hypot(to.x - from.x, to.y - from.y) < shortest;
  return isShort ? undefined : { mark: kind, from, to };
}

/** What a mark says, beside the picture and to whoever cannot see it. */
export function markWords(
  mark: PhotoMark,
  index: number,
  { scale, unit }: { scale: PhotoScale | undefined; unit: LengthUnit },
  language: Language = english,
): string {
  const { say } = language;
  switch (mark.mark) {
    case 'arrow':
      return mark.text === undefined ? say('Arrow') : say('Arrow: {text}', { text: mark.text });
    case 'label':
      return say('Label: {text}', { text: mark.text });
    case 'distance': {
      const length = lengthOf(index, scale);
      if (length === undefined)
        return say('Distance: no length yet, since no distance on this photo is known');
      const both = `${lengthText(length.length_m, unit, 'length', language)} = ${lengthText(length.length_m, otherUnit(unit), 'length', language)}`;
      return length.origin === 'measured'
        ? say('Distance: {both}, measured on the piano; the scale bar', { both })
        : say('Distance: {both} {uncertainty}, inferred from the scale bar', {
            both,
            uncertainty: uncertaintyText(length.standardUncertainty_m, unit, 'length', language),
          });
    }
  }
}

/** The few words that stand on the picture. */
export function shortWords(
  mark: PhotoMark,
  index: number,
  { scale, unit }: { scale: PhotoScale | undefined; unit: LengthUnit },
  language: Language = english,
): string {
  if (mark.mark !== 'distance') return mark.text ?? '';
  const length = lengthOf(index, scale);
  if (length === undefined) return '?';
  const words = lengthText(length.length_m, unit, 'length', language);
  return length.origin === 'measured' ? words : `≈ ${words}`;
}

function lengthOf(index: number, scale: PhotoScale | undefined) {
  return scale?.distances.find(({ mark }) => mark === index);
}
