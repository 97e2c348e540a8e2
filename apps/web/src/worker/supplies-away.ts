import type { Language } from '@becket/core';
import type { Job } from '@becket/journal';
import type { OrderPolicy, Supplies } from '@becket/tasks';

export interface SuppliesWish {
  readonly job: Job;
  /** By the figures of this shop. */
  readonly policy: OrderPolicy;
}
export interface SuppliesQuestion extends SuppliesWish {
  readonly number: number;
  /** What it is written in, a BCP 47 tag: a language itself cannot be sent to a worker. */
  readonly locale: string;
}
export interface SuppliesAnswer {
  readonly number: number;
  readonly supplies: Supplies | undefined;
  /** Why nothing could be counted. */
  readonly problem: string | undefined;
}

let worker: Worker | undefined;
let asked = 0;

/** Counts what a job needs in a worker, and calls back. Gives back the way to lose interest. */
export function countSuppliesAway(
  wish: SuppliesWish,
  onAnswer: (answer: SuppliesAnswer) => void,
  { locale }: Language,
): () => void {
  worker ??= new Worker(new URL('./supplies-worker.ts', import.meta.url), {
    type: 'module',
    name: 'supplies',
  });
  asked += 1;
  const number = asked;
  const own = worker;
  const listen = ({ data }: MessageEvent<SuppliesAnswer>) => {
    if (data.number !== number) return;
    own.removeEventListener('message', listen);
    onAnswer(data);
  };
  own.addEventListener('message', listen);
  const question: SuppliesQuestion = { number, locale, ...wish };
  own.postMessage(question);
  return () => own.removeEventListener('message', listen);
}
