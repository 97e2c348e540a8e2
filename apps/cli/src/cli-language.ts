import { english, type Language, makeLanguage } from '@becket/core';
import { languageFor } from '@becket/tasks/language-for';

/**
 * The locale that a command line asks for: that of `--language`, else that of the environment.
 *
 * Undefined for English: where the environment says nothing, or a language we do not speak, and where the answer is JSON,
 * which programs read and which must not change with the computer.
 *
 * Source: POSIX.1-2017, Base Definitions, 8.2: the first that is set and not empty of LC_ALL, LC_MESSAGES and LANG; from memory.
 * @example localeAsked(['jobs'], { LANG: 'de_AT.UTF-8' })  // = de-AT
 * @example localeAsked(['jobs', '--language', 'en'], { LANG: 'de_AT.UTF-8' })  // = en
 */
export function localeAsked(
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): string | undefined {
  const index = args.findIndex((one) => one === '--language' || one.startsWith('--language='));
  const asked = index === -1 ? undefined : (args[index]!.split('=')[1] ?? args[index + 1]);
  if (asked !== undefined) return asked;
  if (args.includes('--json')) return undefined;
  const [name = ''] = (env.LC_ALL || env.LC_MESSAGES || env.LANG || '').split(/[.@]/);
  return /^(de|en)(_[A-Z]{2})?$/.test(name) ? name.replace('_', '-') : undefined;
}

/** That language, with what the command line itself says. Throws RangeError when it is none of ours. */
export async function cliLanguage(locale: string | undefined): Promise<Language> {
  if (locale === undefined) return english;
  const packages = await languageFor(locale);
  if (!locale.startsWith('de')) return packages;
  return makeLanguage(locale, (await import('./german.ts')).german);
}
