import { english, type Language, noteName } from '@becket/core';
import type { Orders, Ulid } from '@becket/journal';
import {
  type ReceivedComparison,
  type ReceivedTolerances,
  receivedStrings,
  STARTING_RECEIVED_TOLERANCES,
} from './received-strings.ts';

/** How a bass string stands that was ordered, in the order in which it needs somebody. */
export const goingOnStates = ['differs', 'not measured', 'not here', 'taken by name', 'may go on'] as const;
export type GoingOnState = (typeof goingOnStates)[number];

/** One bass string as the last order that has it tells. */
export interface StringToGoOn {
  readonly key: number;
  readonly string: number;
  /** 'E2 1' */
  readonly name: string;
  readonly order: Ulid;
  readonly supplier: string;
  readonly is: GoingOnState;
  /** What differs from the order, and who takes it as it is: the sentences of its comparisons. */
  readonly says: readonly string[];
}

/**
 * Whether each ordered bass string may go on: it is here, something was measured of it, and all of that agrees with its order
 * or is taken by name. A string that was ordered again is judged by the later order; a cancelled order is none.
 *
 * By key and string. Strings that were never ordered in this job are not judged.
 */
export function stringsToGoOn(
  { orders, signed }: Orders,
  tolerances: ReceivedTolerances = STARTING_RECEIVED_TOLERANCES,
  language: Language = english,
): StringToGoOn[] {
  const last = new Map<string, StringToGoOn>();
  for (const order of orders) {
    if (order.what !== 'bass strings' || order.state === 'cancelled') continue;
    const { comparisons } = receivedStrings(order, signed, tolerances, language);
    order.bassStrings.forEach(({ key, string }, index) => {
      const own = comparisons.filter((one) => one.key === key && one.string === string);
      // A string that was measured is here, whatever was counted. Line and string of a bass order go by the same number.
      const isHere = own.length > 0 || order.lines[index]?.outstanding === 0;
      const beyond = own.filter(({ is }) => is === 'beyond tolerance');
      last.set(`${key}/${string}`, {
        key,
        string,
        name: `${noteName(key)} ${string}`,
        order: order.id,
        supplier: order.supplier,
        is: stateOf(isHere, own, beyond),
        says: beyond.map(({ sentence, signed: by }) =>
          by === undefined
            ? sentence
            : language.say('{sentence} Taken by {name}: {reason}', {
                sentence,
                name: by.name,
                reason: by.reason,
              }),
        ),
      });
    });
  }
  return [...last.values()].sort((a, b) => a.key - b.key || a.string - b.string);
}

function stateOf(
  isHere: boolean,
  own: readonly ReceivedComparison[],
  beyond: readonly ReceivedComparison[],
): GoingOnState {
  if (!isHere) return 'not here';
  if (own.length === 0) return 'not measured';
  if (beyond.some(({ signed }) => signed === undefined)) return 'differs';
  return beyond.length > 0 ? 'taken by name' : 'may go on';
}
