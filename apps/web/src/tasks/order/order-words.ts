import { minorUnits, moneyText } from '@becket/core';

/** '14.50 EUR', as this language writes numbers; that of the device when not given. */
export const priceText = (amount: number, currency: string, locale = navigator.language): string =>
  `${moneyText(minorUnits(amount), currency, { locale, currencyAs: 'none' })} ${currency}`;

/** Today on this device, YYYY-MM-DD. */
export function todayOn(now: Date): string {
  const month = String(now.getMonth() + 1).padStart(2, '0');
  const day = String(now.getDate()).padStart(2, '0');
  return `${now.getFullYear()}-${month}-${day}`;
}
