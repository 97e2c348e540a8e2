import {
  type GripEstimate,
  hiddenZones,
  type NewtonMetres,
  newtonMetres,
  type SectionMean,
  sectionMean,
  seededChance,
} from '@becket/core';
import type { PinField, PinPlace } from './pin-field.ts';
import type { PinTorque } from './pin-torque.ts';
import { meanTorque, type TorqueKind, torqueKinds } from './torque-readings.ts';

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

const BIN = 1;

/** What the pins read in a section say of it. */
export function torqueSection(
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

/** The chance of a missed zone in these places of the field, which lie in a row. */
export function zoneOf(
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

/** Pins by their grip, in steps of one newton metre. */
export function binsOf(gripped: readonly PinTorque[]): TorqueBin[] {
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
