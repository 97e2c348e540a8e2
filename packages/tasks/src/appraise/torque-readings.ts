import {
  COMMON_SLIP_POLICIES,
  english,
  type Language,
  medianOf,
  type NewtonMetres,
  newtonMetres,
  noteName,
  type SlipUnit,
  slipQuestions,
  torqueText,
} from '@becket/core';
import {
  type Job,
  type pinFeels,
  type Reading,
  readingQuantities,
  type StandingReading,
  type Ulid,
} from '@becket/journal';
import type { PinStage } from './pin-pulls.ts';

export type PinFeel = (typeof pinFeels)[number];

/** What a reading says of the string and the way the pin was turned. 'not said' cannot be used for a grip. */
export type TorqueKind = 'sharp' | 'flat' | 'slack' | 'not said';
export const torqueKinds: readonly TorqueKind[] = ['sharp', 'flat', 'slack', 'not said'];

/** One torque reading. */
export interface TorqueRead {
  readonly entry: Ulid;
  readonly key: number;
  /** Undefined where the reading speaks of the note only. */
  readonly string: number | undefined;
  readonly torque: NewtonMetres;
  readonly asRead: Reading['asRead'];
  readonly kind: TorqueKind;
  readonly feel: PinFeel | undefined;
  readonly instrument: string | undefined;
  /** Standard uncertainty stated with the reading. */
  readonly uncertainty: NewtonMetres | undefined;
  readonly at: string;
  readonly relativeHumidity: HumidityAtReading | undefined;
}

/** The air when a torque was read. */
export interface HumidityAtReading {
  readonly percent: number;
  readonly from: 'said with the reading' | 'read the same day';
  /** The entry it rests on. */
  readonly entry: Ulid;
}

/** The torque readings of a stage that stand, those on a note in journal order; and how many say no note. */
export function torqueReadings(
  job: Job,
  stage: PinStage,
): { readonly readings: readonly TorqueRead[]; readonly withoutNote: number } {
  const own = job.readings.filter((one) => one.quantity === 'pin-torque' && one.stage === stage);
  const humidities = job.readings.filter((one) => one.quantity === 'relative-humidity');
  const readings = own.flatMap((reading): TorqueRead[] => {
    const { place, condition } = reading;
    if (place.key === undefined) return [];
    // A note with one string has one pin: there is nothing left to say.
    const string = place.string ?? (job.unisons.get(place.key)?.strings === 1 ? 1 : undefined);
    return [
      {
        entry: reading.entry,
        key: place.key,
        string,
        torque: newtonMetres(reading.value_si),
        asRead: reading.asRead,
        kind: kindOf(condition),
        feel: reading.feel,
        instrument: reading.instrument,
        uncertainty: reading.uncertainty_si === undefined ? undefined : newtonMetres(reading.uncertainty_si),
        at: reading.at,
        relativeHumidity: humidityAt(reading, humidities),
      },
    ];
  });
  return { readings, withoutNote: own.length - readings.length };
}

/** Mean of readings; undefined when there is none. */
export function meanTorque(readings: readonly TorqueRead[]): NewtonMetres | undefined {
  if (readings.length === 0) return undefined;
  return newtonMetres(readings.reduce((sum, { torque }) => sum + torque, 0) / readings.length);
}

function kindOf(condition: Reading['condition']): TorqueKind {
  if (condition === undefined) return 'not said';
  if (condition.strings === 'off' || condition.strings === 'let down') return 'slack';
  return condition.strings === 'on' ? (condition.turning ?? 'not said') : 'not said';
}

function humidityAt(
  reading: StandingReading,
  humidities: readonly StandingReading[],
): HumidityAtReading | undefined {
  const said = reading.condition?.relativeHumidity_percent;
  if (said !== undefined) return { percent: said, from: 'said with the reading', entry: reading.entry };
  const day = reading.at.slice(0, 10);
  const distance = (one: StandingReading) => Math.abs(Date.parse(one.at) - Date.parse(reading.at));
  const nearest = humidities
    .filter(({ at }) => at.slice(0, 10) === day)
    .sort((a, b) => distance(a) - distance(b))[0];
  return nearest && { percent: nearest.value_si, from: 'read the same day', entry: nearest.entry };
}

/** A doubt about a reading, or about all of them; never a refusal. */
export interface TorqueQuestion {
  readonly entries: readonly Ulid[];
  readonly sentence: string;
  /** What the reading would be in the other unit, where a slip of unit explains it. */
  readonly suggestion: NewtonMetres | undefined;
}

/** A whole set outside this is more likely in another unit than true. Common practice, no source. */
const USUAL_MIDDLE = [2, 30] as const;

/** Slips of unit (N·m for in·lbf) and jumps, each reading against those of its own kind. */
export function torqueQuestions(
  readings: readonly TorqueRead[],
  language: Language = english,
): TorqueQuestion[] {
  const policy = { ...COMMON_SLIP_POLICIES['pin-torque'], reach: 88 };
  const possible = readingQuantities['pin-torque'].possible;
  const single = torqueKinds.flatMap((kind) => {
    const own = readings.filter((one) => one.kind === kind);
    return own.flatMap((reading): TorqueQuestion[] =>
      slipQuestions(
        {
          key: reading.key,
          string: reading.string,
          value: reading.asRead.value,
          unit: reading.asRead.unit as SlipUnit,
        },
        {
          policy,
          possible,
          around: own
            .filter((other) => other !== reading)
            .map(({ key, string, torque }) => ({ key, string, value_si: torque })),
        },
        language,
      ).map(({ sentence, suggestion }) => ({
        entries: [reading.entry],
        sentence,
        suggestion: suggestion === undefined ? undefined : newtonMetres(suggestion.value_si),
      })),
    );
  });
  return [...questionOfAll(readings, language), ...single];
}

function questionOfAll(readings: readonly TorqueRead[], language: Language): TorqueQuestion[] {
  if (readings.length < 3) return [];
  const middle = newtonMetres(medianOf(readings.map(({ torque }) => torque)));
  if (middle >= USUAL_MIDDLE[0] && middle <= USUAL_MIDDLE[1]) return [];
  return [
    {
      entries: readings.map(({ entry }) => entry),
      sentence: language.say(
        'The middle of all {count} torque readings, from {note} on, is {middle}, outside the usual {least} to {most} N·m. Were they read in another unit?',
        {
          count: readings.length,
          note: noteName(readings[0]!.key),
          middle: torqueText(middle, language),
          least: USUAL_MIDDLE[0],
          most: USUAL_MIDDLE[1],
        },
      ),
      suggestion: undefined,
    },
  ];
}
