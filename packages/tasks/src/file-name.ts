import { english, type Language, message } from '@becket/core';
import type { PaperName } from './make-paper.ts';

/** What a paper is called in the name of its file. In English that is the name it is asked for by. */
export const paperFileWords = {
  'appraisal-report': message('[of a file] appraisal report'),
  'appraisal-annex': message('[of a file] appraisal annex'),
  estimate: message('[of a file] estimate'),
  'as-found-record': message('[of a file] as-found record'),
  'scale-comparison': message('[of a file] scale comparison'),
  'bass-string-order': message('[of a file] bass string order'),
  'bass-string-plan': message('[of a file] bass string plan'),
  'purchase-list': message('[of a file] purchase list'),
  'change-order': message('[of a file] change order'),
  'stringing-sheets': message('[of a file] stringing sheets'),
  'cut-list': message('[of a file] cut list'),
  'settling-log': message('[of a file] settling log'),
  'hand-over-record': message('[of a file] hand-over record'),
} as const satisfies Record<PaperName, string>;

/** The letters that German writes in two where it has no others; elsewhere the mark alone is left out. */
const inTwoLetters: Readonly<Record<string, string>> = {
  Ä: 'Ae',
  Ö: 'Oe',
  Ü: 'Ue',
  ä: 'ae',
  ö: 'oe',
  ü: 'ue',
};

/**
 * Words as part of a file name that every system takes: letters, digits and hyphens of ASCII. Nothing where none is left.
 *
 * @example fileNamePart('Flügel, A. Müller')  // = Flugel-A-Muller
 * @example fileNamePart('Flügel, A. Müller', makeLanguage('de'))  // = Fluegel-A-Mueller
 */
export function fileNamePart(words: string, { locale }: Language = english, longest = 80): string {
  const isGerman = locale.split('-')[0] === 'de';
  return words
    .normalize('NFC')
    .replace(/[ÄÖÜäöü]/g, (letter) => (isGerman ? inTwoLetters[letter]! : letter))
    .replaceAll('ß', 'ss')
    .normalize('NFKD')
    .replace(/\p{Mark}+/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, longest)
    .replace(/-+$/, '');
}

/** 'a-small-grand-as-found-record.pdf', in small letters and the words of the language. */
export function paperFileName(
  title: string,
  {
    paper,
    format,
    language,
  }: { readonly paper: PaperName; readonly format: string; readonly language: Language },
): string {
  const part = (words: string, longest: number) => fileNamePart(words, language, longest).toLowerCase();
  const job = part(title, 60) || part(language.say('[of a file] job'), 60);
  return `${job}-${part(language.say(paperFileWords[paper]), 60)}.${format}`;
}
