import { english, inMetres, type Language, millimetres } from '@becket/core';
import type { Job, ReadUnit } from '@becket/journal';
import type { ReadingToRecord } from '@becket/tasks';
import { readTypedNumber } from '../../parts/typed-number.ts';

/** What is measured on new strings here; torque has a place of its own, with its directions. */
export const strungQuantities = [
  'wire-diameter',
  'core-diameter',
  'over-all-diameter',
  'speaking-length',
  'bearing-rise',
  'bearing-angle',
  'pitch-offset',
] as const;
export type StrungQuantity = (typeof strungQuantities)[number];

interface TypedReading {
  readonly quantity: StrungQuantity;
  readonly key: number;
  readonly string: 1 | 2 | 3 | undefined;
  readonly value: string;
  /** Of the field; a length may be typed with another. */
  readonly unit: ReadUnit;
  /** As typed; undefined where the quantity has none. */
  readonly span_mm: string | undefined;
  readonly isLoaded: boolean;
}

/** The reading that was typed. Throws: RangeError with the sentence to show when a number is none. */
export function strungReadingOf(
  { quantity, key, string, value, unit, span_mm, isLoaded }: TypedReading,
  language: Language = english,
): ReadingToRecord {
  const { say } = language;
  const typed = readTypedNumber(value.replaceAll('−', '-'), language);
  if (typed.is === 'problem') throw new RangeError(typed.sentence);
  if (typed.is === 'empty')
    throw new RangeError(
      say('Cannot keep this: a value in {unit} is needed, none was found. Type it.', { unit }),
    );
  const span = span_mm === undefined ? undefined : readTypedNumber(span_mm, language);
  if (span !== undefined && (span.is !== 'number' || span.unit !== undefined))
    throw new RangeError(
      say(
        'Cannot keep this: the span it was read over is needed in mm, ‘{found}’ was found. Type it again.',
        {
          found: span_mm ?? '',
        },
      ),
    );
  return {
    quantity,
    place: string === undefined ? { key } : { key, string },
    value: typed.value,
    unit: (typed.unit as ReadUnit | undefined) ?? unit,
    stage: 'as strung',
    ...(span === undefined ? {} : { span_m: inMetres(millimetres(span.value)), loaded: isLoaded }),
  };
}

/** The note above, as long as the piano has one. */
export const nextKey = ({ piano }: Pick<Job, 'piano'>, key: number): number =>
  Math.min(key + 1, piano?.lastKey ?? 88);

/** The lines of a text that say something. */
export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** 'what: why', one a line; a line without a colon has no reason, and is refused where it is kept. */
export function pairsOf(text: string): { what: string; because: string }[] {
  return linesOf(text).map((line) => {
    const colon = line.indexOf(':');
    return colon < 0
      ? { what: line, because: '' }
      : { what: line.slice(0, colon).trim() || line, because: line.slice(colon + 1).trim() };
  });
}

/**
 * The same day some months later; the last of a month that is shorter. '' where the day is none.
 * @example monthsAfter('2026-01-31', 1)  // = 2026-02-28
 */
export function monthsAfter(day: string, months: number): string {
  const [year, month, date] = day.split('-').map(Number);
  if (year === undefined || month === undefined || date === undefined || Number.isNaN(date)) return '';
  const first = new Date(Date.UTC(year, month - 1 + months, 1));
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  first.setUTCDate(Math.min(date, last));
  return first.toISOString().slice(0, 10);
}
