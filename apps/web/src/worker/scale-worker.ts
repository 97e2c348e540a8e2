import { analyseScale } from '@becket/core';
import type { ScaleAnswer, ScaleQuestion } from './scale-away.ts';

/** The whole scale with its uncertainties, off the main thread: it takes some ten times as long as the figures alone. */
addEventListener('message', ({ data }: MessageEvent<ScaleQuestion>) => {
  const answer: ScaleAnswer = { number: data.number, analysis: analyseScale(data.notes) };
  postMessage(answer);
});
