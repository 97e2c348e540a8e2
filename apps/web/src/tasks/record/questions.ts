import { inInches, inMillimetres, metres } from '@becket/core';
import type { AsFoundRecord, ReadingQuantityName, Ulid } from '@becket/journal';
import { doubtfulReadings } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';

/** A doubt about a value, beside its cell. It blocks nothing. */
export interface Question {
  readonly quantity: ReadingQuantityName;
  /** The reading that is doubted. */
  readonly entry: Ulid;
  readonly sentence: string;
  /** What may have been meant, SI; undefined where no slip explains it. */
  readonly suggestion_si: number | undefined;
}

/** The values in question, by key. */
export function questionsOf(record: AsFoundRecord): ReadonlyMap<number, readonly Question[]> {
  const readings = record.notes.flatMap(({ figures }) =>
    Object.values(figures).flatMap((figure) => [...figure.readings]),
  );
  const questions = new Map<number, Question[]>();
  for (const { index, sentence, suggestion_si } of doubtfulReadings(readings)) {
    const reading = readings[index];
    if (reading?.place.key === undefined) continue;
    const { quantity, place } = reading;
    const question: Question = {
      quantity,
      entry: reading.entry,
      sentence,
      suggestion_si,
    };
    const known = questions.get(place.key!);
    if (known === undefined) questions.set(place.key!, [question]);
    else if (!known.some((one) => one.sentence === question.sentence)) known.push(question);
  }
  return questions;
}

/** A suggested length as it would be typed: with its unit, and no more digits than tell it apart. */
export function suggestionText(length_m: number, unit: LengthUnit): string {
  const value = unit === 'mm' ? inMillimetres(metres(length_m)) : inInches(metres(length_m));
  return `${Number(value.toPrecision(4))} ${unit}`;
}
