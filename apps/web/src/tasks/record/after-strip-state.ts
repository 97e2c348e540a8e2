import { english, type Language, type MinorUnits, parseMoney, parseNote } from '@becket/core';
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

/** A typed price; undefined when nothing was typed. Throws when it cannot be read to the minor unit, or is below 0. */
export function priceOf(
  typed: string,
  currency: string,
  language: Language = english,
): MinorUnits | undefined {
  if (typed.trim() === '') return undefined;
  const signs = typed.match(/[.,]/g) ?? [];
  // A price on a change order is short: a single dot or comma is the decimal sign, and never sets off thousands.
  const decimalSign = signs.length === 1 ? (signs[0] as '.' | ',') : undefined;
  const price = parseMoney(typed, currency, { decimalSign }, language);
  if (price < 0)
    throw new RangeError(
      language.say(
        "Cannot keep the price: an amount of 0 or more is needed, '{found}' was found. Correct it.",
        {
          found: typed.trim(),
        },
      ),
    );
  return price;
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
  const priceMinorUnits = priceOf(form.price, currency, language);
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
