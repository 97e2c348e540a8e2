import { english, inches, type Language, metres, micrometres, millimetres } from '@becket/core';
import type { LengthKind } from '../../parts/length-text.ts';
import { type LengthUnit, lengthText, otherUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';

const inSi: Readonly<Record<string, (value: number) => number>> = {
  mm: millimetres,
  in: inches,
  m: metres,
  um: micrometres,
};

/**
 * A typed length in metres; undefined when nothing was typed.
 * Throws: RangeError when it is no number, with `what` in its sentence.
 */
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
  const length = inSi[typed.unit ?? unit]?.(typed.value);
  if (length === undefined || length < 0)
    throw new RangeError(
      say("Cannot keep the {what}: a length of 0 or more is needed, '{found}' was found. Type it again.", {
        what,
        found: text.trim(),
      }),
    );
  return length;
}

/** '3.0 mm (0.118 in)': the unit of the screen first, the other beside it. */
export function bothUnits(
  length_m: number,
  unit: LengthUnit,
  kind: LengthKind,
  language: Language = english,
): string {
  return `${lengthText(length_m, unit, kind, language)} (${lengthText(length_m, otherUnit(unit), kind, language)})`;
}
