import { english, type Language, type NewtonMetres, newtonMetres } from '@becket/core';
import type { Job } from '@becket/journal';
import { pinName } from './pin-field.ts';
import type { PinTorque } from './pin-torque.ts';
import { type PinTorqueMap, pinTorqueMap, type TorqueMapOptions } from './pin-torque-map.ts';

/** One pin before and after stringing. */
export interface PinBeforeAndAfter {
  readonly key: number;
  readonly string: number | undefined;
  readonly name: string;
  readonly before: PinTorque | undefined;
  readonly after: PinTorque | undefined;
  /** Grip after less grip before; undefined when either is. */
  readonly gained: NewtonMetres | undefined;
  /** The wrench is taken to be another one: nothing cancels. */
  readonly gainedUncertainty: NewtonMetres | undefined;
  readonly state: 'read both times' | 'not read again' | 'only read as strung';
}

export interface TorqueComparison {
  readonly before: PinTorqueMap;
  readonly after: PinTorqueMap;
  readonly pins: readonly PinBeforeAndAfter[];
  readonly readBothTimes: number;
  /** Pins with a grip as strung that is low. */
  readonly lowAfter: number;
}

/** Torque as found and as strung, pin by pin. The pull as strung is that of the scale as found, at pitch unless read. */
export function compareTorque(job: Job, options: Omit<TorqueMapOptions, 'stage'> = {}): TorqueComparison {
  const before = pinTorqueMap(job, { ...options, stage: 'as found' });
  const after = pinTorqueMap(job, { ...options, stage: 'as strung' });
  return compareTorqueMaps({ before, after }, options.language);
}

/** The same, from maps that are there already. */
export function compareTorqueMaps(
  { before, after }: Pick<TorqueComparison, 'before' | 'after'>,
  language: Language = english,
): TorqueComparison {
  const nameOf = ({ key, string }: PinTorque) => pinName({ key, string }, language);
  const befores = new Map(before.pins.map((pin) => [nameOf(pin), pin]));
  const afters = new Map(after.pins.map((pin) => [nameOf(pin), pin]));
  const names = new Map([...befores, ...afters]);
  const pins = [...names.values()]
    .sort((a, b) => a.key - b.key || (a.string ?? 0) - (b.string ?? 0))
    .map((pin): PinBeforeAndAfter => {
      const [one, two] = [befores.get(nameOf(pin)), afters.get(nameOf(pin))];
      const hasBoth = one?.grip !== undefined && two?.grip !== undefined;
      return {
        key: pin.key,
        string: pin.string,
        name: nameOf(pin),
        before: one,
        after: two,
        gained: hasBoth ? newtonMetres(two.grip!.grip - one.grip!.grip) : undefined,
        gainedUncertainty: hasBoth
          ? newtonMetres(Math.hypot(one.grip!.standardUncertainty, two.grip!.standardUncertainty))
          : undefined,
        state:
          one === undefined
            ? 'only read as strung'
            : two === undefined
              ? 'not read again'
              : 'read both times',
      };
    });
  return {
    before,
    after,
    pins,
    readBothTimes: pins.filter(({ state }) => state === 'read both times').length,
    lowAfter: after.pins.filter(({ isLow }) => isLow === true).length,
  };
}
