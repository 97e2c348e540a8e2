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
import type { ReadingToRecord, TestPinToRecord } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';
import { readTypedTorque, type TorqueUnit } from './torque-state.ts';

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

/** A pin measured with the micrometer. */
export function pinDiameterOf(
  { note, string, value }: { note: string; string: string; value: string },
  unit: LengthUnit,
  reason: string,
  language: Language = english,
): ReadingToRecord {
  const { say } = language;
  const typed = readTypedNumber(value, language);
  if (typed.is !== 'number')
    throw new RangeError(
      typed.is === 'problem'
        ? typed.sentence
        : say(
            'Cannot keep this pin: its diameter is needed, nothing was found. Type what the micrometer shows.',
          ),
    );
  return {
    quantity: 'pin-diameter',
    place: { key: requiredNote(note, say('this pin'), language), string: stringNumber(string, language) },
    value: typed.value,
    unit: (typed.unit ?? unit) as ReadingToRecord['unit'],
    ...(reason.trim() === '' ? {} : { reason: reason.trim() }),
  };
}

/** A test pin as the form gives it. */
export function testPinOf(
  form: {
    note: string;
    string: string;
    diameter: string;
    length: string;
    torque: string;
    unit: string;
    feel: string;
    remark: string;
  },
  unit: LengthUnit,
  language: Language = english,
): TestPinToRecord {
  const { say } = language;
  const diameter = typedLength(form.diameter, unit, say('the pin’s diameter'), language);
  if (diameter === undefined)
    throw new RangeError(
      say('Cannot keep this test pin: its diameter is needed, nothing was found. Type it.'),
    );
  const torque = readTypedTorque(form.torque, language);
  const read = torque.unit ?? (form.unit as TorqueUnit);
  if (read === 'kgf·cm')
    throw new RangeError(
      say(
        "Cannot keep this test pin: a torque in in·lbf or N·m is needed, '{found}' was found. Read it in one of those.",
        { found: form.torque.trim() },
      ),
    );
  const length = typedLength(form.length, unit, say('the pin’s length'), language);
  return {
    key: requiredNote(form.note, say('this test pin'), language),
    string: stringNumber(form.string, language),
    pinDiameter_m: diameter,
    ...(length === undefined ? {} : { pinLength_m: length }),
    torque: { value: torque.value, unit: read },
    ...(form.feel === '' ? {} : { feel: form.feel as NonNullable<TestPinToRecord['feel']> }),
    ...(form.remark.trim() === '' ? {} : { note: form.remark.trim() }),
  };
}

/** The note some notes on, or the same one at the end of the compass. */
export function notesOn(job: Job, note: string, every: number, language: Language = english): string {
  const last = job.piano?.lastKey ?? 88;
  const key = parseNote(note.trim(), undefined, language);
  return noteName(Math.min(last, key + every));
}
