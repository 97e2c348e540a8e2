import { english, type Language, makeLanguage } from '@becket/core';
import { type Observable, observable } from '../parts/observable.ts';
import type { LanguageChoice, Settings } from './settings.ts';

/**
 * The locale a choice comes to on this device. Its country is that of the first of the browser's languages which is the
 * chosen one, so that marks and paper are those of the place; without a choice, the first language we speak.
 *
 * @example localeOf('Deutsch', ['fr-CH', 'de-CH'])  // = de-CH
 * @example localeOf('as the device', ['fr-CH', 'de-CH', 'en'])  // = de-CH
 * @example localeOf('as the device', ['fr'])  // = en-GB
 */
export function localeOf(choice: LanguageChoice, ofBrowser: readonly string[]): string {
  const tags = choice === 'as the device' ? ['en', 'de'] : [choice === 'Deutsch' ? 'de' : 'en'];
  const own = ofBrowser.find((one) => tags.includes(one.split('-')[0]!));
  if (own?.includes('-')) return own;
  return (own ?? tags[0]) === 'de' ? 'de-DE' : 'en-GB';
}

/** Words in a language of their own are fetched when they are asked for; without a network they come from the program's own files. */
export async function loadLanguage(locale: string): Promise<Language> {
  if (locale === english.locale) return english;
  if (locale.startsWith('de')) return makeLanguage(locale, (await import('../words/german.ts')).german);
  return makeLanguage(locale);
}

/** The language of this device: at hand before the first picture, and changed when the settings change. */
export async function deviceLanguage(settings: Observable<Settings>): Promise<Observable<Language>> {
  const wanted = () => localeOf(settings.get().language, navigator.languages);
  const language = observable<Language>(english);
  async function follow(): Promise<void> {
    const locale = wanted();
    // What cannot be fetched leaves the language as it is: a page in English is better than none.
    const next = await loadLanguage(locale).catch(() => language.get());
    if (wanted() !== locale) return;
    document.documentElement.lang = next.locale;
    language.set(next);
  }
  settings.subscribe(() => {
    if (wanted() !== language.get().locale) void follow();
  });
  await follow();
  return language;
}
