import { english, type Language, type Message, message, noteName } from '@becket/core';
import {
  type Absence,
  type FactOf,
  type Job,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  type StandingReading,
  stringsInOrder,
  type Ulid,
  unitsForDimension,
} from '@becket/journal';
import {
  type ReadingToRecord,
  readJob,
  recordAbsence,
  recordReadings,
  type TaskContext,
} from '@becket/tasks';
import { type LengthUnit, type ShownUnit, unitSign } from '../../parts/length-text.ts';
import { type Observable, observable } from '../../parts/observable.ts';
import { numberAsTyped } from '../../parts/typed-number.ts';
import type { Instrument } from './instruments-state.ts';
import { alsoAs, type Committed, readingText, reasonFor, takeBackWhole } from './record-state.ts';
import type { StringOrder } from './string-order.ts';
import { absenceKeys } from './typed-cell.ts';
import { readTypedReading } from './typed-reading.ts';

/** What belongs to one string and its pin, in the order of the wire; and which strings have it. */
export const stringQuantities = {
  'The wire': {
    'wire-diameter': 'plain',
    'core-diameter': 'wound',
    'inner-layer-diameter': 'wound twice',
    'over-all-diameter': 'wound',
  },
  Lengths: {
    'speaking-length': 'any',
    'front-length': 'any',
    'back-length': 'any',
    'bare-front': 'wound',
    'bare-back': 'wound',
    'loop-to-winding': 'wound',
    'winding-length': 'wound',
  },
  'Tuning pin': {
    'pin-diameter': 'any',
    'pin-length': 'any',
    'pin-height': 'any',
    'pin-coils': 'any',
  },
  'Hitch pin': { 'hitch-pin-diameter': 'any' },
} as const satisfies Record<
  string,
  Partial<Record<ReadingQuantityName, 'any' | 'plain' | 'wound' | 'wound twice'>>
>;
const belongsTo = Object.assign({}, ...Object.values(stringQuantities)) as Partial<
  Record<ReadingQuantityName, 'any' | 'plain' | 'wound' | 'wound twice'>
>;

/** Usual points to read at; any other may be named. Common practice, no source. */
export function usualPoints(quantity: ReadingQuantityName): readonly Message[] {
  if (quantity.startsWith('pin-'))
    return [
      message('at the top'),
      message('above the coils'),
      message('below the coils'),
      message('at the thread'),
    ];
  if (quantity === 'hitch-pin-diameter') return [message('at the plate'), message('where the wire lies')];
  return readingQuantities[quantity].label.includes('diameter')
    ? [
        message('near the front termination'),
        message('in the middle'),
        message('near the bridge'),
        message('front length'),
        message('back length'),
      ]
    : [];
}

/** Points to offer: those that readings of this job name already, then the usual ones. */
export function pointsOf(job: Job, quantity: ReadingQuantityName, { say }: Language = english): string[] {
  const used = job.readings
    .filter((one) => one.quantity === quantity && one.place.point !== undefined)
    .map(({ place }) => place.point!);
  return [...new Set([...used, ...usualPoints(quantity).map((point) => say(point))])];
}

/** One string of a section, with what was read of it. */
export interface StringRow {
  readonly key: number;
  readonly string: number;
  /** 'C4·2' */
  readonly name: string;
  /** Readings of this string, in the order they were taken. */
  readonly readings: readonly StandingReading[];
  /** Readings of its note that name no string. */
  readonly ofNote: number;
  readonly absence: Absence | undefined;
}

/** The strings of a section that have this quantity, bass to treble. */
export function stringRows(
  job: Job,
  { section, quantity }: { readonly section: string | undefined; readonly quantity: ReadingQuantityName },
): StringRow[] {
  const range = job.sections.find((one) => one.section === section);
  if (range === undefined) return [];
  const own = job.readings.filter((one) => one.quantity === quantity && one.stage === 'as found');
  return stringsInOrder(job)
    .filter(({ key }) => range.firstKey <= key && key <= range.lastKey && hasQuantity(job, key, quantity))
    .map(({ key, string }) => {
      const ofKey = own.filter(({ place }) => place.key === key);
      const readings = ofKey.filter(({ place }) => place.string === string);
      const absence = job.absences.findLast(
        ({ quantity: of, place }) => of === quantity && place.key === key && place.string === string,
      );
      return {
        key,
        string,
        name: `${noteName(key)}·${string}`,
        readings,
        ofNote: ofKey.filter(({ place }) => place.string === undefined).length,
        absence: readings.length === 0 ? absence?.answer : undefined,
      };
    });
}

/** The as-found readings of a quantity that name this string. */
const readingsOfString = (
  { readings }: Job,
  quantity: ReadingQuantityName,
  { key, string }: { readonly key: number; readonly string: number },
): StandingReading[] =>
  readings.filter(
    (one) =>
      one.quantity === quantity &&
      one.stage === 'as found' &&
      one.place.key === key &&
      one.place.string === string,
  );

function hasQuantity(job: Job, key: number, quantity: ReadingQuantityName): boolean {
  const unison = job.unisons.get(key);
  const which = belongsTo[quantity];
  if (which === 'any') return true;
  return which === 'wound twice' ? unison?.layers === 2 : which === unison?.winding;
}

/** The quantities that the strings of a section have. */
export function quantitiesIn(job: Job, section: string | undefined): ReadingQuantityName[] {
  const range = job.sections.find((one) => one.section === section);
  const keys = [...job.unisons.keys()].filter(
    (key) => range !== undefined && range.firstKey <= key && key <= range.lastKey,
  );
  return (Object.keys(belongsTo) as ReadingQuantityName[]).filter((quantity) =>
    keys.some((key) => hasQuantity(job, key, quantity)),
  );
}

