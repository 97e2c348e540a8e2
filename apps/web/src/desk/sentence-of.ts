import { english, type Language } from '@becket/core';
import { errorSentence, isForTheUser } from '@becket/tasks';

/**
 * The sentence a technician reads when something failed: what failed, what is needed, what was found, what to do.
 *
 * Errors of the project carry that sentence already, in the language they were made in. Anything else is a fault of the
 * program, and is said to be one.
 */
export function sentenceOf(error: unknown, language: Language = english): string {
  if (isForTheUser(error)) return errorSentence(error, language);
  if (error instanceof Error && /^(Cannot|Could not) /.test(error.message)) return error.message;
  return language.say(
    'Something went wrong inside Becket, and nothing was changed: {detail}. Load the page again; if it happens again, save the job as a file and report it.',
    { detail: error instanceof Error ? error.message : String(error) },
  );
}
