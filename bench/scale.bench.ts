import { analyseScale, metres, reanalyseNote, type ScaleAnalysis, type ScaleNote } from '@becket/core';
import { inventedGrand } from '../packages/core/src/scale/testing/invented-grand.ts';
import { type BenchTopic, timed } from './harness.ts';

const grand = inventedGrand();

/** One edit: the speaking length of the note at an index, a nanometre longer each time. */
function edited(index: number, turn: number): ScaleNote {
  const note = grand[index]!;
  const speakingLength = metres(note.string.speakingLength + (turn + 1) * 1e-9);
  return { ...note, string: { ...note.string, speakingLength } };
}

const editing = (
  index: number,
  options: Parameters<typeof analyseScale>[1],
): ((turn: number) => ScaleAnalysis) => {
  const before = analyseScale(grand, options);
  return (turn) => reanalyseNote(before, edited(index, turn), options);
};

const rough = { uncertainties: 'left out', woundStrings: 'core formula' } as const;
const exact = { uncertainties: 'left out' } as const;

export const topic: BenchTopic = {
  name: 'scale',
  run: () => [
    timed('whole piano, core formulas, no uncertainties', () => analyseScale(grand, rough), {
      calls: 10,
      aim: 'under 2 ms',
    }),
    timed('whole piano, exact modes, no uncertainties', () => analyseScale(grand, exact), { runs: 9 }),
    timed('whole piano, exact modes, with uncertainties', () => analyseScale(grand), { runs: 9 }),
    timed('after one edit of a plain note, no uncertainties', editing(60, rough), {
      calls: 50,
      aim: 'under 2 ms',
    }),
    timed('after one edit of a wound note, core formula', editing(10, rough), {
      calls: 50,
      aim: 'under 2 ms',
    }),
    timed('after one edit of a plain note, with uncertainties', editing(60, {}), {
      calls: 10,
      aim: 'under 2 ms',
    }),
    timed('after one edit of a wound note, exact modes, with uncertainties', editing(10, {}), { calls: 10 }),
  ],
};
