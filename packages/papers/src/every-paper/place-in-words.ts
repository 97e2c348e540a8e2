import { type Language, noteName } from '@becket/core';
import type { Place } from '@becket/journal';

/** 'C#3, string 2, near the agraffe'. The section is left out where the reader is in it already. */
export function placeInWords(
  { key, string, section, point }: Place,
  { say }: Language,
  knownSection?: string,
): string {
  const parts = [
    section === undefined || section === knownSection ? undefined : say('section {section}', { section }),
    key === undefined ? undefined : noteName(key),
    string === undefined ? undefined : say('string {number}', { number: String(string) }),
    point,
  ].filter((part) => part !== undefined);
  if (parts.length > 0) return parts.join(', ');
  return knownSection === undefined ? say('whole piano') : say('whole section');
}
