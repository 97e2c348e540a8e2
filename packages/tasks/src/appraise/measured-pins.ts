import {
  english,
  keyRangeAt,
  type Language,
  type Metres,
  medianOf,
  metres,
  type PinSizePolicy,
  pinSizeGuess,
} from '@becket/core';
import type { Job, Ulid } from '@becket/journal';
import { pinName } from './pin-field.ts';
import type { PinTorque } from './pin-torque.ts';
import type { PinTorqueMap } from './pin-torque-map.ts';

/** A pin whose diameter was read, as found. */
export interface PinMeasured {
  readonly key: number;
  readonly string: number | undefined;
  readonly name: string;
  readonly section: string | undefined;
  readonly diameter: Metres;
  readonly entries: readonly Ulid[];
  /** Listed size it is nearest to, and the chance that it is that one. */
  readonly size: string;
  readonly probability: number;
  readonly isUnlisted: boolean;
  readonly torque: PinTorque | undefined;
}

/** Every pin with a diameter as found, in the order in which they lie. */
export function measuredPins(
  job: Job,
  { map, policy }: { readonly map: PinTorqueMap; readonly policy: PinSizePolicy },
  language: Language = english,
): PinMeasured[] {
  const byPin = new Map<string, { diameters: number[]; entries: Ulid[]; key: number; string?: number }>();
  for (const { quantity, stage, place, value_si, entry } of job.readings) {
    if (quantity !== 'pin-diameter' || stage !== 'as found' || place.key === undefined) continue;
    const string = place.string ?? (job.unisons.get(place.key)?.strings === 1 ? 1 : undefined);
    const name = `${place.key}/${string ?? ''}`;
    const known = byPin.get(name) ?? {
      diameters: [],
      entries: [],
      key: place.key,
      ...(string === undefined ? {} : { string }),
    };
    known.diameters.push(value_si);
    known.entries.push(entry);
    byPin.set(name, known);
  }
  return [...byPin.values()]
    .map(({ key, string, diameters, entries }): PinMeasured => {
      const diameter = metres(medianOf(diameters));
      const guess = pinSizeGuess(diameter, policy.sizes);
      return {
        key,
        string,
        name: pinName({ key, string }, language),
        section: keyRangeAt(key, map.field.sections)?.section,
        diameter,
        entries,
        size: guess.size.label,
        probability: guess.probability,
        isUnlisted: guess.isUnlisted,
        torque: torqueOf(map, key, string),
      };
    })
    .sort((a, b) => a.key - b.key || (a.string ?? 0) - (b.string ?? 0));
}

/**
 * The torque of the same pin. Where one of the readings speaks for the note only they are taken to belong together; of several
 * pins of the note then the one that holds least.
 */
function torqueOf(map: PinTorqueMap, key: number, string: number | undefined): PinTorque | undefined {
  const own = map.pins.filter((pin) => pin.key === key);
  const same = own.find((pin) => pin.string === string);
  if (same !== undefined) return same;
  const gripOf = (pin: PinTorque) => pin.grip?.grip ?? Number.POSITIVE_INFINITY;
  return own
    .filter((pin) => string === undefined || pin.string === undefined)
    .sort((a, b) => gripOf(a) - gripOf(b))[0];
}
