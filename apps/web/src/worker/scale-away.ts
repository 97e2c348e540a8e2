import type { ScaleAnalysis, ScaleNote } from '@becket/core';

export interface ScaleQuestion {
  readonly number: number;
  readonly notes: readonly ScaleNote[];
}
export interface ScaleAnswer {
  readonly number: number;
  readonly analysis: ScaleAnalysis;
}

let worker: Worker | undefined;
let asked = 0;

/**
 * Analyses a scale with its uncertainties in a worker, and calls back with the answer unless another question came
 * after it. Gives back the way to lose interest.
 */
export function analyseAway(
  notes: readonly ScaleNote[],
  onAnswer: (analysis: ScaleAnalysis) => void,
): () => void {
  worker ??= new Worker(new URL('./scale-worker.ts', import.meta.url), { type: 'module', name: 'scale' });
  asked += 1;
  const number = asked;
  const own = worker;
  const listen = ({ data }: MessageEvent<ScaleAnswer>) => {
    if (data.number !== number) return;
    own.removeEventListener('message', listen);
    onAnswer(data.analysis);
  };
  own.addEventListener('message', listen);
  const question: ScaleQuestion = { number, notes };
  own.postMessage(question);
  return () => own.removeEventListener('message', listen);
}
