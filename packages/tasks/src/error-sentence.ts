import { english, type Language, message, sayKnown } from '@becket/core';
import { CursorNotKnown, EntryChanged, type StoreProblem, StoreUnavailable } from '@becket/store';

/** What stands in a store's way, without its path: a store has no language of its own. */
const storeProblems = {
  'not a store': message(
    'Cannot open this store: files of Becket’s are needed, others were found and left as they are. Name another place.',
  ),
  'later version': message(
    'Cannot open this store: a later version of Becket has written to it. Use that version, or a newer one.',
  ),
  'in use': message(
    'Cannot use this store: another program has it open. Close the other program, then try again.',
  ),
  'cannot be opened': message(
    'Cannot open this store: the system does not allow it. Check the place and who may read and write there.',
  ),
  'cannot be written': message(
    'Cannot write to this store: the system does not allow it, nothing was added. Check who may write there, then try again.',
  ),
  full: message(
    'Cannot write to this store: there is no room left, nothing was added. Make room on the device, then try again.',
  ),
  damaged: message(
    'Cannot read this from the store: its content is damaged, nothing was changed. Keep a copy as it is, and put back the last good copy.',
  ),
} as const satisfies Record<StoreProblem, string>;

/** The names of errors that carry a sentence for the user whenever they are thrown. */
const ours: ReadonlySet<string> = new Set([
  'BassOrderNotReady',
  'CellsNotReadable',
  'CursorNotKnown',
  'EntryChanged',
  'JobNotFound',
  'RecordIsSealed',
  'StoreUnavailable',
  'SurveyIncomplete',
]);

/**
 * Whether the message of an error is a sentence for the user, in whatever language: what failed, what is needed, what was
 * found, what to do.
 *
 * A RangeError or SyntaxError can be ours or the engine's. Ours in English say in their first word what they are; in other
 * languages they are whole sentences with a stop at their end, which an engine's never are.
 *
 * @example isForTheUser(new RangeError('Cannot keep this: a name is needed, nothing was found.'))  // = true
 * @example isForTheUser(new RangeError('Nicht gespeichert: Nötig ist ein Name, nichts wurde gefunden.'))  // = true
 * @example isForTheUser(new RangeError('Invalid array length'))  // = false
 */
export function isForTheUser(error: unknown): error is Error {
  if (!(error instanceof Error)) return false;
  if (ours.has(error.name)) return true;
  if (error.name !== 'RangeError' && error.name !== 'SyntaxError') return false;
  return /^(Cannot|Could not) /.test(error.message) || /[:,;].*[.!?]$/s.test(error.message);
}

/**
 * The sentence of an error in this language. Errors of the tasks were made in it; those of a store, which has none, are told
 * by what they say of themselves.
 */
export function errorSentence(error: Error, language: Language = english): string {
  if (language.locale.startsWith('en')) return error.message;
  const { say } = language;
  if (error instanceof StoreUnavailable) {
    const own = sayKnown(error.message, language);
    return own === error.message ? say(storeProblems[error.problem]) : own;
  }
  if (error instanceof EntryChanged)
    return say(
      'Cannot add entry {entry}: an entry of that id with other content is already kept. Nothing was added; correct by a further entry.',
      { entry: error.entry },
    );
  if (error instanceof CursorNotKnown)
    return say(
      "Cannot go on from cursor '{cursor}': this store did not give it, or was restored from an older copy since. Read from the beginning, and send again what is not there.",
      { cursor: error.cursor },
    );
  return error.message;
}
