import { currencyCodes, type Language, minorUnits } from '@becket/core';

/**
 * A price with its currency told by three letters: 'EUR 1,234.50'. An amount in a currency that ISO 4217 does not have is
 * left in its minor units, since nobody can say where its point belongs.
 */
export function priceText(priceMinorUnits: number, currency: string, { say, money }: Language): string {
  const amount = minorUnits(priceMinorUnits);
  return currencyCodes.includes(currency)
    ? money(amount, currency)
    : say('{amount} smallest units of {currency}', { amount: String(amount), currency });
}
