import { english, type Language, noteName } from '@becket/core';
import { type Job, type StringPlace, stringsInOrder, type Ulid } from '@becket/journal';
import { type FactToRecord, recordFacts, type TaskContext, takeBackEntry } from '@becket/tasks';
import { type Observable, observable } from '../../parts/observable.ts';

/** One string of a section, with what has been said of its wire. */
export interface LoopString extends StringPlace {
  /** 'C4·2' */
  readonly name: string;
  readonly note: string;
  readonly isWound: boolean;
  readonly joined: 'looped' | 'tied' | 'unknown' | undefined;
  /** The name of the string at the other end of its wire. */
  readonly withString: string | undefined;
  readonly entry: Ulid | undefined;
  /** What has been said of its wire; undefined while nothing has. */
  readonly path: WirePath | undefined;
}
type WirePath = Job['wirePaths'][number];

/** The strings of a section in order, bass to treble, string 1 first. */
export function loopStrings(job: Job, section: string | undefined): LoopString[] {
  const range = job.sections.find((one) => one.section === section);
  const paths = new Map(
    job.wirePaths.flatMap((path) => path.strings.map((string) => [nameOf(string), path] as const)),
  );
  return stringsInOrder(job)
    .filter(({ key }) => range !== undefined && range.firstKey <= key && key <= range.lastKey)
    .map((string) => {
      const name = nameOf(string);
      const path = paths.get(name);
      const other = path?.strings.map(nameOf).find((one) => one !== name);
      return {
        ...string,
        name,
        note: noteName(string.key),
        isWound: job.unisons.get(string.key)?.winding === 'wound',
        joined: path?.joined,
        withString: other,
        entry: path?.entry,
        path,
      };
    });
}

const nameOf = ({ key, string }: StringPlace): string => `${noteName(key)}·${string}`;
const placeOf = ({ key, string }: LoopString): StringPlace => ({ key, string });

const looped = (one: LoopString, other: LoopString): FactToRecord => ({
  kind: 'wire-path',
  strings: [placeOf(one), placeOf(other)],
  joined: 'looped',
  ...(one.withString === other.name || isAlone(one) ? detailsOf(one) : {}),
});
const tied = (one: LoopString): FactToRecord => ({
  kind: 'wire-path',
  strings: [placeOf(one)],
  joined: 'tied',
  ...(isAlone(one) ? detailsOf(one) : {}),
});

/** Tied, or not known to share its wire: then what was said of the wire was said of this string. */
const isAlone = ({ path }: LoopString): boolean => path?.strings.length === 1;
const isOpen = ({ joined }: LoopString): boolean => joined === undefined || joined === 'unknown';

/** What belongs to a wire and not to how it is joined: it stays when the same wire is said again. */
function detailsOf({ path }: LoopString): Pick<WirePath, 'hitchPin' | 'otherHitchPin' | 'note'> {
  const { hitchPin, otherHitchPin, note } = path ?? {};
  return {
    ...(hitchPin === undefined ? {} : { hitchPin }),
    ...(otherHitchPin === undefined ? {} : { otherHitchPin }),
    ...(note === undefined ? {} : { note }),
  };
}

export interface WireForm {
  readonly hitchPin: string;
  readonly otherHitchPin: string;
  readonly note: string;
}
export const wireFormOf = ({ path }: LoopString): WireForm => ({
  hitchPin: path?.hitchPin ?? '',
  otherHitchPin: path?.otherHitchPin ?? '',
  note: path?.note ?? '',
});

/** Where a wire turns and what is odd about it. How it is joined stays as it was said, or stays unknown. */
export function sayOfWire(
  one: LoopString,
  form: WireForm,
  at: number,
  { say }: Language = english,
): LoopAction {
  const [hitchPin, otherHitchPin, note] = [form.hitchPin, form.otherHitchPin, form.note].map((text) =>
    text.trim(),
  );
  if (hitchPin === '' && otherHitchPin !== '')
    throw new RangeError(
      say(
        'Cannot keep this wire: its first hitch pin is needed beside the second, none was found. Fill in the first, or clear both.',
      ),
    );
  return {
    title: say('{name}: its wire', { name: one.name }),
    facts: [
      {
        kind: 'wire-path',
        strings: one.path?.strings ?? [placeOf(one)],
        joined: one.path?.joined ?? 'unknown',
        ...(hitchPin ? { hitchPin } : {}),
        ...(otherHitchPin ? { otherHitchPin } : {}),
        ...(note ? { note } : {}),
      },
    ],
    next: at,
  };
}

/**
 * The hitch pins of every wire from a string to the end of its section, numbered on from a number, one pin a wire; a wire
 * that was said to lie round two has two.
 * Wires that nobody has said yet are left out: what would be numbered is not known.
 */
export function numberPinsFrom(
  strings: readonly LoopString[],
  index: number,
  start: string,
  { say }: Language = english,
): LoopAction {
  const first = Number(start.trim());
  if (!/^\d{1,3}$/.test(start.trim()))
    throw new RangeError(
      say(
        "Cannot number the hitch pins: a whole number to begin with is needed, '{found}' was found. Type the number of this wire's pin.",
        { found: start.trim() },
      ),
    );
  const seen = new Set<string>();
  const facts: FactToRecord[] = [];
  let pin = first;
  for (const { path } of strings.slice(index)) {
    if (path === undefined || seen.has(path.entry)) continue;
    seen.add(path.entry);
    facts.push({
      kind: 'wire-path',
      strings: path.strings,
      joined: path.joined,
      hitchPin: String(pin++),
      ...(path.otherHitchPin === undefined ? {} : { otherHitchPin: String(pin++) }),
      ...(path.note === undefined ? {} : { note: path.note }),
    });
  }
  if (facts.length === 0)
    throw new RangeError(
      say(
        'Cannot number the hitch pins: wires that are said are needed, none was found from here on. Say first which strings share a wire.',
      ),
    );
  return {
    title: say('{count} hitch pins from {first} on', { count: facts.length, first }),
    facts,
    next: index,
  };
}

