import { analyseScale, strengthTableNamed } from '@becket/core';
import type { ScaleAnswer, ScaleQuestion } from './scale-away.ts';

/** The whole scale with its uncertainties, off the main thread: it takes some ten times as long as the figures alone. */
addEventListener('message', ({ data }: MessageEvent<ScaleQuestion>) => {
  let answer: ScaleAnswer;
  try {
    const strengthTable =
      data.strengthTable === undefined ? undefined : strengthTableNamed(data.strengthTable);
    answer = {
      number: data.number,
      analysis: analyseScale(data.notes, { strengthTable }),
      problem: undefined,
    };
  } catch (error) {
    const problem = error instanceof Error ? error.message : String(error);
    answer = { number: data.number, analysis: undefined, problem };
  }
  postMessage(answer);
});
