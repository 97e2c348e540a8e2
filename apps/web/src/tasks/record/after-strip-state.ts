import { currencyDigits, english, type Language, parseNote } from '@becket/core';
import type { damageGravities } from '@becket/journal';
import type { DamageToRecord } from '@becket/tasks';
import { readTypedNumber } from '../../parts/typed-number.ts';

export interface DamageForm {
  readonly section: string;
  readonly note: string;
  readonly point: string;
  readonly what: string;
  readonly gravity: (typeof damageGravities)[number];
  readonly whatToDo: string;
  readonly why: string;
  readonly price: string;
  readonly currency: string;
  readonly days: string;
  readonly photo: string;
}

export const newDamageForm = (currency = 'EUR'): DamageForm => ({
  section: '',
  note: '',
  point: '',
  what: '',
  gravity: 'mend before stringing',
  whatToDo: '',
  why: '',
  price: '',
  currency,
  days: '',
  photo: '',
});

/** Digits after the point that a currency is counted in, as its papers are set: 2 for EUR, 0 for JPY. */
function digitsOf(currency: string, { say }: Language = english): number {
  try {
    return currencyDigits(currency);
  } catch {
    throw new RangeError(
      say(
        "Cannot keep the price: a currency of three letters such as EUR is needed, '{currency}' was found. Correct it.",
        { currency },
      ),
    );
  }
}

/** A typed price in whole minor units; undefined when nothing was typed. Throws when it has parts of a minor unit. */
export function minorUnitsOf(
  typed: string,
  currency: string,
  language: Language = english,
): number | undefined {
  const { say } = language;
  const number = readTypedNumber(typed, language);
  if (number.is === 'empty') return undefined;
  const digits = digitsOf(currency, language);
  const minor = number.is === 'number' ? number.value * 10 ** digits : Number.NaN;
  const whole = Math.round(minor);
  if (!Number.isSafeInteger(whole) || whole < 0 || Math.abs(minor - whole) > 1e-6)
    throw new RangeError(
      say(
        "Cannot keep the price: an amount of 0 or more with at most {digits} digits after the point is needed, '{found}' was found. Type it without separators.",
        { digits, found: typed.trim() },
      ),
    );
  return whole;
}

/** '450.00 EUR' */
export function moneyText(minorUnits: number, currency: string, language: Language = english): string {
  const { fixed } = language;
  const digits = digitsOf(currency, language);
  return `${fixed(minorUnits / 10 ** digits, digits)} ${currency}`;
}

/** The damage that a form describes. Throws, with a sentence, when something needed is missing. */
export function damageOf(form: DamageForm, language: Language = english): DamageToRecord {
  const { say } = language;
  const required = (words: string, what: string): string => {
    const said = words.trim();
    if (said === '')
      throw new RangeError(
        say('Cannot note this damage: {what} is needed, nothing was found. Say it in a few words.', { what }),
      );
    return said;
  };
  const currency = form.currency.trim().toUpperCase();
  const priceMinorUnits = minorUnitsOf(form.price, currency, language);
  const days = readTypedNumber(form.days, language);
  if (days.is === 'problem' || (days.is === 'number' && days.value < 0))
    throw new RangeError(
      say(
        "Cannot note this damage: a number of working days of 0 or more is needed, '{found}' was found. Correct it, or leave it empty.",
        { found: form.days.trim() },
      ),
    );
  const point = form.point.trim();
  return {
    place: {
      ...(form.note.trim() === '' ? {} : { key: parseNote(form.note.trim(), undefined, language) }),
      ...(form.section === '' ? {} : { section: form.section }),
      ...(point === '' ? {} : { point }),
    },
    what: required(form.what, say('what was found')),
    gravity: form.gravity,
    whatToDo: required(form.whatToDo, say('what to do about it')),
    reason: required(form.why, say('why it did not show before the strip')),
    ...(priceMinorUnits === undefined ? {} : { priceMinorUnits, currency }),
    ...(days.is === 'number' ? { days: days.value } : {}),
    ...(form.photo === '' ? {} : { photo: form.photo }),
  };
}
