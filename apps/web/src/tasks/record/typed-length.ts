import {
  english,
  inches,
  inMillimetres,
  type Language,
  metres,
  micrometres,
  millimetres,
} from '@becket/core';
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

/**
 * A typed length above 0 and no longer than can be; undefined when nothing was typed.
 * Throws: RangeError when it is no number, or outside that, with `what` in its sentence.
 */
export function typedLengthUpTo(
  most_m: number,
  text: string,
  unit: LengthUnit,
  what: string,
  language: Language = english,
): number | undefined {
  const length = typedLength(text, unit, what, language);
  if (length === undefined || (length > 0 && length <= most_m)) return length;
  throw new RangeError(
    language.say(
      "Cannot keep the {what}: a length above 0 and up to {most} is needed, '{found}' was found. Check the unit and the decimal mark.",
      { what, most: bothUnits(most_m, unit, 'length', language), found: text.trim() },
    ),
  );
}

/**
 * A length as it goes back into a field, with its unit: as it was told where that is all of it, and with every digit
 * where it is not, so that whoever changes another field leaves this one as it was.
 */
export function lengthToType(length_m: number, unit: LengthUnit, language: Language = english): string {
  const isWhole = (text: string) => {
    const back = typedLength(text, unit, '', language);
    return back !== undefined && Math.abs(back - length_m) < 1e-9;
  };
  const told = [unit, otherUnit(unit)]
    .map((one) => lengthText(length_m, one, 'thin', language))
    .find(isWhole);
  return told ?? `${language.plain(Number(inMillimetres(metres(length_m)).toPrecision(9)))} mm`;
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
