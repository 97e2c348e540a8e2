import {
  english,
  inches,
  inInches,
  inMillimetres,
  type Language,
  metres,
  millimetres,
  noteName,
  parseNote,
} from '@becket/core';
import type { Job } from '@becket/journal';
import type { LengthUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';

/** A length as it is typed; a number alone is in the unit of the screen. Undefined when nothing was typed. */
export function typedLength(
  text: string,
  unit: LengthUnit,
  what: string,
  language: Language = english,
): number | undefined {
  const { say } = language;
  const typed = readTypedNumber(text, language);
  if (typed.is === 'empty') return undefined;
  if (typed.is === 'problem') throw new RangeError(typed.sentence);
  const value =
    typed.unit === 'm'
      ? metres(typed.value)
      : typed.unit === 'um'
        ? millimetres(typed.value / 1000)
        : (typed.unit ?? unit) === 'in'
          ? inches(typed.value)
          : millimetres(typed.value);
  if (!(value > 0))
    throw new RangeError(
      say("Cannot take {what}: a length above 0 is needed, '{found}' was found. Type it again.", {
        what,
        found: text.trim(),
      }),
    );
  return value;
}

/**
 * Sizes typed in a row, '2/0 0.282, 3/0 0.286' or '2/0 0,282; 3/0 0,286': between two stands a semicolon, or a comma that is no
 * decimal mark, since a blank, the end or the name of the next size follows it.
 */
export const typedSizes = (text: string): string[] =>
  text
    .split(/;|,(?=\s|$|[^\s,;]+\s)/)
    .map((one) => one.trim())
    .filter((one) => one !== '');

/** A length as a form starts with it. */
export const lengthField = (
  length_m: number | undefined,
  unit: LengthUnit,
  { plain }: Language = english,
): string =>
  length_m === undefined
    ? ''
    : unit === 'mm'
      ? `${plain(Number(inMillimetres(metres(length_m)).toFixed(3)))} mm`
      : `${plain(Number(inInches(metres(length_m)).toFixed(4)))} in`;

export function requiredNote(text: string, what: string, language: Language = english): number {
  const { say } = language;
  if (text.trim() === '')
    throw new RangeError(
      say('Cannot keep {what}: its note is needed, nothing was found. Type it, such as C4.', { what }),
    );
  return parseNote(text.trim(), undefined, language);
}

export function stringNumber(text: string, { say }: Language = english): 1 | 2 | 3 {
  const number = Number(text);
  if (number === 1 || number === 2 || number === 3) return number;
  throw new RangeError(
    say("Cannot keep this: a string 1, 2 or 3 is needed, '{found}' was found. Type it again.", {
      found: text.trim(),
    }),
  );
}

/** The note some notes on, or the same one at the end of the compass. */
export function notesOn(job: Job, note: string, every: number, language: Language = english): string {
  const last = job.piano?.lastKey ?? 88;
  const key = parseNote(note.trim(), undefined, language);
  return noteName(Math.min(last, key + every));
}
