import {
  COMMON_SLIP_POLICIES,
  english,
  type Language,
  type ReadingAround,
  type SlipPolicy,
  type SlipQuestion,
  type SlipUnit,
  slipQuestions,
} from '@becket/core';
import { type FactOf, type ReadingQuantityName, readingQuantities } from '@becket/journal';

/** A reading that is doubted; a real piano can be odd. */
export interface DoubtfulReading {
  /** Index into the readings that were handed in. */
  readonly index: number;
  readonly sentence: string;
  /** What it may have been meant to say, where a slip explains it, SI. */
  readonly suggestion_si: number | undefined;
}

/** Notes that belong together with one: the same section and kind of string. */
export interface RunOfNotes {
  readonly firstKey: number;
  readonly lastKey: number;
}

const policies: Partial<Record<ReadingQuantityName, SlipPolicy>> = COMMON_SLIP_POLICIES;

/** More readings than this of one note say nothing new of its neighbours, and would make a long table slow. */
const MOST_OF_A_NOTE = 6;

/**
 * Readings of a table that are doubted by the rules of `slipQuestions`, each against all the others of its quantity.
 *
 * @param readings  in the order of the table: what was written just before a reading is what it may repeat
 * @param runOf     the notes that belong together with a key; without it every note
 */
export function doubtfulReadings(
  readings: readonly FactOf<'reading'>[],
  runOf: (key: number) => RunOfNotes | undefined = () => undefined,
  language: Language = english,
): DoubtfulReading[] {
  const ofNote = new Map<string, (ReadingAround & { readonly index: number })[]>();
  readings.forEach(({ quantity, place, value_si }, index) => {
    if (place.key === undefined || policies[quantity] === undefined) return;
    const name = `${quantity}/${place.key}`;
    const known = ofNote.get(name) ?? [];
    if (known.length < MOST_OF_A_NOTE) known.push({ key: place.key, string: place.string, value_si, index });
    ofNote.set(name, known);
  });
  return readings.flatMap(({ quantity, place: { key, string }, asRead }, index): DoubtfulReading[] => {
    const policy = policies[quantity];
    if (policy === undefined || key === undefined) return [];
    const near = Array.from(
      { length: 2 * policy.reach + 1 },
      (_, step) => ofNote.get(`${quantity}/${key - policy.reach + step}`) ?? [],
    ).flat();
    const typed = { key, string, value: asRead.value, unit: asRead.unit as SlipUnit };
    const asked = (around: readonly ReadingAround[]): SlipQuestion[] =>
      slipQuestions(
        typed,
        {
          policy,
          possible: readingQuantities[quantity].possible,
          around,
          sameRun: runOf(key),
        },
        language,
      );
    // What is usual is told by the notes on both sides; only what was written before can have been written twice.
    const odd = asked(near.filter((other) => other.index !== index)).filter(
      ({ kind }) => kind !== 'duplicate',
    );
    const before = near.filter((other) => other.index < index).sort((a, b) => a.index - b.index);
    const twice = odd.length > 0 ? [] : asked(before).filter(({ kind }) => kind === 'duplicate');
    return [...odd, ...twice].map(({ sentence, suggestion }) => ({
      index,
      sentence,
      suggestion_si: suggestion?.value_si,
    }));
  });
}
