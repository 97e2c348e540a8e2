import { A228_MINIMUM, analyseNote, message, type NoteAnalysis } from '@becket/core';
import {
  type AsFoundNote,
  asFoundRecord,
  type BassOrder,
  type BassQuantity,
  type BassString,
  type FactOf,
  type Job,
  type ReadingQuantityName,
} from '@becket/journal';

/** One note of the order as it was found, and how its windings are made, as far as somebody has said. */
export interface OrderNote {
  readonly note: AsFoundNote;
  readonly winding: FactOf<'winding-described'> | undefined;
}

/** One string of the order, and what it would bear. */
export interface OrderLine {
  readonly string: BassString;
  /** Tension and what follows from it; undefined while a figure that it needs is missing. */
  readonly analysis: NoteAnalysis | undefined;
}

/** The strength table that every break share of the order is taken from. */
export const strengthTable = A228_MINIMUM;

/** What is read of a note for its strings, in the order of the paper, with the line that says which notes lack it. */
export const orderedQuantities = [
  ['speaking-length', message('Speaking length: {notes}.')],
  ['core-diameter', message('Core: {notes}.')],
  ['inner-layer-diameter', message('Over inner layer: {notes}.')],
  ['over-all-diameter', message('Over all: {notes}.')],
  ['bare-front', message('Bare at front: {notes}.')],
  ['bare-back', message('Bare at bridge: {notes}.')],
  ['loop-to-winding', message('Loop to winding: {notes}.')],
  ['winding-length', message('Winding length: {notes}.')],
] as const satisfies readonly (readonly [ReadingQuantityName, string])[];

/** The lengths and diameters that a maker of strings asks for, string by string. */
export const statedQuantities = [
  ['speaking-length', message('speaking length')],
  ['core-diameter', message('core')],
  ['inner-layer-diameter', message('over inner layer')],
  ['over-all-diameter', message('over all')],
  ['bare-front', message('bare at front')],
  ['bare-back', message('bare at bridge')],
  ['loop-to-winding', message('loop to winding')],
  ['winding-length', message('winding length')],
  ['loop-to-termination', message('loop to front termination')],
] as const satisfies readonly (readonly [BassQuantity, string])[];

/** The wound notes of the record, bass to treble. */
export function orderNotes(job: Job, order: BassOrder): OrderNote[] {
  const keys = new Set(order.strings.map(({ key }) => key));
  return asFoundRecord(job)
    .notes.filter(({ key }) => keys.has(key))
    .map((note) => ({ note, winding: windingOf(job, note.key) }));
}

/** The strings to be made, bass to treble. */
export function orderLines({ strings, scaleNotes }: BassOrder): OrderLine[] {
  const analysed = new Map(
    [...new Set(strings.map(({ key }) => key))].map((key) => {
      const scaleNote = scaleNotes.get(key);
      return [key, scaleNote === undefined ? undefined : analyseNote(scaleNote, { strengthTable })] as const;
    }),
  );
  return strings.map((string) => ({ string, analysis: analysed.get(string.key) }));
}

/** What was said last of the note as a whole, or else of its first string. */
function windingOf({ windings }: Job, key: number): OrderNote['winding'] {
  const own = windings.filter((winding) => winding.key === key);
  return (
    own.findLast(({ string }) => string === undefined) ?? own.find(({ string }) => string === 1) ?? own[0]
  );
}

/** True when an inner layer is to be stated: with one layer the question does not apply. */
export const hasInnerLayer = ({ layers }: { readonly layers: number }): boolean => layers === 2;
