import { english, type Language, makeLanguage } from '@becket/core';

/** The languages there is a catalogue for, by their BCP 47 tag, each under its own name. */
export const languageNames = { en: 'English', de: 'Deutsch' } as const;
export type LanguageTag = keyof typeof languageNames;

/**
 * The language of a locale, with the catalogue of the packages; English marks by the country of the locale too.
 *
 * Throws: RangeError when there is no catalogue for its language.
 */
export async function languageFor(locale: string): Promise<Language> {
  const tag = locale.split('-')[0];
  if (tag === 'en') return locale === 'en' ? english : makeLanguage(locale);
  if (tag === 'de') return makeLanguage(locale, (await import('./german.ts')).german);
  throw new RangeError(
    `Cannot use the language '${locale}': one of ${Object.keys(languageNames).join(', ')} is needed, with or without a country (de-AT). Choose one of them.`,
  );
}