export type Condition = NonNullable<FactOf<'reading'>['condition']>;
/** What is said of all readings taken now, until it is changed. */
export interface StringRound {
  readonly quantity: ReadingQuantityName;
  readonly point: string;
  readonly strings: 'not said' | Exclude<Condition['strings'], 'unknown'>;
  readonly surface: 'not said' | NonNullable<Condition['surface']>;
  /** Where Enter goes. */
  readonly order: StringOrder;
}
export const newStringRound: StringRound = {
  quantity: 'wire-diameter',
  point: '',
  strings: 'not said',
  surface: 'not said',
  order: 'next',
};

const roundByJob = new Map<Ulid, Observable<StringRound>>();
/** What is being read in this job, kept while the program is open: who looks elsewhere comes back to the same round. */
export function stringRoundOf(job: Ulid): Observable<StringRound> {
  const known = roundByJob.get(job) ?? observable(newStringRound);
  roundByJob.set(job, known);
  return known;
}

/** The unit that a number without one is read in: the instrument's, or the screen's for lengths. */
export function unitInHand(
  quantity: ReadingQuantityName,
  instrument: Instrument | undefined,
  screenUnit: LengthUnit,
): ReadUnit {
  const { dimension } = readingQuantities[quantity];
  return instrument?.unit ?? (dimension === 'length' ? screenUnit : unitsForDimension(dimension)[0]!);
}

/** The condition that a round states; undefined where nothing is said. */
export function conditionOf({ strings, surface }: StringRound): Condition | undefined {
  if (strings === 'not said' && surface === 'not said') return undefined;
  return {
    strings: strings === 'not said' ? 'unknown' : strings,
    ...(surface === 'not said' ? {} : { surface }),
  };
}

interface Around {
  readonly round: StringRound;
  readonly instrument: Instrument | undefined;
  readonly screenUnit: LengthUnit;
  /** After the seal; empty before it. */
  readonly reason: string;
}

/**
 * Keeps what was typed for one string: a number is a further reading, a sign one of the three answers, which takes back
 * the readings of that string that it contradicts.
 *
 * Gives back undefined when nothing was typed. Throws as the tasks do; nothing is kept then.
 */
export async function commitString(
  context: TaskContext,
  job: string,
  { key, string, name }: Pick<StringRow, 'key' | 'string' | 'name'>,
  text: string,
  around: Around,
  language: Language = english,
): Promise<Committed | undefined> {
  const word = text.trim().toLowerCase();
  if (word === '') return undefined;
  const { quantity } = around.round;
  const { say } = language;
  const title = `${name} ${say(readingQuantities[quantity].label)}`;
  const said = around.reason.trim() === '' ? {} : { reason: around.reason.trim() };
  const answer = absenceKeys.find(({ answer: full, typed }) => typed.includes(word) || full === word)?.answer;
  if (answer !== undefined) {
    // Before anything is taken back: what is refused leaves everything as it was.
    const why = await reasonFor(
      context,
      job,
      around.reason,
      say('found to be: {answer}', { answer: say(answer) }),
    );
    const contradicted = readingsOfString(await readJob(context, job), quantity, { key, string });
    const entries: Ulid[] = [];
    for (const { entry } of contradicted) entries.push(...(await takeBackWhole(context, job, entry, why)));
    const changed = await recordAbsence(context, job, { quantity, place: { key, string }, answer, ...said });
    const last = changed.absences.at(-1)?.entry;
    return {
      readBack: { is: 'saved', title, value: say(answer), alsoAs: undefined },
      step: { title, entries: last === undefined ? entries : [...entries, last] },
    };
  }
  const reading = { ...readingOf(text, { key, string }, around, language), ...said };
  const { entries, job: changed } = await recordReadings(context, job, [reading]);
  const kept = changed.readings.findLast(({ entry }) => entry === entries[0])!;
  const at = reading.place.point === undefined ? '' : `, ${reading.place.point}`;
  return {
    readBack: {
      is: 'saved',
      title: `${title}${at}`,
      value: `${numberAsTyped(text, reading.value, language)} ${unitSign(reading.unit)}`,
      alsoAs: alsoAs(kept, reading.unit, language),
    },
    step: { title, entries },
  };
}

function readingOf(
  text: string,
  place: { readonly key: number; readonly string: number },
  { round, instrument, screenUnit }: Around,
  language: Language = english,
): ReadingToRecord {
  const { say } = language;
  const typed = readTypedReading(text, round.quantity, language);
  if (typed.is !== 'number')
    throw new RangeError(
      typed.is === 'problem' ? typed.sentence : say('Cannot record nothing: type a number.'),
    );
  const point = round.point.trim();
  return {
    quantity: round.quantity,
    place: { ...place, ...(point === '' ? {} : { point }) },
    value: typed.value,
    unit: (typed.unit as ReadUnit | undefined) ?? unitInHand(round.quantity, instrument, screenUnit),
    condition: conditionOf(round),
    instrument: instrument?.instrument,
  };
}

/** '1.025 mm, near the bridge, cleaned' */
export function stringReadingWords(
  reading: StandingReading,
  unit: ShownUnit,
  language: Language = english,
): string {
  const { say } = language;
  const { place, condition } = reading;
  return [
    readingText(reading, unit, language),
    place.point,
    condition === undefined || condition.strings === 'unknown' || condition.strings === 'on'
      ? undefined
      : say('strings {is, select, down {let down} other {off}}', {
          is: condition.strings === 'let down' ? 'down' : 'off',
        }),
    condition?.surface && say(condition.surface),
  ]
    .filter((part) => part !== undefined)
    .join(', ');
}
