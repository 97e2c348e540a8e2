import { type Language, type LengthUnit, message } from '@becket/core';
import { lengthInWords } from '../figures/lengths.ts';
import type { StringingString, StringingWire } from './stringing-figures.ts';

/** 'C4 / 2': note, and string from the bass side. */
export const stringWords = ({ note, string }: Pick<StringingString, 'note' | 'string'>): string =>
  `${note} / ${string}`;

/** How a wire is made up, in the words of the stringing papers. */
export const joinedWords = {
  looped: message('[of a wire] looped'),
  tied: message('[of a wire] tied'),
} as const;

/** The same where a column has room for one word. */
export const joinedInColumn = {
  looped: message('[of a wire, in a narrow column] looped'),
  tied: message('[of a wire, in a narrow column] tied'),
} as const;

/** '1.000 mm (0.0394 in): metric 1.000' */
export function wireWords({ diameter, size }: StringingWire, unit: LengthUnit, language: Language): string {
  const words = lengthInWords(diameter, 'diameter', unit, language);
  return size === '' ? words : `${words}: ${size}`;
}
