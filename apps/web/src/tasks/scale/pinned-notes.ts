import { english, type Language, noteName } from '@becket/core';

/** The notes that are pinned, with one more or one less. */
export function withPin(pinned: ReadonlySet<number>, key: number, isPinned: boolean): ReadonlySet<number> {
  const next = new Set(pinned);
  if (isPinned) next.add(key);
  else next.delete(key);
  return next;
}

export const pinnedWords = (pinned: ReadonlySet<number>, { say }: Language = english): string =>
  pinned.size === 0
    ? say('No note is pinned.')
    : say('Pinned: {notes}. Compute again to fit the others to them.', {
        notes: [...pinned]
          .sort((a, b) => a - b)
          .map(noteName)
          .join(', '),
      });
