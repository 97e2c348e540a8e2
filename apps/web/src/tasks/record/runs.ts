import { english, type Language, parseNote } from '@becket/core';
import type { UnisonDescription } from '@becket/journal';

/** A run of neighbouring notes that are strung alike. */
export interface StringingRun {
  readonly firstKey: number;
  readonly lastKey: number;
  readonly strings: number;
  readonly winding: 'plain' | 'wound';
  readonly layers: number;
}

/** The keys from one typed note to another, the lower first whichever was typed first. Throws as `parseNote` does. */
export function keysBetween(
  one: string,
  other: string,
  language: Language = english,
): { readonly firstKey: number; readonly lastKey: number } {
  const keys = [one, other].map((note) => parseNote(note.trim(), undefined, language));
  return { firstKey: Math.min(...keys), lastKey: Math.max(...keys) };
}

/** The stringing of the compass as runs, bass to treble. */
export function stringingRuns(unisons: ReadonlyMap<number, UnisonDescription>): StringingRun[] {
  const runs: StringingRun[] = [];
  for (const { key, strings, winding, layers } of [...unisons.values()].sort((a, b) => a.key - b.key)) {
    const last = runs.at(-1);
    const goesOn =
      last !== undefined &&
      last.lastKey === key - 1 &&
      last.strings === strings &&
      last.winding === winding &&
      last.layers === layers;
    if (goesOn) runs[runs.length - 1] = { ...last, lastKey: key };
    else runs.push({ firstKey: key, lastKey: key, strings, winding, layers });
  }
  return runs;
}

/** Keys of the compass that no run names, as runs. */
export function keysLeft(
  { firstKey, lastKey }: { readonly firstKey: number; readonly lastKey: number },
  has: (key: number) => boolean,
): { readonly firstKey: number; readonly lastKey: number }[] {
  const left: { firstKey: number; lastKey: number }[] = [];
  for (let key = firstKey; key <= lastKey; key += 1) {
    if (has(key)) continue;
    const last = left.at(-1);
    if (last !== undefined && last.lastKey === key - 1) last.lastKey = key;
    else left.push({ firstKey: key, lastKey: key });
  }
  return left;
}
