import {
  comparedSounds,
  hertz,
  type NoteToPlay,
  octaveAbove,
  type PassageNote,
  thirdsAcross,
} from '@becket/core';
import { examplePianos } from '../packages/core/src/rescale/testing/example-pianos.ts';
import { type BenchTopic, timed } from './harness.ts';

const SAMPLE_RATE = 48_000;
const { notes } = examplePianos.find(({ name }) => name === 'grand')!;
const noteOf = new Map(notes.map((note) => [note.key, note]));
const firstPlain = notes.find(({ string }) => string.kind === 'plain')!.key;

/** A passage on the invented grand; each turn a hair off pitch, so that no two are the same work. */
const played = (passage: readonly PassageNote[], turn: number): NoteToPlay[] =>
  passage.map((one) => {
    const { string, strings, frequency } = noteOf.get(one.key)!;
    return { ...one, string, strings, firstPartial: hertz(frequency * (1 + turn * 1e-6)) };
  });

const twice = (passage: readonly PassageNote[]) => (turn: number) =>
  comparedSounds([played(passage, turn), played(passage, turn)], SAMPLE_RATE);

/** How long somebody waits for the first sound: two scales of one passage, rendered and levelled. */
export const topic: BenchTopic = {
  name: 'hearing',
  run: () => [
    timed('two octaves of 4 s, A2 and A3', twice(octaveAbove(25)), { runs: 7, warmUp: 1 }),
    timed('thirds across the break, two scales', twice(thirdsAcross(firstPlain, [1, 88])), {
      runs: 7,
      warmUp: 1,
    }),
  ],
};
