import { english, type Language, type ScaleNote } from '@becket/core';
import type { PlannedScales, PlanRules } from '@becket/tasks';

export interface PlanQuestion {
  /** The scale that was found, in whole sizes. */
  readonly notes: readonly ScaleNote[];
  readonly rules: PlanRules;
  /** What it is written in, a BCP 47 tag: a language itself cannot be sent to a worker. */
  readonly locale: string;
}
export type PlanAnswer =
  | { readonly is: 'step'; readonly done: number; readonly of: number }
  | PlannedScales
  | { readonly is: 'failed'; readonly sentence: string };

/** What a worker is to whoever asks it: a test hands in its own. */
export type PlanWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): PlanWorker =>
  new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module', name: 'plan' });

/** Plans scales in a worker of its own, and calls back at every step and with the answer. Gives back the way to stop it. */
export function planAway(
  question: Omit<PlanQuestion, 'locale'>,
  onAnswer: (answer: PlanAnswer) => void,
  { locale, say }: Language = english,
  newWorker: () => PlanWorker = inWorker,
): () => void {
  const worker = newWorker();
  let isOver = false;
  const end = () => {
    isOver = true;
    worker.terminate();
  };
  worker.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
    if (isOver) return;
    if (data.is !== 'step') end();
    onAnswer(data);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    if (isOver) return;
    end();
    onAnswer({
      is: 'failed',
      sentence: say(
        'Could not plan scales: this browser ran out of memory for it, or did not load the part of the program that does it. Nothing was changed; load this page again and try once more.',
      ),
    });
  };
  worker.postMessage({ ...question, locale } satisfies PlanQuestion);
  return end;
}
