import type { Language, NoteToPlay } from '@becket/core';

export interface SoundQuestion {
  readonly number: number;
  readonly passages: readonly (readonly NoteToPlay[])[];
  readonly sampleRate: number;
  /** What a refusal is written in, a BCP 47 tag: a language itself cannot be sent to a worker. */
  readonly locale: string;
}
export type SoundAnswer = { readonly number: number } & (
  | { readonly sounds: readonly Float32Array<ArrayBuffer>[]; readonly problem: undefined }
  | { readonly sounds: undefined; readonly problem: string }
);

let worker: Worker | undefined;
let asked = 0;

/** Makes sounds in a worker, and calls back with them, or with why there are none. Gives back the way to lose interest. */
export function soundAway(
  question: Omit<SoundQuestion, 'number' | 'locale'>,
  onAnswer: (answer: SoundAnswer) => void,
  { locale }: Language,
): () => void {
  worker ??= new Worker(new URL('./sound-worker.ts', import.meta.url), { type: 'module', name: 'sound' });
  asked += 1;
  const number = asked;
  const own = worker;
  const listen = ({ data }: MessageEvent<SoundAnswer>) => {
    if (data.number !== number) return;
    own.removeEventListener('message', listen);
    onAnswer(data);
  };
  own.addEventListener('message', listen);
  own.postMessage({ number, locale, ...question } satisfies SoundQuestion);
  return () => own.removeEventListener('message', listen);
}
