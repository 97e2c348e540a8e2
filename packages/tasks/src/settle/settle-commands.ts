import { cents, english, noteName, PUBLISHED_STRENGTH_TABLES } from '@becket/core';
import {
  type Fact,
  type FactOf,
  foldJob,
  foldSettling,
  type Job,
  type Pass,
  type Settling,
  settlingLimits,
  type Ulid,
} from '@becket/journal';
import { entriesFor, entriesOf, type TaskContext } from '../context.ts';
import { requireDay } from './require-day.ts';

/** A pass as a person begins it; what is left out is not known, but for its number and its pitch. */
export interface PassToBegin extends Partial<Omit<FactOf<'pass-begun'>, 'kind' | 'v'>> {
  readonly on: string;
}

/** One value of a pass. Its pass is named by its entry. */
export type PassValueToRecord = Omit<FactOf<'pass-read'>, 'kind' | 'v'>;
export type MishapToRecord = Omit<FactOf<'pass-mishap'>, 'kind' | 'v'>;

/** A whole pass, for whoever has it on paper already. */
export interface PassToRecord extends PassToBegin {
  readonly values: readonly Omit<PassValueToRecord, 'passBegun'>[];
  readonly mishaps?: readonly Omit<MishapToRecord, 'passBegun'>[] | undefined;
}

export type FollowUpToPlan = Omit<FactOf<'follow-up-planned'>, 'kind' | 'v'>;
export type FollowUpToRecord = Omit<FactOf<'follow-up-done'>, 'kind' | 'v'>;

export interface SettlingOutcome {
  readonly job: Job;
  readonly settling: Settling;
  /** The new entries, in the order of what was handed in. */
  readonly entries: readonly Ulid[];
}

/**
 * Begins a pass: number, day, pitch, air and the order in which the sections are pulled up. The number is the next one, the
 * pitch that of the piano and the order that of its sections where they are not given.
 *
 * Throws: RangeError when no section is described, the order names another section, the number is taken, or the day is none.
 * Nothing is stored then.
 */
export async function beginPass(
  context: TaskContext,
  job: Ulid,
  pass: PassToBegin,
): Promise<SettlingOutcome> {
  return add(context, job, (state, settling) => [begunFact(context, state, settling, pass)]);
}

/**
 * Keeps values of a pass, all or none; a later value of the same place stands in place of an earlier one.
 *
 * Throws: RangeError when there is no such pass or section, the note is not in the section, the offset is beyond what a string
 * can stand at, or an overpull is below 0 or above what keeps every string within its share of the break load. Nothing is
 * stored then.
 */
export async function recordPassValues(
  context: TaskContext,
  job: Ulid,
  values: readonly PassValueToRecord[],
): Promise<SettlingOutcome> {
  return add(context, job, (state, settling) =>
    values.map((value) => {
      const pass = passOf(context, settling, value.passBegun);
      requireValue(context, state, value, { pass, limit: settling.limit });
      return { kind: 'pass-read', v: 1, ...value };
    }),
  );
}

/**
 * Notes a string that broke or slipped in a pass, or whatever else went wrong.
 *
 * Throws: RangeError when there is no such pass, the string is not on this piano, a string that broke or slipped is not
 * named, or something else has no words. Nothing is stored then.
 */
export async function recordMishap(
  context: TaskContext,
  job: Ulid,
  mishap: MishapToRecord,
): Promise<SettlingOutcome> {
  return add(context, job, (state, settling) => {
    passOf(context, settling, mishap.passBegun);
    requireMishap(context, state, mishap);
    return [{ kind: 'pass-mishap', v: 1, ...mishap }];
  });
}

/**
 * Keeps a whole pass at once, all or nothing of it.
 *
 * Throws: as `beginPass`, `recordPassValues` and `recordMishap`. Nothing is stored then.
 */
export async function recordPass(
  context: TaskContext,
  job: Ulid,
  { values, mishaps = [], ...pass }: PassToRecord,
): Promise<SettlingOutcome> {
  const entries = await entriesOf(context, job);
  const state = foldJob(entries);
  const settling = foldSettling(entries);
  const begun = entriesFor(context, {
    job,
    facts: [begunFact(context, state, settling, pass)],
    existing: entries,
  });
  const passBegun = begun[0]!.id;
  const facts: Fact[] = [
    ...values.map((value): Fact => {
      const fact = { kind: 'pass-read', v: 1, passBegun, ...value } as const;
      requireValue(context, state, fact, {
        pass: begun[0]!.fact as FactOf<'pass-begun'>,
        limit: settling.limit,
      });
      return fact;
    }),
    ...mishaps.map((mishap): Fact => {
      const fact = { kind: 'pass-mishap', v: 1, passBegun, ...mishap } as const;
      requireMishap(context, state, fact);
      return fact;
    }),
  ];
  const further = entriesFor(context, { job, facts, existing: [...entries, ...begun] });
  return keep(context, entries, [...begun, ...further]);
}

export type OverpullLimitToSet = Omit<FactOf<'overpull-limit-set'>, 'kind' | 'v'>;

