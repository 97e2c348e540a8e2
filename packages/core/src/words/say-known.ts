import type { Language } from './language.ts';
import type { Message } from './message.ts';

/**
 * Words that are a message of ours until somebody types their own in their place, such as the source of a limit or the name
 * of a table: ours are said, typed ones stay as they are. Braces and brackets are taken for typed, so ours have none here.
 *
 * @example sayKnown('common practice', makeLanguage('de', { 'common practice': 'gängige Praxis' }))  // = gängige Praxis
 * @example sayKnown('our {old} shop', makeLanguage('de'))  // = our {old} shop
 */
export const sayKnown = (words: string, { say }: Language): string =>
  /[{}[]/.test(words) ? words : say(words as Message);
