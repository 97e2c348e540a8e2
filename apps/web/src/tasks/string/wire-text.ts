import { inInches, inMillimetres, type Language, message } from '@becket/core';
import type { WireToString } from '@becket/tasks';
import { type LengthUnit, lengthText, otherUnit } from '../../parts/length-text.ts';

/** 'C4 / 2 – C4 / 3': note, and string from the bass side, each of them on one line. */
export const stringsText = ({ strings }: Pick<WireToString, 'strings'>): string =>
  strings.map(({ note, string }) => `${note}\u00a0/\u00a0${string}`).join(' – ');

/** '1.041 mm (0.0410 in)', then the listed size. */
export function sizeText({ diameter, size }: WireToString, unit: LengthUnit, language: Language): string {
  if (diameter === undefined) return language.say('a wound string, from the set');
  const words = `${lengthText(diameter, unit, 'diameter', language)} (${lengthText(diameter, otherUnit(unit), 'diameter', language)})`;
  return size === '' ? words : `${words}: ${size}`;
}

/** '1203 mm (47.4 in)', since nobody cuts wire to less; undefined for a wound string. */
export function cutText({ cut }: WireToString, unit: LengthUnit, { fixed }: Language): string | undefined {
  if (cut === undefined) return undefined;
  const metric = `${fixed(inMillimetres(cut.total), 0)} mm`;
  const imperial = `${fixed(inInches(cut.total), 1)} in`;
  return unit === 'mm' ? `${metric} (${imperial})` : `${imperial} (${metric})`;
}

/** '7.00 mm', or '7.00 and 7.25 mm'; undefined where the pins are not chosen. */
export function pinsText({ pins }: WireToString, language: Language): string | undefined {
  const sizes = [...new Set(pins.filter((pin) => pin !== undefined))];
  if (sizes.length === 0) return undefined;
  return `${language.list(sizes.map((size) => language.fixed(inMillimetres(size), 2)))} mm`;
}

export const joinedWords = {
  looped: message('one wire round the hitch pin'),
  tied: message('tied, with its own loop'),
  wound: message('wound'),
} as const;

/** A mark that reads without colour, and what it says. */
export const stateMarks = {
  on: { mark: '●', words: message('[a wire is] on') },
  'to do': { mark: '○', words: message('[a wire is] to do') },
  'in part': { mark: '◐', words: message('[a wire is] on in part') },
} as const;
