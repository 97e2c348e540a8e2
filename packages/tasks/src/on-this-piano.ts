import { type Language, noteName } from '@becket/core';
import type { Job, StringPlace } from '@becket/journal';

/* Refusals of a place that is not on the piano as it is described. `what` is what was to be kept: 'this stamp'. */

/** Throws: RangeError when the compass is described and the note lies outside it. */
export function requireNoteOnPiano(
  { piano }: Job,
  { key, what }: { readonly key: number; readonly what: string },
  { say }: Language,
): void {
  if (piano === undefined || (key >= piano.firstKey && key <= piano.lastKey)) return;
  throw new RangeError(
    say(
      "Cannot keep {what}: a note from {first} to {last} is needed, {found} was found. Check the note, or the piano's compass.",
      { what, first: noteName(piano.firstKey), last: noteName(piano.lastKey), found: noteName(key) },
    ),
  );
}

/**
 * Throws: RangeError when the note is not on this piano, or is described with fewer strings. A string of a note that nobody
 * has described is taken at its word.
 */
export function requireStringOnPiano(
  job: Job,
  { key, string, what }: { readonly key: number; readonly string: number; readonly what: string },
  language: Language,
): void {
  requireNoteOnPiano(job, { key, what }, language);
  const strings = job.unisons.get(key)?.strings;
  if (strings === undefined || (string >= 1 && string <= strings)) return;
  throw new RangeError(
    language.say(
      'Cannot keep {what}: a string from 1 to {strings} of {note} is needed, string {string} was found. Check the string, or the stringing of the note.',
      { what, strings, note: noteName(key), string },
    ),
  );
}

/** Throws: RangeError as `requireStringOnPiano`, and when nobody has described the stringing of the note. */
export function requireDescribedString(
  job: Job,
  { key, string, what }: StringPlace & { readonly what: string },
  language: Language,
): void {
  requireStringOnPiano(job, { key, string, what }, language);
  if (job.unisons.has(key)) return;
  throw new RangeError(
    language.say(
      'Cannot keep {what}: the stringing of {note} is needed, it is not described. Describe it under Sections first.',
      { what, note: noteName(key) },
    ),
  );
}

/** Throws: RangeError when no section of this name is described. */
export function requireSectionOnPiano(
  { sections }: Job,
  { section, what }: { readonly section: string; readonly what: string },
  { say }: Language,
): void {
  if (sections.some((one) => one.section === section)) return;
  const names = sections.map((one) => one.section).join(', ');
  throw new RangeError(
    say(
      "Cannot keep {what}: a section of this piano is needed ({sections}), '{found}' was found. Choose one, or describe it first.",
      { what, sections: names || say('none is described'), found: section },
    ),
  );
}