/** Beyond these a share is a slip: below, no piano would come to pitch; above, no wire is safe. Our own bounds. */
const SHARES = { least: 0.2, most: 0.9 } as const;

/**
 * Sets how far up the strings of this job may be pulled. `withdrawEntry` takes it back: the limit before it holds again.
 * Throws: RangeError when the share is none, the table is not one of ours, or nobody says whose limit it is. Nothing is stored
 * then.
 */
export async function setOverpullLimit(
  context: TaskContext,
  job: Ulid,
  limit: OverpullLimitToSet,
): Promise<SettlingOutcome> {
  const { say, plain } = context.language ?? english;
  const { highestBreakShare, strengthTable, source } = limit;
  const percent = (share: number) => plain(Number((100 * share).toPrecision(6)));
  if (!(highestBreakShare >= SHARES.least && highestBreakShare <= SHARES.most))
    throw new RangeError(
      say(
        'Cannot set this limit: from {least} to {most} % of the break load are needed, {found} was found. Type it again.',
        {
          least: percent(SHARES.least),
          most: percent(SHARES.most),
          found: percent(highestBreakShare),
        },
      ),
    );
  if (!PUBLISHED_STRENGTH_TABLES.some(({ name }) => name === strengthTable))
    throw new RangeError(
      say(
        'Cannot set this limit: a table of break loads is needed ({names}), ‘{found}’ was found. Choose one of them.',
        { names: PUBLISHED_STRENGTH_TABLES.map(({ name }) => name).join(', '), found: strengthTable },
      ),
    );
  if (source.trim() === '')
    throw new RangeError(
      say(
        'Cannot set this limit: whose limit it is is needed, nothing was found. Say whose experience or which source it is.',
      ),
    );
  return add(context, job, () => [{ kind: 'overpull-limit-set', v: 1, ...limit, source: source.trim() }]);
}

/**
 * Plans a day on which the piano is seen again.
 * Throws: RangeError when the day is none, or the same is planned for it already. Nothing is stored then.
 */
export async function planFollowUp(
  context: TaskContext,
  job: Ulid,
  plan: FollowUpToPlan,
): Promise<SettlingOutcome> {
  return add(context, job, (_, { followUps }) => {
    requireDay(context, plan.on);
    const { say, day } = context.language ?? english;
    if (followUps.some(({ on, what, done }) => on === plan.on && what === plan.what && done === undefined))
      throw new RangeError(
        say(
          'Cannot plan this: one follow-up of a kind on one day is needed, {day} has it already. Choose another day, or take the first back.',
          { day: day(plan.on) },
        ),
      );
    return [{ kind: 'follow-up-planned', v: 1, ...plan }];
  });
}

/**
 * Says that a follow-up was done, with the day and the air.
 * Throws: RangeError when it was not planned, is done already, or the day is none. Nothing is stored then.
 */
export async function recordFollowUp(
  context: TaskContext,
  job: Ulid,
  outcome: FollowUpToRecord,
): Promise<SettlingOutcome> {
  return add(context, job, (_, { followUps }) => {
    requireDay(context, outcome.on);
    const { say, day } = context.language ?? english;
    const planned = followUps.find(({ entry }) => entry === outcome.followUp);
    if (planned === undefined)
      throw new RangeError(
        say(
          'Cannot keep this follow-up: one that was planned is needed, none of that name was found. Plan it first.',
        ),
      );
    if (planned.done !== undefined)
      throw new RangeError(
        say(
          'Cannot keep this follow-up: one that is not done yet is needed, it was done on {day}. Take that back first.',
          { day: day(planned.done.on) },
        ),
      );
    return [{ kind: 'follow-up-done', v: 1, ...outcome }];
  });
}

type Facts = (state: Job, settling: Settling) => readonly Fact[];

async function add(context: TaskContext, job: Ulid, factsOf: Facts): Promise<SettlingOutcome> {
  const existing = await entriesOf(context, job);
  const facts = factsOf(foldJob(existing), foldSettling(existing));
  return keep(context, existing, entriesFor(context, { job, facts, existing }));
}

async function keep(
  context: TaskContext,
  existing: Awaited<ReturnType<typeof entriesOf>>,
  added: ReturnType<typeof entriesFor>,
): Promise<SettlingOutcome> {
  const all = [...existing, ...added];
  const job = foldJob(all);
  await context.store.append(added);
  return { job, settling: foldSettling(all), entries: added.map(({ id }) => id) };
}

