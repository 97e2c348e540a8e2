import { A228_MINIMUM, analyseNote, type NoteAnalysis } from '@becket/core';
import {
  type AsFoundNote,
  asFoundRecord,
  type FactOf,
  type Job,
  type ReadingQuantityName,
} from '@becket/journal';

/** One note of the order: its strings as found, and what they would bear. */
export interface OrderLine {
  readonly note: AsFoundNote;
  /** Tension and what follows from it; undefined while a figure that it needs is missing. */
  readonly analysis: NoteAnalysis | undefined;
  /** How its windings are made, as far as somebody has said. */
  readonly winding: FactOf<'winding-described'> | undefined;
}

/** The strength table that every break share of the order is taken from. */
export const strengthTable = A228_MINIMUM;

/** The lengths and diameters that a maker of strings asks for, in the order of the paper. */
export const orderedQuantities = [
  ['speaking-length', 'speaking length'],
  ['core-diameter', 'core'],
  ['inner-layer-diameter', 'over inner layer'],
  ['over-all-diameter', 'over all'],
  ['bare-front', 'bare at front'],
  ['bare-back', 'bare at bridge'],
  ['loop-to-winding', 'loop to winding'],
  ['winding-length', 'winding length'],
] as const satisfies readonly (readonly [ReadingQuantityName, string])[];

/** The wound notes of the record, bass to treble. */
export function orderLines(job: Job): OrderLine[] {
  const { notes, scaleNotes } = asFoundRecord(job);
  const byKey = new Map(scaleNotes.map((note) => [note.key, note]));
  return notes
    .filter((note) => note.winding === 'wound')
    .map((note) => {
      const scaleNote = byKey.get(note.key);
      const analysis = scaleNote === undefined ? undefined : analyseNote(scaleNote, { strengthTable });
      return { note, analysis, winding: windingOf(job, note.key) };
    });
}

/** What was said last of the note as a whole, or else of its first string. */
function windingOf({ windings }: Job, key: number): OrderLine['winding'] {
  const own = windings.filter((winding) => winding.key === key);
  return (
    own.findLast(({ string }) => string === undefined) ?? own.find(({ string }) => string === 1) ?? own[0]
  );
}

/** True when an inner layer is to be stated: with one layer the question does not apply. */
export const hasInnerLayer = ({ layers }: AsFoundNote): boolean => layers === 2;
