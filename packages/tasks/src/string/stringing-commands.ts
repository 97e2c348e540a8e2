import { english, noteName } from '@becket/core';
import {
  type Entry,
  type FactOf,
  foldJob,
  foldOrders,
  foldStringing,
  type Stringing,
  stringName,
  type Ulid,
} from '@becket/journal';
import { entriesFor, entriesOf, type TaskContext } from '../context.ts';
import { requireDescribedString } from '../on-this-piano.ts';
import { receivedTolerancesOf } from '../order/allowances.ts';
import { readShop } from '../order/shop.ts';
import { stringsToGoOn } from '../order/strings-to-go-on.ts';
import { heldBack } from './stringing-course.ts';

/** A wire as a person says that it is on. */
export type WireToPutOn = Omit<FactOf<'wire-on'>, 'kind' | 'v'>;
export type StringingMishapToNote = Omit<FactOf<'stringing-mishap'>, 'kind' | 'v'>;

export interface StringingOutcome {
  readonly stringing: Stringing;
  /** The new entry. */
  readonly entry: Ulid;
}

/**
 * Notes that a wire is on.
 *
 * Throws: RangeError when a string is not on this piano or carries a wire already, or a bass string that was ordered is not
 * here, not measured, or differs from its order without being taken by name. Nothing is stored then.
 */
export async function putWireOn(
  context: TaskContext,
  job: Ulid,
  wire: WireToPutOn,
): Promise<StringingOutcome> {
  const language = context.language ?? english;
  const { say } = language;
  const entries = await entriesOf(context, job);
  const state = foldJob(entries);
  const { wires } = foldStringing(entries);
  for (const string of wire.strings) {
    requireDescribedString(state, { ...string, what: say('this wire') }, language);
    const there = wires.get(stringName(string));
    if (there !== undefined)
      throw new RangeError(
        say(
          'Cannot note this wire: a bare string is needed, {note} string {string} carries one that {by} noted. Take that back, or note what went wrong with it.',
          { note: noteName(string.key), string: string.string, by: there.by },
        ),
      );
  }
  const isWound = wire.strings.some(({ key }) => state.unisons.get(key)?.winding === 'wound');
  if (isWound) {
    const { allowances } = await readShop(context);
    const ordered = stringsToGoOn(foldOrders(entries), receivedTolerancesOf(allowances), language);
    const names = new Set(wire.strings.map(stringName));
    const held = ordered.filter((one) => names.has(stringName(one))).map((one) => heldBack(one, language));
    const sentence = held.find((one) => one !== undefined);
    if (sentence !== undefined)
      throw new RangeError(
        say('Cannot note this string: one that may go on is needed. {sentence}', { sentence }),
      );
  }
  return add(context, { job, existing: entries }, { kind: 'wire-on', v: 1, ...wire });
}

/**
 * Notes what went wrong with a wire while the piano is strung, and whether it came off.
 *
 * Throws: RangeError when a string is not on this piano, a wire came off where none is on, or something else has no words.
 * Nothing is stored then.
 */
export async function noteStringingMishap(
  context: TaskContext,
  job: Ulid,
  mishap: StringingMishapToNote,
): Promise<StringingOutcome> {
  const language = context.language ?? english;
  const { say } = language;
  const entries = await entriesOf(context, job);
  const state = foldJob(entries);
  const { wires } = foldStringing(entries);
  for (const string of mishap.strings) {
    requireDescribedString(state, { ...string, what: say('this wire') }, language);
    if (mishap.isOff && !wires.has(stringName(string)))
      throw new RangeError(
        say(
          'Cannot note that this wire came off: a string that carries one is needed, {note} string {string} is bare. Choose another string, or note it without its coming off.',
          { note: noteName(string.key), string: string.string },
        ),
      );
  }
  if (mishap.what === 'other' && (mishap.note ?? '').trim() === '')
    throw new RangeError(
      say('Cannot keep this: words are needed for what went wrong, none were found. Say what it was.'),
    );
  return add(context, { job, existing: entries }, { kind: 'stringing-mishap', v: 1, ...mishap });
}

async function add(
  context: TaskContext,
  { job, existing }: { readonly job: Ulid; readonly existing: readonly Entry[] },
  fact: FactOf<'wire-on' | 'stringing-mishap'>,
): Promise<StringingOutcome> {
  const entries = entriesFor(context, { job, facts: [fact], existing });
  await context.store.append(entries);
  return { stringing: foldStringing([...existing, ...entries]), entry: entries[0]!.id };
}
