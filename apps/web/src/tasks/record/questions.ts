import { inInches, inMillimetres, metres } from '@becket/core';
import type { AsFoundNote, AsFoundRecord, ReadingQuantityName, Ulid } from '@becket/journal';
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
  const runs = runsOfAlike(record.notes);
  for (const { index, sentence, suggestion_si } of doubtfulReadings(readings, (key) => runs.get(key))) {
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

/** For each key the run of neighbouring notes of its section that are strung of the same kind: a break is no slip. */
function runsOfAlike(
  notes: readonly AsFoundNote[],
): ReadonlyMap<number, { firstKey: number; lastKey: number }> {
  const runs = new Map<number, { firstKey: number; lastKey: number }>();
  notes.forEach((note, index) => {
    const before = notes[index - 1];
    const known = before === undefined ? undefined : runs.get(before.key);
    const goesOn =
      known !== undefined &&
      before?.section === note.section &&
      before?.winding === note.winding &&
      before?.layers === note.layers;
    const run = goesOn ? known : { firstKey: note.key, lastKey: note.key };
    run.lastKey = note.key;
    runs.set(note.key, run);
  });
  return runs;
}

/** A suggested length as it would be typed: with its unit, and no more digits than tell it apart. */
export function suggestionText(length_m: number, unit: LengthUnit): string {
  const value = unit === 'mm' ? inMillimetres(metres(length_m)) : inInches(metres(length_m));
  return `${Number(value.toPrecision(4))} ${unit}`;
}
