import { IntlMessageFormat } from 'intl-messageformat';
import type { MinorUnits } from '../supplies/minor-units.ts';
import { moneyText } from '../supplies/money-text.ts';
import type { MessageValues, Sayable } from './message.ts';

/** English message → the same in another language, with the same names in braces. */
export type Catalogue = Readonly<Record<string, string>>;

/** How words, numbers, days and money are written for one reader. It is handed to whatever makes text. */
export interface Language {
  /** BCP 47 tag: the language of the words, and the country whose marks and paper are used. */
  readonly locale: string;
  /** A message in this language, with values in its braces. One that no catalogue has is said in English. */
  readonly say: <const Text extends string>(text: Sayable<Text>, values?: MessageValues) => string;
  /** A number with so many digits after the decimal mark; thousands are not set apart. */
  readonly fixed: (value: number, digits: number) => string;
  /** A number with the digits it has, no zeros at its end. */
  readonly plain: (value: number) => string;
  /** A day, from RFC 3339 UTC; the day is that of UTC. */
  readonly day: (at: string) => string;
  /** Day and minute, from RFC 3339 UTC. */
  readonly moment: (at: string) => string;
  /** Things in a row: 'one, two and three', or with or. */
  readonly list: (items: readonly string[], last?: 'and' | 'or') => string;
  /** An amount in whole minor units of its currency. */
  readonly money: (amount: MinorUnits, currency: string, currencyAs?: 'code' | 'symbol' | 'none') => string;
}

/** What stands before a message in brackets tells translators which sense is meant, and is not printed. */
const senseInFront = /^\[[^\]]*\] /;

/** ICU would take an apostrophe before a brace for a quote. A message needs no braces of its own, so that every apostrophe is one. */
export const withApostrophes = (text: string): string => text.replaceAll("'", "''");

/**
 * The language of a locale and a catalogue. Messages are ICU MessageFormat: `{name}`, `{count, plural, one {…} other {…}}`,
 * `{kind, select, …}`; an apostrophe and a
 * tag in angle brackets mean nothing.
 *
 * Two senses of one English word are two messages: '[of a pin] low' is said 'low' in English.
 *
 * Throws: RangeError when the locale is not a BCP 47 tag; Error when a message names a value that is not handed in.
 * Source: Unicode Technical Standard 35 (messages and plurals), by way of FormatJS and Intl.
 * @example makeLanguage('en-GB').say('{count, plural, one {# pin} other {# pins}} of {size}', { count: 2, size: '7 mm' })  // = 2 pins of 7 mm
 * @example makeLanguage('de-DE', { 'not measured': 'nicht gemessen' }).say('not measured')  // = nicht gemessen
 * @example makeLanguage('de-DE').fixed(0.825, 3)  // = 0,825
 */
export function makeLanguage(locale: string, catalogue: Catalogue = {}): Language {
  const parts = new Intl.NumberFormat(locale).formatToParts(0.5);
  const decimalMark = parts.find(({ type }) => type === 'decimal')?.value ?? '.';
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  const lists = {
    and: new Intl.ListFormat(locale, { type: 'conjunction' }),
    or: new Intl.ListFormat(locale, { type: 'disjunction' }),
  };
  const read = new Map<string, IntlMessageFormat>();
  const withMark = (figures: string) => (decimalMark === '.' ? figures : figures.replace('.', decimalMark));
  const day = (at: string) => days.format(new Date(`${at.slice(0, 10)}T00:00:00Z`));
  return {
    locale,
    say(text: string, values?: MessageValues): string {
      const own = (catalogue[text] ?? text).replace(senseInFront, '');
      // Most messages are plain words; what has braces is read once.
      if (!own.includes('{')) return own;
      let format = read.get(own);
      if (format === undefined) {
        format = new IntlMessageFormat(withApostrophes(own), locale, undefined, { ignoreTag: true });
        read.set(own, format);
      }
      return String(format.format(values as Record<string, string | number> | undefined));
    },
    fixed: (value, digits) => withMark(value.toFixed(digits)),
    plain: (value) => withMark(String(value)),
    day,
    moment: (at) => `${day(at)}, ${at.slice(11, 16)} UTC`,
    list: (items, last = 'and') => lists[last].format(items),
    money: (amount, currency, currencyAs = 'code') => moneyText(amount, currency, { locale, currencyAs }),
  };
}

/** The language messages are written in; what is used where no other is handed in. */
export const english: Language = makeLanguage('en-GB');
