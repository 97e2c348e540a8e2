import {
  COMMON_TORQUE_ACCURACY,
  english,
  type Language,
  type LowPinPattern,
  lowPinPattern,
  type NewtonMetres,
  newtonMetres,
  seededChance,
  type TorqueAccuracy,
} from '@becket/core';
import type { Job } from '@becket/journal';
import { type PinField, pinFieldOf } from './pin-field.ts';
import { pinPolicyOf } from './pin-policy.ts';
import type { PinStage } from './pin-pulls.ts';
import { type PinTorque, pinTorques } from './pin-torque.ts';
import { type TorqueQuestion, torqueQuestions, torqueReadings } from './torque-readings.ts';
import { type TorqueSeason, torqueSeason } from './torque-season.ts';
import {
  binsOf,
  type TorqueBin,
  type TorqueSection,
  torqueSection,
  type ZoneChance,
  zoneOf,
} from './torque-sections.ts';

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
  /** What its sentences are written in; English when not given. */
  readonly language?: Language;
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
  const { language = english } = options;
  const policy = pinPolicyOf(job, language);
  const lowBelow = options.lowBelow ?? newtonMetres(policy.firmTorque_n_m);
  const field = pinFieldOf(job);
  const { readings, withoutNote } = torqueReadings(job, stage);
  const pins = pinTorques(job, { readings, field, stage, accuracy, lowBelow }, language);
  const gripped = pins.filter((pin) => pin.grip !== undefined);
  const sections = field.sections.map(({ section }) =>
    torqueSection(section, { field, pins, zonePins, seed }),
  );
  return {
    stage,
    field,
    pins,
    sections,
    zone: zoneOf(field.pins, pins, field, zonePins),
    bins: binsOf(gripped),
    lowBelow,
    lowBelowFrom:
      options.lowBelow === undefined
        ? language.say('the firm figure of the rule ({source})', { source: policy.source })
        : language.say('as asked'),
    pattern: lowPinPattern(
      gripped.map(({ key, string, isLow, grip }) => ({
        key,
        string,
        isLow: isLow === true,
        grip: grip!.grip,
      })),
      { sections: field.sections, random: seededChance(seed) },
      language,
    ),
    season: torqueSeason(readings, language),
    questions: torqueQuestions(readings, language),
    readingsWithoutNote: withoutNote,
    accuracy,
  };
}
