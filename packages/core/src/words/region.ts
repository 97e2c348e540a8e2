import type { LengthUnit } from '../units/index.ts';

/*
 * What follows from the country of a locale when nobody has said otherwise. Source: Unicode CLDR supplemental data
 * (measurementData, currencyData), from memory.
 */

const letterCountries = 'BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' ');

const currencies: Readonly<Record<string, string>> = {
  AU: 'AUD',
  CA: 'CAD',
  CH: 'CHF',
  CZ: 'CZK',
  DK: 'DKK',
  GB: 'GBP',
  HU: 'HUF',
  JP: 'JPY',
  LI: 'CHF',
  NO: 'NOK',
  NZ: 'NZD',
  PL: 'PLN',
  SE: 'SEK',
  US: 'USD',
};

/** The country of a locale; where it names none, the one where its language is spoken most. */
const countryOf = (locale: string) => new Intl.Locale(locale).maximize().region;

/**
 * The size of paper a printer there is filled with.
 * @example paperSizeOf('de-AT')  // = A4
 * @example paperSizeOf('en-US')  // = Letter
 */
export const paperSizeOf = (locale: string): 'A4' | 'Letter' =>
  letterCountries.includes(countryOf(locale) ?? '') ? 'Letter' : 'A4';

/**
 * The currency of the country by ISO 4217; the euro where we know no other.
 * @example currencyOf('de-CH')  // = CHF
 * @example currencyOf('de-DE')  // = EUR
 */
export const currencyOf = (locale: string): string => currencies[countryOf(locale) ?? ''] ?? 'EUR';

/**
 * The unit a rule is divided in there.
 * @example firstUnitOf('en-US')  // = in
 */
export const firstUnitOf = (locale: string): LengthUnit => (countryOf(locale) === 'US' ? 'in' : 'mm');
