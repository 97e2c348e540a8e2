import { noteName } from '@becket/core';
import type { BassCheck } from '@becket/journal';

/** Checks that are read and signed as one: the same figure missing at several notes, or one thing that does not agree. */
export interface CheckGroup {
  readonly id: string;
  readonly checks: readonly BassCheck[];
  readonly sentence: string;
}

const missingWords: Readonly<Record<string, string>> = {
  'core-diameter': 'The core diameter is not known',
  'inner-layer-diameter': 'The diameter over the inner layer is not known',
  'over-all-diameter': 'The over-all diameter is not known',
  'speaking-length': 'The speaking length is not known',
  'bare-front': 'The bare end at the front is not known',
  'bare-back': 'The bare end at the bridge is not known',
  'winding-length': 'The winding length is not known',
  'loop-to-winding': 'Loop to winding start is not known',
  'hitch-pin-diameter': 'The hitch pin diameter is not known',
  'loop-style': 'The loop style is not stated',
  strings: 'The number of strings is not said',
};

/** What does not agree first, one by one; then what is missing, one line for each figure with its notes. */
export function checkGroups(checks: readonly BassCheck[]): CheckGroup[] {
  const single: CheckGroup[] = [];
  const missing = new Map<string, BassCheck[]>();
  for (const check of checks) {
    const quantity = /\/missing\/(.+)$/.exec(check.id)?.[1];
    if (quantity === undefined) single.push({ id: check.id, checks: [check], sentence: check.sentence });
    else missing.set(quantity, [...(missing.get(quantity) ?? []), check]);
  }
  return [
    ...single,
    ...[...missing].map(([quantity, own]) => ({
      id: `missing/${quantity}`,
      checks: own,
      sentence: `${missingWords[quantity] ?? quantity}: ${notesOf(own)}.`,
    })),
  ];
}

/** 'A0 to C1, D#1': neighbours drawn together. */
function notesOf(checks: readonly BassCheck[]): string {
  const runs: [number, number][] = [];
  for (const { keys } of checks) {
    const [key] = keys;
    if (key === undefined) continue;
    const last = runs.at(-1);
    if (last !== undefined && key === last[1] + 1) last[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([from, to]) => (from === to ? noteName(from) : `${noteName(from)} to ${noteName(to)}`))
    .join(', ');
}