function begunFact(
  context: TaskContext,
  { sections, piano }: Job,
  { passes }: Settling,
  pass: PassToBegin,
): FactOf<'pass-begun'> {
  const { say } = context.language ?? english;
  const names = sections.map(({ section }) => section);
  if (names.length === 0)
    throw new RangeError(
      say(
        'Cannot begin a pass: the sections of the piano are needed, none is described. Describe them under Record first.',
      ),
    );
  requireDay(context, pass.on);
  const strange = pass.order?.find((section) => !names.includes(section));
  if (strange !== undefined) throw new RangeError(strangeSection(context, names, strange));
  const number = pass.pass ?? (passes.at(-1)?.pass ?? 0) + 1;
  if (passes.some((one) => one.pass === number))
    throw new RangeError(
      say(
        'Cannot begin pass {number}: a number that is not taken is needed, pass {number} is recorded already. Go on with it, or take it back.',
        { number },
      ),
    );
  const referencePitch_hz = pass.referencePitch_hz ?? piano?.referencePitch_hz ?? 440;
  if (!(referencePitch_hz >= 380 && referencePitch_hz <= 480))
    throw new RangeError(
      say(
        'Cannot begin a pass: a pitch of A4 from 380 to 480 Hz is needed, {found} Hz was found. Check the figure.',
        { found: referencePitch_hz },
      ),
    );
  return {
    kind: 'pass-begun',
    v: 1,
    ...pass,
    pass: number,
    referencePitch_hz,
    order: pass.order ?? names,
  };
}

function passOf(context: TaskContext, { passes }: Settling, entry: Ulid): Pass {
  const pass = passes.find((one) => one.entry === entry);
  if (pass !== undefined) return pass;
  throw new RangeError(
    (context.language ?? english).say(
      'Cannot keep this: a pass that was begun is needed, none of that name was found. It may have been taken back; begin a pass.',
    ),
  );
}

function requireValue(
  context: TaskContext,
  state: Job,
  { value, section: name, key, offset_cents }: PassValueToRecord,
  { pass, limit }: { readonly pass: Pick<Pass, 'referencePitch_hz'>; readonly limit: Settling['limit'] },
): void {
  const { say, fixed, plain } = context.language ?? english;
  const section = state.sections.find((one) => one.section === name);
  if (section === undefined)
    throw new RangeError(
      strangeSection(
        context,
        state.sections.map((one) => one.section),
        name,
      ),
    );
  if (key !== undefined && (key < section.firstKey || key > section.lastKey))
    throw new RangeError(
      say(
        'Cannot keep this pitch: a note of {section} is needed ({first} to {last}), {found} was found. Choose another note or section.',
        {
          section: name,
          first: noteName(section.firstKey),
          last: noteName(section.lastKey),
          found: noteName(key),
        },
      ),
    );
  const [low, high] = value === 'aimed' ? [0, 600] : [-1200, 600];
  if (!(offset_cents >= low && offset_cents <= high))
    throw new RangeError(
      value === 'aimed'
        ? say(
            'Cannot keep this overpull: from 0 to 600 cents above pitch are needed, {found} was found. Check the sign and the decimal mark.',
            { found: plain(offset_cents) },
          )
        : say(
            'Cannot keep this pitch: from −1200 to 600 cents are needed, {found} was found. Check the sign and the decimal mark.',
            { found: plain(offset_cents) },
          ),
    );
  if (value !== 'aimed' || offset_cents === 0) return;
  const { sections, highestBreakShare } = settlingLimits(state, limit);
  const nearest = sections.find((one) => one.section === name)?.nearest;
  if (nearest === undefined) return;
  const strungFor = state.piano?.referencePitch_hz ?? 440;
  const highest = cents(nearest.offset - 1200 * Math.log2(pass.referencePitch_hz / strungFor));
  if (offset_cents <= highest) return;
  throw new RangeError(
    say(
      'Cannot keep an overpull of {found} cents for {section}: at most {highest} cents are needed for {note} to stay within {share} % of its break load. Aim lower.',
      {
        found: plain(offset_cents),
        section: name,
        highest: fixed(Math.max(0, Math.floor(highest * 10) / 10), 1),
        note: noteName(nearest.key),
        share: plain(Number((highestBreakShare * 100).toPrecision(4))),
      },
    ),
  );
}

function requireMishap(context: TaskContext, state: Job, { what, key, string, note }: MishapToRecord): void {
  const { say } = context.language ?? english;
  if (what === 'other' ? (note ?? '').trim() === '' : key === undefined)
    throw new RangeError(
      what === 'other'
        ? say('Cannot keep this: words are needed for what went wrong, none were found. Say what it was.')
        : say('Cannot keep this: the note of the string is needed, none was found. Say which string it was.'),
    );
  if (key === undefined) return;
  const { piano } = state;
  if (piano !== undefined && (key < piano.firstKey || key > piano.lastKey))
    throw new RangeError(
      say('Cannot keep this: a note from {first} to {last} is needed, {found} was found. Check the note.', {
        first: noteName(piano.firstKey),
        last: noteName(piano.lastKey),
        found: noteName(key),
      }),
    );
  const strings = state.unisons.get(key)?.strings;
  if (string !== undefined && strings !== undefined && string > strings)
    throw new RangeError(
      say(
        'Cannot keep this: a string from 1 to {strings} of {note} is needed, string {found} was found. Check the string.',
        { strings, note: noteName(key), found: string },
      ),
    );
}

function strangeSection(context: TaskContext, names: readonly string[], found: string): string {
  const { say } = context.language ?? english;
  return names.length === 0
    ? say('Cannot keep this: a section of the piano is needed, none is described. Describe it first.')
    : say(
        'Cannot keep this: a section of this piano is needed ({names}), ‘{found}’ was found. Choose one of them.',
        { names: names.join(', '), found },
      );
}
