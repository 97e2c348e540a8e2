import { english, type Language } from '@becket/core';
/** What somebody typed into a number field, or a gauge typed for her. */
export type TypedNumber =
  | { readonly is: 'empty' }
  | { readonly is: 'number'; readonly value: number; readonly unit: string | undefined }
  | { readonly is: 'problem'; readonly sentence: string };

const fraction = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)$/;
const decimal = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?$/i;
const unitWords: Readonly<Record<string, { unit: string; scale: number }>> = {
  mm: { unit: 'mm', scale: 1 },
  cm: { unit: 'mm', scale: 10 },
  m: { unit: 'm', scale: 1 },
  um: { unit: 'um', scale: 1 },
  µm: { unit: 'um', scale: 1 },
  μm: { unit: 'um', scale: 1 },
  in: { unit: 'in', scale: 1 },
  inch: { unit: 'in', scale: 1 },
  inches: { unit: 'in', scale: 1 },
  '"': { unit: 'in', scale: 1 },
  '″': { unit: 'in', scale: 1 },
  thou: { unit: 'in', scale: 0.001 },
  mil: { unit: 'in', scale: 0.001 },
};

/**
 * Reads a number as people and gauges type it: '1.025', '1,025', '.041', '0.041 in', '41 thou', '15 3/8"'.
 *
 * The unit is undefined when none was typed; the field's own unit is meant then. A fraction is read as inches.
 * Never guesses: a text with both marks ('1.234,5') is a problem, said in one sentence.
 */
export function readTypedNumber(text: string, { say }: Language = english): TypedNumber {
  const trimmed = text.trim();
  if (trimmed === '') return { is: 'empty' };
  const parts = /^(.*?)\s*([a-zA-Zµμ]+|["″])?$/.exec(trimmed);
  const number = (parts?.[1] ?? '').trim();
  const word = parts?.[2]?.toLowerCase();
  const known = word === undefined ? undefined : unitWords[word];
  if (number !== '' && (word === undefined || known !== undefined)) {
    const scale = known?.scale ?? 1;
    if (decimal.test(number)) {
      const value = Number(number.replace(',', '.'));
      // The scale is a power of ten: rounding to 12 digits takes out what binary numbers add.
      return {
        is: 'number',
        value: scale === 1 ? value : Number((value * scale).toPrecision(12)),
        unit: known?.unit,
      };
    }
    const split = fraction.exec(number);
    if (split !== null && (known === undefined || known.unit === 'in') && Number(split[3]) > 0) {
      const value = Number(split[1] ?? 0) + Number(split[2]) / Number(split[3]);
      return { is: 'number', value: value * scale, unit: 'in' };
    }
  }
  return {
    is: 'problem',
    sentence: say(
      "Cannot read '{text}' as a number: one such as 1.025, 1,025, 0.0405 in or 15 3/8 in is needed. Type it again.",
      { text: trimmed },
    ),
  };
}

/** Figures with the decimal mark of the language in place of either: a field starts with what its reader would type. */
export const withMark = (figures: string, { fixed }: Language = english): string =>
  figures.replace(/[.,]/, fixed(0.5, 1).charAt(1));

/**
 * A typed number as it is read back: digit for digit, since 1.020 says more than 1.02, with the decimal mark of the
 * language, so that 1,020 cannot be taken for a thousand; or its value, where it was typed in a unit that is kept as
 * another: '41 thou' is 0.041 in, and never 41 in. The sign and the leading zeros that a gauge sends are left out; a point that
 * nothing stands before gets its zero, since it is easily not seen.
 */
export function numberAsTyped(text: string, value: number, language: Language = english): string {
  const digits = text
    .trim()
    .replace(/\s*[a-zµμ"″]+$/i, '')
    .replace(/^\+/, '')
    .replace(/^(-?)0+(?=\d)/, '$1')
    .replace(/^-?(?=[.,])/, '$&0');
  const alone = readTypedNumber(digits);
  const isAsTyped = alone.is === 'number' && alone.value === value;
  return isAsTyped ? withMark(digits, language) : language.plain(value);
}
