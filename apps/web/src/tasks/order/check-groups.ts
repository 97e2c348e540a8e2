import { addToGroup, english, type Language, type Message, message, noteName } from '@becket/core';
import type { BassCheck } from '@becket/journal';

/** Checks that are read and signed as one: the same figure missing at several notes, or one thing that does not agree. */
export interface CheckGroup {
  readonly id: string;
  readonly checks: readonly BassCheck[];
  readonly sentence: string;
}

const missingWords: Readonly<Record<string, Message>> = {
  'core-diameter': message('The core diameter is not known'),
  'inner-layer-diameter': message('The diameter over the inner layer is not known'),
  'over-all-diameter': message('The over-all diameter is not known'),
  'speaking-length': message('The speaking length is not known'),
  'bare-front': message('The bare end at the front is not known'),
  'bare-back': message('The bare end at the bridge is not known'),
  'winding-length': message('The winding length is not known'),
  'loop-to-winding': message('Loop to winding start is not known'),
  'hitch-pin-diameter': message('The hitch pin diameter is not known'),
  'loop-style': message('The loop style is not stated'),
  strings: message('The number of strings is not said'),
};

/** What does not agree first, one by one; then what is missing, one line for each figure with its notes. */
export function checkGroups(checks: readonly BassCheck[], language: Language = english): CheckGroup[] {
  const words = (quantity: string) => {
    const known = missingWords[quantity];
    return known === undefined ? quantity : language.say(known);
  };
  const single: CheckGroup[] = [];
  const missing = new Map<string, BassCheck[]>();
  for (const check of checks) {
    const quantity = /\/missing\/(.+)$/.exec(check.id)?.[1];
    if (quantity === undefined) single.push({ id: check.id, checks: [check], sentence: check.sentence });
    else addToGroup(missing, quantity, check);
  }
  return [
    ...single,
    ...[...missing].map(([quantity, own]) => ({
      id: `missing/${quantity}`,
      checks: own,
      sentence: `${words(quantity)}: ${notesOf(own, language)}.`,
    })),
  ];
}

/** 'A0 to C1, D#1': neighbours drawn together. */
function notesOf(checks: readonly BassCheck[], { say }: Language): string {
  const runs: [number, number][] = [];
  for (const { keys } of checks) {
    const [key] = keys;
    if (key === undefined) continue;
    const last = runs.at(-1);
    if (last !== undefined && key === last[1] + 1) last[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([from, to]) =>
      from === to ? noteName(from) : say('{low} to {high}', { low: noteName(from), high: noteName(to) }),
    )
    .join(', ');
}
