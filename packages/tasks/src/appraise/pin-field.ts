import { english, keyRangeAt, type Language, noteName } from '@becket/core';
import type { Job } from '@becket/journal';

/** One pin of the block. */
export interface PinPlace {
  readonly key: number;
  readonly string: number;
  /** 'C4' */
  readonly note: string;
  readonly section: string | undefined;
}

/** The pins of the block in the order in which they lie: by section, key and string. */
export interface PinField {
  readonly pins: readonly PinPlace[];
  readonly sections: readonly {
    readonly section: string;
    readonly firstKey: number;
    readonly lastKey: number;
  }[];
  /** Notes of the compass whose stringing nobody has described: their pins are not counted. */
  readonly notesWithoutStringing: number;
  /** Index of a pin; for a note read without its string the middle pin of the note. Undefined when it is not in the field. */
  readonly indexOf: (key: number, string: number | undefined) => number | undefined;
}

/** The pin field that the description of the piano gives. */
export function pinFieldOf(job: Job): PinField {
  const pins: PinPlace[] = [];
  const firstOf = new Map<number, number>();
  let notesWithoutStringing = 0;
  const { piano, sections } = job;
  for (let key = piano?.firstKey ?? 1; key <= (piano?.lastKey ?? 0); key += 1) {
    const strings = job.unisons.get(key)?.strings;
    if (strings === undefined) {
      notesWithoutStringing += 1;
      continue;
    }
    firstOf.set(key, pins.length);
    for (let string = 1; string <= strings; string += 1)
      pins.push({ key, string, note: noteName(key), section: keyRangeAt(key, sections)?.section });
  }
  const indexOf = (key: number, string: number | undefined): number | undefined => {
    const first = firstOf.get(key);
    const strings = job.unisons.get(key)?.strings;
    if (first === undefined || strings === undefined || (string ?? 1) > strings) return undefined;
    return first + (string ?? Math.ceil(strings / 2)) - 1;
  };
  return {
    pins,
    sections: sections.map(({ section, firstKey, lastKey }) => ({ section, firstKey, lastKey })),
    notesWithoutStringing,
    indexOf,
  };
}

/** 'C4 string 2', 'C4, string not said' */
export function pinName(
  { key, string }: { readonly key: number; readonly string: number | undefined },
  { say }: Language = english,
): string {
  const note = noteName(key);
  return string === undefined
    ? say('{note}, string not said', { note })
    : say('{note} string {string}', { note, string });
}
