import { english, type Language } from '../words/index.ts';
import { currencyDigits } from './currency-digits.ts';
import { type MinorUnits, minorUnits } from './minor-units.ts';

/**
 * An amount as a person types it: `1234.5`, `1,234.50`, `1.234,50`, `1 234,50`, `1'234.50`, `-20`.
 *
 * Where dot and comma both stand, the last one is the decimal sign. A single one with three digits behind it can mean
 * either (`1.234`), and is only read where `decimalSign` says which the writer uses. A sign of the currency is not read.
 *
 * @param typed                what was typed
 * @param currency             three letters of ISO 4217
 * @param options.decimalSign  the writer's decimal sign, where it is known
 * @param language             of what is said when it cannot be read
 * @returns amount [minor units]
 *
 * Throws: SyntaxError when it does not read as an amount, or could be read in two ways; RangeError when it has more
 * digits after the decimal sign than the currency, or is too large to be held exactly.
 * Source: common practice for the separators.
 * @example parseMoney('1.234,50', 'EUR')  // = 123450
 * @example parseMoney("1'234.5", 'CHF')  // = 123450
 * @example parseMoney('1.234', 'EUR', { decimalSign: ',' })  // = 123400
 */
export function parseMoney(
  typed: string,
  currency: string,
  { decimalSign }: { readonly decimalSign?: '.' | ',' | undefined } = {},
  language: Language = english,
): MinorUnits {
  const digits = currencyDigits(currency, language);
  const text = typed.trim().replace(/^[\u2212\u2013]/, '-');
  const parts = /^([+-]?)\s?(\d[\d.,\s'\u2019]*)$/u.exec(text);
  if (parts === null || !/\d$/.test(text)) throw notAnAmount(typed, digits, language);
  const [, sign, body = ''] = parts;
  const decimalAt = decimalPlace(body, typed, { decimalSign, digits }, language);
  const whole = withoutGroups(decimalAt === -1 ? body : body.slice(0, decimalAt), typed, digits, language);
  const fraction = decimalAt === -1 ? '' : body.slice(decimalAt + 1);
  if (!/^\d*$/.test(fraction)) throw notAnAmount(typed, digits, language);
  if (fraction.length > digits) {
    throw new RangeError(
      language.say(
        "Cannot read an amount of {currency}: {digits, plural, =0 {no digits} other {at most # digits}} after the decimal sign are needed, '{typed}' was found. Leave out what is smaller than the currency's smallest unit.",
        { currency, digits, typed: typed.trim() },
      ),
    );
  }
  const value = Number(whole + fraction.padEnd(digits, '0'));
  return minorUnits(sign === '-' ? -value : value);
}

/** Where the decimal sign stands in the digits, −1 for nowhere. Throws: SyntaxError when that cannot be told. */
function decimalPlace(
  body: string,
  typed: string,
  { decimalSign, digits }: { readonly decimalSign: '.' | ',' | undefined; readonly digits: number },
  { say }: Language,
): number {
  const lastDot = body.lastIndexOf('.');
  const lastComma = body.lastIndexOf(',');
  if (decimalSign !== undefined) return decimalSign === '.' ? lastDot : lastComma;
  if (lastDot === -1 && lastComma === -1) return -1;
  if (lastDot !== -1 && lastComma !== -1) return Math.max(lastDot, lastComma);
  const last = Math.max(lastDot, lastComma);
  const sign = body[last]!;
  if (body.indexOf(sign) !== last) return -1;
  // 1.234 but not 1234.567, 0.500 or 12 345.678: those cannot be thousands set off by the sign.
  const couldGroup = /^[1-9]\d{0,2}$/.test(body.slice(0, last)) && body.length - last - 1 === 3;
  // A currency without a smaller unit leaves one way to read it.
  if (couldGroup && digits === 0) return -1;
  if (couldGroup) {
    throw new SyntaxError(
      say(
        "Cannot read '{typed}' as an amount: the {sign, select, dot {dot} other {comma}} could set off thousands or be the decimal sign. Write {whole}, or {digits, select, many {say which decimal sign you use} other {{decimals} with two digits after it}}.",
        {
          typed: typed.trim(),
          sign: sign === '.' ? 'dot' : 'comma',
          whole: body.replace(sign, ''),
          digits: digits < 3 ? 'few' : 'many',
          decimals: body.slice(0, last + 3),
        },
      ),
    );
  }
  return last;
}

/** Digits without what sets off thousands; one kind of sign, three digits behind the last (and two or three between). */
function withoutGroups(whole: string, typed: string, digits: number, language: Language): string {
  if (/^\d+$/.test(whole)) return whole;
  const grouped =
    /^\d{1,3}(?:([.,'\u2019]|\s)\d{2,3})?(?:\1\d{2,3})*$/u.test(whole) && /\D\d{3}$/u.test(whole);
  if (!grouped) throw notAnAmount(typed, digits, language);
  return whole.replace(/\D/gu, '');
}

function notAnAmount(typed: string, digits: number, { say, fixed }: Language): SyntaxError {
  const example = digits === 0 ? '1234' : fixed(1234.5, digits);
  return new SyntaxError(
    typed.trim() === ''
      ? say(
          'Cannot read an amount: a number such as {example} is needed, nothing was found. Type it, or leave the line unpriced.',
          { example },
        )
      : say(
          "Cannot read an amount: a number such as {example} is needed, '{typed}' was found. Type digits, with one decimal sign.",
          { example, typed: typed.trim() },
        ),
  );
}
