import { english, type Language, noteName } from '@becket/core';

/**
 * Notes in words, neighbours joined: 'A0 to C1, E1'.
 * @example noteRuns([1, 2, 3, 4, 8])  // = A0 to C1, E1
 */
export function noteRuns(keys: readonly number[], { say }: Language = english): string {
  const runs: { first: number; last: number }[] = [];
  for (const key of [...new Set(keys)].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run !== undefined && run.last === key - 1) run.last = key;
    else runs.push({ first: key, last: key });
  }
  return runs
    .map(({ first, last }) =>
      first === last
        ? noteName(first)
        : say('{first} to {last}', { first: noteName(first), last: noteName(last) }),
    )
    .join(', ');
}
