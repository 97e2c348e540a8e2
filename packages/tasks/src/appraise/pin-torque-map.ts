import {
  COMMON_PIN_SIZE_POLICY,
  COMMON_TORQUE_ACCURACY,
  type GripEstimate,
  gripEstimate,
  hiddenZones,
  type LowPinPattern,
  lowPinPattern,
  type NewtonMetres,
  newtonMetres,
  noteName,
  type SectionMean,
  sectionMean,
  seededChance,
  type TorqueAccuracy,
  type TorqueReading,
} from '@becket/core';
import type { Job } from '@becket/journal';
import { type PinField, type PinPlace, pinFieldOf, pinName } from './pin-field.ts';
import { type PinStage, pinPulls, type StringPullFigure } from './pin-pulls.ts';
import { type AccuracyOfPin, accuracyOfPin } from './torque-accuracy.ts';
import {
  type PinFeel,
  type TorqueKind,
  type TorqueQuestion,
  type TorqueRead,
  torqueKinds,
  torqueQuestions,
  torqueReadings,
} from './torque-readings.ts';
import { type TorqueSeason, torqueSeason } from './torque-season.ts';

export interface TorqueMapOptions {
  /** 'as found' when not given. */
  readonly stage?: PinStage;
  /** Pins in a row that a bad zone is taken to have; 6 when not given. */
  readonly zonePins?: number;
  /** A grip below this is low; the firm figure of the job's rule when not given. */
  readonly lowBelow?: NewtonMetres;
  /** What a reading is worth where nobody has said. */
  readonly accuracy?: TorqueAccuracy;
  /** Two maps with one seed are alike; 1 when not given. */
  readonly seed?: number;
}

/** One pin that was read. A reading of a note without its string stands for itself. */
export interface PinTorque {
  readonly key: number;
  readonly string: number | undefined;
  readonly note: string;
  /** 'C4 string 2' */
  readonly name: string;
  readonly section: string | undefined;
  /** Index in `field.pins`; of a note read without its string the middle pin. Undefined when it is not in the field. */
  readonly pin: number | undefined;
  readonly readings: readonly TorqueRead[];
  /** Mean of each kind of reading, never pooled. */
  readonly byKind: Readonly<Partial<Record<TorqueKind, NewtonMetres>>>;
  readonly grip: GripEstimate | undefined;
  /** Why there is no grip, in one sentence; undefined when there is one. */
  readonly whyNoGrip: string | undefined;
  readonly pull: StringPullFigure | undefined;
  /** Why the pull is unknown; undefined when it is known. */
  readonly whyNoPull: string | undefined;
  /** grip − pull. Undefined when either is unknown. */
  readonly margin: NewtonMetres | undefined;
  readonly marginUncertainty: NewtonMetres | undefined;
  /** grip ÷ pull: the pin holds its string while this is above 1. */
  readonly holdingRatio: number | undefined;
  /** Undefined when there is no grip. */
  readonly isLow: boolean | undefined;
  readonly feels: readonly PinFeel[];
  /** What its readings are worth, and who says so. */
  readonly worth: AccuracyOfPin;
}

export interface TorqueSection {
  readonly section: string;
  readonly pins: number;
  /** Pins read in any way, and those with a grip. */
  readonly read: number;
  readonly withGrip: number;
  readonly low: number;
  /** Undefined when no pin of it has a grip. */
  readonly mean: SectionMean | undefined;
  readonly lowest: PinTorque | undefined;
  /** Readings of each kind with their mean, never pooled. */
  readonly byKind: readonly {
    readonly kind: TorqueKind;
    readonly count: number;
    readonly mean: NewtonMetres;
  }[];
  readonly zone: ZoneChance | undefined;
}

/** The chance that a zone of `size` pins in a row lies where no pin was read. */
export interface ZoneChance {
  readonly size: number;
  readonly chanceMissed: number;
  readonly next: PinPlace | undefined;
  readonly chanceAfterNext: number;
}

export interface TorqueBin {
  readonly from: NewtonMetres;
  readonly to: NewtonMetres;
  /** Pins with a grip in it: at least `from`, under `to`. */
  readonly pins: readonly PinTorque[];
}

