import { currencyDigits } from './currency-digits.ts';
import { type MinorUnits, minorUnits } from './minor-units.ts';

/** How an amount is written. */
export interface MoneyStyle {
  /** BCP 47 tag of the language, and where it matters the country, that it is written for. */
  readonly locale: string;
  /** `code` EUR, `symbol` €, `none` where a heading names the currency. */
  readonly currencyAs: 'code' | 'symbol' | 'none';
}

/**
 * An amount with as many digits after the point as its currency has, no more and no fewer.
 *
 * Throws: RangeError when the currency or the locale is not one.
 * Source: ISO 4217 for the digits; the separators are those of Intl (Unicode CLDR).
 * @example moneyText(minorUnits(123450), 'EUR', { locale: 'en-GB', currencyAs: 'symbol' })  // = €1,234.50
 * @example moneyText(minorUnits(123450), 'EUR', { locale: 'de-DE', currencyAs: 'none' })  // = 1.234,50
 * @example moneyText(minorUnits(123450), 'JPY', { locale: 'en-GB', currencyAs: 'none' })  // = 123,450
 */
export function moneyText(amount: MinorUnits, currency: string, { locale, currencyAs }: MoneyStyle): string {
  const format = new Intl.NumberFormat(locale, {
    ...(currencyAs === 'none' ? {} : { style: 'currency', currency, currencyDisplay: currencyAs }),
    minimumFractionDigits: currencyDigits(currency),
    maximumFractionDigits: currencyDigits(currency),
  });
  // As text, which is formatted to the last digit: a large amount divided by a hundred is not a number of the computer.
  return format.format(plainMoneyText(amount, currency) as `${number}`);
}

/**
 * An amount for a machine: decimal point, no other separators.
 *
 * @example plainMoneyText(minorUnits(-5), 'EUR')  // = -0.05
 * @example plainMoneyText(minorUnits(1250), 'JPY')  // = 1250
 */
export function plainMoneyText(amount: MinorUnits, currency: string): string {
  const digits = currencyDigits(currency);
  const figures = String(Math.abs(minorUnits(amount))).padStart(digits + 1, '0');
  const whole = figures.slice(0, figures.length - digits);
  const fraction = digits === 0 ? '' : `.${figures.slice(-digits)}`;
  return `${amount < 0 ? '-' : ''}${whole}${fraction}`;
}
