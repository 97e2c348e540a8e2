/*
 * Currencies and the digits after their point. Intl is not asked: its digits follow how money is paid in cash (it writes
 * Hungarian forint without the two digits that ISO 4217 gives them).
 *
 * Source: ISO 4217 list one, published 2024-06-25; XCG, which replaced ANG in 2025, from memory.
 */
import { english, type Language } from '../words/index.ts';

const codesByDigits: Readonly<Record<number, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
  2: `AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW
    CNY COP COU CRC CUC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR
    ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR
    MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN
    SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG`,
  3: 'BHD IQD JOD KWD LYD OMR TND',
  4: 'CLF UYW',
};

const digitsByCode: ReadonlyMap<string, number> = new Map(
  Object.entries(codesByDigits).flatMap(([digits, codes]) =>
    codes.split(/\s+/).map((code) => [code, Number(digits)] as const),
  ),
);

/** Codes of all currencies with a minor unit or none, by the alphabet. Gold and test codes are not among them. */
export const currencyCodes: readonly string[] = [...digitsByCode.keys()].sort();

/**
 * Digits after the point of a currency: 2 for most, 0 where there is no smaller unit.
 *
 * @param currency  three capital letters of ISO 4217
 * Throws: RangeError when it is not the code of a currency that is in use.
 * Source: ISO 4217 list one, published 2024-06-25.
 * @example currencyDigits('EUR')  // = 2
 * @example currencyDigits('JPY')  // = 0
 * @example currencyDigits('KWD')  // = 3
 */
export function currencyDigits(currency: string, { say }: Language = english): number {
  const digits = digitsByCode.get(currency);
  if (digits === undefined) {
    throw new RangeError(
      say(
        "Cannot work with this currency: three letters of ISO 4217 such as EUR or USD are needed, '{currency}' was found. Correct it.",
        { currency },
      ),
    );
  }
  return digits;
}