export interface PinTorqueMap {
  readonly stage: PinStage;
  readonly field: PinField;
  /** In the order in which they lie. */
  readonly pins: readonly PinTorque[];
  readonly sections: readonly TorqueSection[];
  /** The whole field; undefined when no stringing is described. */
  readonly zone: ZoneChance | undefined;
  readonly bins: readonly TorqueBin[];
  readonly lowBelow: NewtonMetres;
  /** Where the low figure comes from. */
  readonly lowBelowFrom: string;
  readonly pattern: LowPinPattern;
  readonly season: TorqueSeason;
  readonly questions: readonly TorqueQuestion[];
  /** Torque readings that name no note: kept, and on no map. */
  readonly readingsWithoutNote: number;
  readonly accuracy: TorqueAccuracy;
}

const BIN = 1;
const ZONE_PINS = 6;

/**
 * The torque map of a job: grip, pull and margin of each pin that was read, what each section and the whole field come to,
 * where low pins gather, and what the sample cannot say.
 *
 * Readings are kept apart by the way the pin was turned and the state of the string; the equations are those of
 * `gripEstimate`. A pin of which the pull is unknown has a grip only when it was read in both directions or slack.
 *
 * Throws: RangeError when `zonePins` does not fit a field.
 */
export function pinTorqueMap(job: Job, options: TorqueMapOptions = {}): PinTorqueMap {
  const { stage = 'as found', accuracy = COMMON_TORQUE_ACCURACY, zonePins = ZONE_PINS, seed = 1 } = options;
  const policy = job.pinPolicy ?? COMMON_PIN_SIZE_POLICY;
  const lowBelow = options.lowBelow ?? newtonMetres(policy.firmTorque_n_m);
  const field = pinFieldOf(job);
  const { readings, withoutNote } = torqueReadings(job, stage);
  const pins = pinsOf(job, { readings, field, stage, accuracy, lowBelow });
  const gripped = pins.filter((pin) => pin.grip !== undefined);
  const sections = field.sections.map(({ section }) => sectionOf(section, { field, pins, zonePins, seed }));
  return {
    stage,
    field,
    pins,
    sections,
    zone: zoneOf(field.pins, pins, field, zonePins),
    bins: binsOf(gripped),
    lowBelow,
    lowBelowFrom:
      options.lowBelow === undefined ? `the firm figure of the rule (${policy.source})` : 'as asked',
    pattern: lowPinPattern(
      gripped.map(({ key, string, isLow }) => ({ key, string, isLow: isLow === true })),
      { sections: field.sections, random: seededChance(seed) },
    ),
    season: torqueSeason(readings),
    questions: torqueQuestions(readings),
    readingsWithoutNote: withoutNote,
    accuracy,
  };
}

function pinsOf(
  job: Job,
  {
    readings,
    field,
    stage,
    accuracy,
    lowBelow,
  }: {
    readonly readings: readonly TorqueRead[];
    readonly field: PinField;
    readonly stage: PinStage;
    readonly accuracy: TorqueAccuracy;
    readonly lowBelow: NewtonMetres;
  },
): PinTorque[] {
  const pullOf = readings.length === 0 ? () => undefined : pinPulls(job, stage);
  const byPin = new Map<string, TorqueRead[]>();
  for (const reading of readings) {
    const name = `${reading.key}/${reading.string ?? ''}`;
    byPin.set(name, [...(byPin.get(name) ?? []), reading]);
  }
  return [...byPin.values()]
    .map((own): PinTorque => {
      const { key, string } = own[0]!;
      const pull = pullOf(key, string);
      const worth = accuracyOfPin(own, job.instruments, accuracy);
      const usable = own.filter((one): one is TorqueRead & TorqueReading => one.kind !== 'not said');
      const grip = gripEstimate(
        usable.map(({ torque, kind }) => ({ torque, turning: kind as TorqueReading['turning'] })),
        pull,
        worth.accuracy,
      );
      const isPulled = grip !== undefined && pull !== undefined;
      return {
        key,
        string,
        note: noteName(key),
        name: pinName({ key, string }),
        section: field.sections.find((one) => one.firstKey <= key && key <= one.lastKey)?.section,
        pin: field.indexOf(key, string),
        readings: own,
        byKind: Object.fromEntries(
          torqueKinds.flatMap((kind) => {
            const mean = meanTorque(own.filter((one) => one.kind === kind));
            return mean === undefined ? [] : [[kind, mean]];
          }),
        ),
        grip,
        whyNoGrip: grip === undefined ? whyNoGrip(usable.length > 0) : undefined,
        pull,
        whyNoPull:
          pull === undefined
            ? `The pull of the string is unknown: length and wire of ${noteName(key)} are needed for its tension.`
            : undefined,
        margin: isPulled ? newtonMetres(grip.grip - pull.pull) : undefined,
        marginUncertainty: isPulled ? marginUncertainty(grip, pull, worth.accuracy) : undefined,
        holdingRatio: isPulled ? grip.grip / pull.pull : undefined,
        isLow: grip === undefined ? undefined : grip.grip < lowBelow,
        feels: [...new Set(own.flatMap(({ feel }) => feel ?? []))],
        worth,
      };
    })
    .sort((a, b) => a.key - b.key || (a.string ?? 0) - (b.string ?? 0));
}

