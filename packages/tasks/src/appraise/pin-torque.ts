import {
  english,
  type GripEstimate,
  gripEstimate,
  grouped,
  keyRangeAt,
  type Language,
  type NewtonMetres,
  newtonMetres,
  noteName,
  type TorqueAccuracy,
  type TorqueReading,
} from '@becket/core';
import type { Job } from '@becket/journal';
import { type PinField, pinName } from './pin-field.ts';
import { type PinStage, pinPulls, type StringPullFigure } from './pin-pulls.ts';
import { type AccuracyOfPin, accuracyOfPin } from './torque-accuracy.ts';
import {
  meanTorque,
  type PinFeel,
  type TorqueKind,
  type TorqueRead,
  torqueKinds,
} from './torque-readings.ts';

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

/** Every pin that was read, in the order in which they lie, with grip, pull and margin where they can be had. */
export function pinTorques(
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
  language: Language = english,
): PinTorque[] {
  const pullOf = readings.length === 0 ? () => undefined : pinPulls(job, stage);
  const byPin = grouped(readings, ({ key, string }) => `${key}/${string ?? ''}`);
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
        name: pinName({ key, string }, language),
        section: keyRangeAt(key, field.sections)?.section,
        pin: field.indexOf(key, string),
        readings: own,
        byKind: Object.fromEntries(
          torqueKinds.flatMap((kind) => {
            const mean = meanTorque(own.filter((one) => one.kind === kind));
            return mean === undefined ? [] : [[kind, mean]];
          }),
        ),
        grip,
        whyNoGrip: grip === undefined ? whyNoGrip(usable.length > 0, language) : undefined,
        pull,
        whyNoPull:
          pull === undefined
            ? language.say(
                'The pull of the string is unknown: length and wire of {note} are needed for its tension.',
                { note: noteName(key) },
              )
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

function whyNoGrip(hasDirection: boolean, { say }: Language): string {
  return hasDirection
    ? say(
        'One direction with the string on gives a grip only when the pull is known. Read it the other way as well, or slack.',
      )
    : say(
        'It was not said which way the pin was turned and whether its string was on. Say so, or read it again.',
      );
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
