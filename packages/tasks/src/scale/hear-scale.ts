import {
  type Cents,
  hertz,
  type NoteToPlay,
  noteName,
  octaveAbove,
  type PassageNote,
  type SoundingKey,
  singleNote,
  thirdsAcross,
} from '@becket/core';
import { inEqualTemperament, type Job, tuned } from '@becket/journal';
import type { AnalysedScale } from './analysed-scale.ts';

export const passages = ['one string', 'unison', 'octave', 'thirds across the break'] as const;
export type PassageName = (typeof passages)[number];

/** What is to be heard. */
export interface ToHear {
  readonly passage: PassageName;
  /** The note; of thirds the first key above the break. */
  readonly key: number;
  /** Between the outermost strings of a unison. */
  readonly unisonSpread: Cents;
}

export interface HeardPassage {
  readonly notes: readonly NoteToPlay[];
  /** Notes that were left out as nothing can be computed of them. */
  readonly missing: readonly string[];
}

/** A passage of one scale, tuned by the stretch of its own inharmonicity; by equal temperament where notes are missing. */
export function heardPassage(
  job: Job,
  { analysis }: Pick<AnalysedScale, 'analysis'>,
  { passage, key, unisonSpread }: ToHear,
): HeardPassage {
  const pitch = hertz(job.piano?.referencePitch_hz ?? 440);
  const sounding = new Map<number, SoundingKey>(
    (tuned(analysis, pitch) ?? inEqualTemperament(analysis)).map((note) => [note.key, note]),
  );
  const analysed = new Map(analysis.notes.map((note) => [note.key, note]));
  const missing: string[] = [];
  const notes = notesOf(passage, key, job).flatMap((one): NoteToPlay[] => {
    const note = analysed.get(one.key)?.note;
    const firstPartial = sounding.get(one.key)?.firstPartial;
    if (note === undefined || firstPartial === undefined) {
      if (!missing.includes(noteName(one.key))) missing.push(noteName(one.key));
      return [];
    }
    const strings = passage === 'one string' ? 1 : note.strings;
    return [{ ...one, string: note.string, strings, firstPartial, unisonSpread }];
  });
  return { notes, missing };
}

function notesOf(passage: PassageName, key: number, { piano }: Job): PassageNote[] {
  const compass = [piano?.firstKey ?? 1, piano?.lastKey ?? 88] as const;
  switch (passage) {
    case 'one string':
    case 'unison':
      return singleNote(key);
    case 'octave':
      return octaveAbove(key).filter((note) => note.key <= compass[1]);
    case 'thirds across the break':
      return thirdsAcross(key, compass);
  }
}
