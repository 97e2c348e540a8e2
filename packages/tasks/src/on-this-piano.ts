import { type Language, noteName } from '@becket/core';
import type { Job, StringPlace } from '@becket/journal';

/** Throws: RangeError when the piano as it is described has no such note. `what` says what is to be kept: 'this wire'. */
export function requireKey(
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

/** Throws: RangeError when the piano as it is described has no such string. */
export function requireString(
  state: Job,
  { key, string, what }: StringPlace & { readonly what: string },
  language: Language,
): void {
  const { say } = language;
  requireKey(state, { key, what }, language);
  const strings = state.unisons.get(key)?.strings;
  if (strings !== undefined && string <= strings) return;
  throw new RangeError(
    strings === undefined
      ? say(
          'Cannot keep {what}: the stringing of {note} is needed, it is not described. Describe it under Sections first.',
          { what, note: noteName(key) },
        )
      : say(
          'Cannot keep {what}: a string from 1 to {strings} of {note} is needed, string {string} was found. Check the string, or the stringing of the note.',
          { what, strings, note: noteName(key), string },
        ),
  );
}
