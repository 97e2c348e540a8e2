import { english, type Language } from '@becket/core';
import { type AsFoundNote, asFoundRecord, type Job, readingQuantities } from '@becket/journal';
import { noteRuns } from '../note-runs.ts';

/** Notes of the piano that a scale does not have, and why; told together where they lack the same. */
export interface NotesLeftOut {
  readonly keys: readonly number[];
  /** 'C4 to D#4', for the screen and the paper. */
  readonly notes: string;
  /** 'no speaking length' */
  readonly because: string;
}

/**
 * The notes of a piano that a scale leaves out, by what their record lacks.
 *
 * @param keys     the notes that the scale has
 * @param winding  'plain' for plain notes alone: those whose wire is cut in the shop
 * @returns in the order in which each lack is first met, bass to treble; empty where the scale is whole
 */
export function notesLeftOut(
  job: Job,
  keys: Iterable<number>,
  language: Language = english,
  winding?: 'plain',
): NotesLeftOut[] {
  const has = new Set(keys);
  const groups = new Map<string, number[]>();
  for (const note of asFoundRecord(job).notes) {
    if (has.has(note.key) || (winding === 'plain' && note.winding === 'wound')) continue;
    const because = whyNotComputed(note, language);
    const known = groups.get(because);
    if (known === undefined) groups.set(because, [note.key]);
    else known.push(note.key);
  }
  return [...groups].map(([because, own]) => ({ keys: own, notes: noteRuns(own, language), because }));
}

/** What keeps a note of the record from being computed. */
export function whyNotComputed(
  { missing, strings, contradiction }: AsFoundNote,
  { say }: Language = english,
): string {
  if (contradiction !== undefined) return say(contradiction);
  if (strings === undefined) return say('how it is strung is not described');
  return missing.length === 0
    ? say('a needed value was answered with none or does not apply')
    : missing
        .map((quantity) => say('no {quantity}', { quantity: say(readingQuantities[quantity].label) }))
        .join(', ');
}
