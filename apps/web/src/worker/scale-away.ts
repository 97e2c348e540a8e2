import type { ScaleAnalysis, ScaleNote } from '@becket/core';

export interface ScaleQuestion {
  readonly number: number;
  readonly notes: readonly ScaleNote[];
  /** By its name, as functions do not travel; the usual table when not given. */
  readonly strengthTable?: string | undefined;
}
export type ScaleAnswer = { readonly number: number } & (
  | { readonly analysis: ScaleAnalysis; readonly problem: undefined }
  | { readonly analysis: undefined; readonly problem: string }
);

let worker: Worker | undefined;
let asked = 0;

/**
 * Analyses a scale with its uncertainties in a worker, and calls back with the answer, or with why there is none. Gives
 * back the way to lose interest.
 */
export function analyseAway(
  notes: readonly ScaleNote[],
  onAnswer: (answer: ScaleAnswer) => void,
  strengthTable?: string,
): () => void {
  worker ??= new Worker(new URL('./scale-worker.ts', import.meta.url), { type: 'module', name: 'scale' });
  asked += 1;
  const number = asked;
  const own = worker;
  const listen = ({ data }: MessageEvent<ScaleAnswer>) => {
    if (data.number !== number) return;
    own.removeEventListener('message', listen);
    onAnswer(data);
  };
  own.addEventListener('message', listen);
  const question: ScaleQuestion = { number, notes, strengthTable };
  own.postMessage(question);
  return () => own.removeEventListener('message', listen);
}