/** What an action on the board says, and the string that comes next. */
export interface LoopAction {
  readonly title: string;
  readonly facts: readonly FactToRecord[];
  /** Index of the string to go on with. */
  readonly next: number;
}

/** One wire over this string and its next neighbour; undefined at the end of the section. */
export function loopWithNext(
  strings: readonly LoopString[],
  index: number,
  language: Language = english,
): LoopAction | undefined {
  const one = strings[index];
  const other = strings[index + 1];
  if (one === undefined || other === undefined) return undefined;
  return loopOf(one, other, Math.min(index + 2, strings.length - 1), language);
}

export function tie(
  strings: readonly LoopString[],
  index: number,
  { say }: Language = english,
): LoopAction | undefined {
  const one = strings[index];
  if (one === undefined) return undefined;
  return {
    title: say('{name} tied', { name: one.name }),
    facts: [tied(one)],
    next: Math.min(index + 1, strings.length - 1),
  };
}

/** Somebody looked, and could not tell how this string's wire runs. */
export function notKnown(
  strings: readonly LoopString[],
  index: number,
  { say }: Language = english,
): LoopAction | undefined {
  const one = strings[index];
  if (one === undefined) return undefined;
  return {
    title: say('{name} unknown', { name: one.name }),
    facts: [
      {
        kind: 'wire-path',
        strings: [placeOf(one)],
        joined: 'unknown',
        ...(isAlone(one) ? detailsOf(one) : {}),
      },
    ],
    next: Math.min(index + 1, strings.length - 1),
  };
}

/**
 * The usual pattern from a string to the end of its section: plain strings looped in neighbouring pairs, a last one
 * without a neighbour tied, every wound string tied. Strings whose wire was said before keep it, the first excepted.
 * Common practice, no source: it is a proposal that saves saying each, and what differs is said over it.
 */
export function loopOnFrom(
  strings: readonly LoopString[],
  index: number,
  { say }: Language = english,
): LoopAction | undefined {
  const first = strings[index];
  if (first === undefined) return undefined;
  const facts: FactToRecord[] = [];
  const isFree = (at: number) => at === index || (strings[at] !== undefined && isOpen(strings[at]));
  for (let at = index; at < strings.length; at += 1) {
    const one = strings[at]!;
    if (!isFree(at)) continue;
    const other = strings[at + 1];
    if (one.isWound || other === undefined || other.isWound || !isFree(at + 1)) facts.push(tied(one));
    else {
      facts.push(looped(one, other));
      at += 1;
    }
  }
  return {
    title: say('{count} wires from {name} on', { count: facts.length, name: first.name }),
    facts,
    next: strings.length - 1,
  };
}

/** What a tap means: choose a string, let it go, or join it with the one that was chosen before. */
export function tapOn(
  strings: readonly LoopString[],
  chosen: number | undefined,
  index: number,
  language: Language = english,
): { readonly do: 'choose' | 'let go' } | { readonly do: 'join'; readonly action: LoopAction } {
  if (chosen === index) return { do: 'let go' };
  const [one, other] = [strings[chosen ?? -1], strings[index]];
  if (one === undefined || other === undefined || !isOpen(one) || !isOpen(other)) return { do: 'choose' };
  const inOrder = chosen! < index ? ([one, other] as const) : ([other, one] as const);
  return {
    do: 'join',
    action: loopOf(...inOrder, Math.min(Math.max(chosen!, index) + 1, strings.length - 1), language),
  };
}

function loopOf(one: LoopString, other: LoopString, next: number, { say }: Language = english): LoopAction {
  return {
    title: say('{first} and {second} on one wire', { first: one.name, second: other.name }),
    facts: [looped(one, other)],
    next,
  };
}

/** What can be taken back on the board, the latest last. It lasts as long as the page. */
export interface LoopStep {
  readonly title: string;
  readonly entries: readonly Ulid[];
  /** Index of the string it was made at, to go back to. */
  readonly at: number;
}
const stepsByJob = new Map<Ulid, Observable<readonly LoopStep[]>>();
export function loopStepsOf(job: Ulid): Observable<readonly LoopStep[]> {
  const known = stepsByJob.get(job) ?? observable<readonly LoopStep[]>([]);
  stepsByJob.set(job, known);
  return known;
}

/** Keeps what an action says, all or none. */
export async function keepAction(
  context: TaskContext,
  job: Ulid,
  { title, facts }: LoopAction,
  { at, said }: { readonly at: number; readonly said: { readonly reason?: string } },
): Promise<LoopStep> {
  const { entries } = await recordFacts(
    context,
    job,
    facts.map((fact) => ({ ...fact, ...said })),
  );
  return { title, entries, at };
}

/** Takes a step back, the last entry of it first. */
export async function undoLoopStep(
  context: TaskContext,
  job: Ulid,
  { entries }: LoopStep,
  said: { readonly reason?: string | undefined; readonly otherwise: string },
): Promise<true> {
  for (const entry of [...entries].reverse()) await takeBackEntry(context, job, entry, said);
  return true;
}