function whyNoGrip(hasDirection: boolean): string {
  return hasDirection
    ? 'One direction with the string on gives a grip only when the pull is known. Read it the other way as well, or slack.'
    : 'It was not said which way the pin was turned and whether its string was on. Say so, or read it again.';
}

/** With one direction the grip already holds the pull, with its sign: the margin is τ ∓ M − M. */
function marginUncertainty(
  grip: GripEstimate,
  pull: StringPullFigure,
  accuracy: TorqueAccuracy,
): NewtonMetres {
  const friction = (accuracy.frictionLimit * pull.pull) / Math.sqrt(3);
  const ofPull = Math.hypot(pull.standardUncertainty, friction);
  const times = grip.from === 'sharp-going' ? 2 : grip.from === 'flat-going' ? 0 : 1;
  const isOneWay = grip.from === 'sharp-going' || grip.from === 'flat-going';
  const withoutPull = isOneWay
    ? Math.sqrt(Math.max(0, grip.standardUncertainty ** 2 - ofPull ** 2))
    : grip.standardUncertainty;
  return newtonMetres(Math.hypot(withoutPull, times * ofPull));
}

function sectionOf(
  section: string,
  {
    field,
    pins,
    zonePins,
    seed,
  }: {
    readonly field: PinField;
    readonly pins: readonly PinTorque[];
    readonly zonePins: number;
    readonly seed: number;
  },
): TorqueSection {
  const places = field.pins.filter((place) => place.section === section);
  const own = pins.filter((pin) => pin.section === section);
  const gripped = own.filter((pin): pin is PinTorque & { grip: GripEstimate } => pin.grip !== undefined);
  const lowest = [...gripped].sort((a, b) => a.grip.grip - b.grip.grip)[0];
  return {
    section,
    pins: places.length,
    read: own.length,
    withGrip: gripped.length,
    low: own.filter((pin) => pin.isLow === true).length,
    mean:
      gripped.length === 0
        ? undefined
        : sectionMean(
            gripped.map(({ grip }) => grip),
            { pins: Math.max(places.length, gripped.length), random: seededChance(seed) },
          ),
    lowest,
    byKind: torqueKinds.flatMap((kind) => {
      const some = own.flatMap(({ readings }) => readings.filter((one) => one.kind === kind));
      const mean = meanTorque(some);
      return mean === undefined ? [] : [{ kind, count: some.length, mean }];
    }),
    zone: zoneOf(places, own, field, zonePins),
  };
}

function zoneOf(
  places: readonly PinPlace[],
  pins: readonly PinTorque[],
  field: PinField,
  zonePins: number,
): ZoneChance | undefined {
  if (places.length === 0) return undefined;
  const size = Math.min(zonePins, places.length);
  const first = field.pins.indexOf(places[0]!);
  const measured = pins.flatMap(({ pin }) =>
    pin === undefined || pin < first || pin >= first + places.length ? [] : [pin - first],
  );
  const { chanceMissed, nextPin, chanceAfterNext } = hiddenZones({ pins: places.length, measured, size });
  return {
    size,
    chanceMissed,
    next: nextPin === undefined ? undefined : places[nextPin],
    chanceAfterNext,
  };
}

function binsOf(gripped: readonly PinTorque[]): TorqueBin[] {
  if (gripped.length === 0) return [];
  const binOf = ({ grip }: PinTorque) => Math.floor(grip!.grip / BIN);
  const numbers = gripped.map(binOf);
  const [lowest, highest] = [Math.min(...numbers), Math.max(...numbers)];
  return Array.from({ length: highest - lowest + 1 }, (_, index) => ({
    from: newtonMetres((lowest + index) * BIN),
    to: newtonMetres((lowest + index + 1) * BIN),
    pins: gripped.filter((pin) => binOf(pin) === lowest + index),
  }));
}

function meanTorque(readings: readonly TorqueRead[]): NewtonMetres | undefined {
  if (readings.length === 0) return undefined;
  return newtonMetres(readings.reduce((sum, { torque }) => sum + torque, 0) / readings.length);
}
