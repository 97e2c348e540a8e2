import { grouped, keyRangeAt } from '@becket/core';
import type { FactOf } from '../facts/index.ts';
import type { Job, Piano, Section, Standing, StandingReading, UnisonDescription } from '../fold/job.ts';

/** All that one note of the as-found record is worked out from. */
export interface NoteParts {
  readonly key: number;
  readonly piano: Piano;
  readonly section: Section | undefined;
  readonly unison: UnisonDescription | undefined;
  /** As found, in journal order. */
  readonly readings: readonly StandingReading[];
  /** In journal order: of two that say the same thing the later one holds. */
  readonly absences: readonly Standing<FactOf<'reading-absent'>>[];
  /** The instruments that the readings name, as far as they are described. */
  readonly instruments: Job['instruments'];
}

/** The parts of every note, bass to treble; none until the piano is described. */
export function notePartsOf(job: Job): NoteParts[] {
  const { piano } = job;
  if (piano === undefined) return [];
  const readings = byKey(job.readings.filter(({ stage }) => stage === 'as found'));
  const absences = byKey(job.absences);
  const parts: NoteParts[] = [];
  for (let key = piano.firstKey; key <= piano.lastKey; key += 1) {
    parts.push({
      key,
      piano,
      section: keyRangeAt(key, job.sections),
      unison: job.unisons.get(key),
      readings: readings.get(key) ?? [],
      absences: absences.get(key) ?? [],
      instruments: job.instruments,
    });
  }
  return parts;
}

function byKey<T extends { readonly place: { readonly key?: number | undefined } }>(
  facts: readonly T[],
): Map<number | undefined, T[]> {
  return grouped(facts, ({ place }) => place.key);
}

interface Kept {
  readonly madeOf: readonly unknown[];
  readonly note: unknown;
}

/** What was worked out last for each key of a piano; it goes with the piano's description. */
const kept = new WeakMap<Piano, Map<number, Kept>>();

/** What `make` makes of these parts; the same object as before while they are the same facts. */
export function keptNote<Note>(parts: NoteParts, make: (parts: NoteParts) => Note): Note {
  const ofPiano = kept.get(parts.piano) ?? new Map<number, Kept>();
  kept.set(parts.piano, ofPiano);
  const before = ofPiano.get(parts.key);
  const madeOf = factsIn(parts);
  if (
    before !== undefined &&
    before.madeOf.length === madeOf.length &&
    before.madeOf.every((fact, index) => fact === madeOf[index])
  )
    return before.note as Note;
  const note = make(parts);
  ofPiano.set(parts.key, { madeOf, note });
  return note;
}

/** An entry stands as one object for ever, so that the same objects are the same facts. */
function factsIn({ section, unison, readings, absences, instruments }: NoteParts): unknown[] {
  const described = readings.map(({ instrument }) =>
    instrument === undefined ? undefined : instruments.get(instrument),
  );
  // One description of unisons makes a new object of each note at every fold: its entry tells it.
  return [section, unison?.entry, ...readings, ...described, ...absences];
}
