import { english, keyRangeAt, type Language, type Metres, metres, noteName } from '@becket/core';
import type { Job, Ulid } from '@becket/journal';
import type { PinField } from './pin-field.ts';

/** One line of the driving log. */
export interface PinsDrivenLine {
  readonly entry: Ulid;
  /** 1 for what was driven first. */
  readonly order: number;
  readonly firstKey: number;
  readonly lastKey: number;
  /** 'C4 to F4' */
  readonly notes: string;
  /** Pins of these notes, as far as their stringing is described. */
  readonly pins: number;
  readonly diameter: Metres;
  readonly length: Metres | undefined;
  readonly at: string;
  readonly by: string;
  readonly note: string | undefined;
}

export interface PinDriving {
  /** In the order of driving. */
  readonly lines: readonly PinsDrivenLine[];
  readonly pinsDriven: number;
  readonly pins: number;
  /** Runs of notes without a driven pin. */
  readonly left: readonly { readonly firstKey: number; readonly lastKey: number; readonly pins: number }[];
}

/** The driving log in the order in which pins went in, and what is left. Pins of a note driven twice count once. */
export function pinDriving(job: Job, field: PinField, { say }: Language = english): PinDriving {
  const isIn = (key: number) => keyRangeAt(key, job.pinsDriven) !== undefined;
  const lines = job.pinsDriven.map((one, index): PinsDrivenLine => {
    const { firstKey, lastKey } = one;
    return {
      entry: one.entry,
      order: index + 1,
      firstKey,
      lastKey,
      notes:
        firstKey === lastKey
          ? noteName(firstKey)
          : say('{first} to {last}', { first: noteName(firstKey), last: noteName(lastKey) }),
      pins: field.pins.filter(({ key }) => firstKey <= key && key <= lastKey).length,
      diameter: metres(one.pinDiameter_m),
      length: one.pinLength_m === undefined ? undefined : metres(one.pinLength_m),
      at: one.at,
      by: one.by,
      note: one.note,
    };
  });
  const left: { firstKey: number; lastKey: number; pins: number }[] = [];
  for (const { key } of field.pins) {
    if (isIn(key)) continue;
    const last = left.at(-1);
    if (last !== undefined && (last.lastKey === key || last.lastKey === key - 1)) {
      last.lastKey = key;
      last.pins += 1;
    } else left.push({ firstKey: key, lastKey: key, pins: 1 });
  }
  return {
    lines,
    pinsDriven: field.pins.filter(({ key }) => isIn(key)).length,
    pins: field.pins.length,
    left,
  };
}
