import type { Language } from '@becket/core';
import { type EncodedPhoto, encodePhoto } from '../photos/photo-encoding.ts';

export interface PhotoQuestion {
  readonly number: number;
  readonly file: File;
  /** What a refusal is said in. */
  readonly locale: string;
}
export type PhotoAnswer =
  | { readonly number: number; readonly photo: EncodedPhoto }
  | { readonly number: number; readonly sentence: string };

let worker: Worker | undefined;
let asked = 0;

/** Makes a photo anew in a worker. Throws RangeError with one sentence when the picture cannot be read. */
export function encodeAway(file: File, language: Language): Promise<EncodedPhoto> {
  // Some browsers have no canvas in a worker: there the page has to wait.
  if (typeof OffscreenCanvas === 'undefined') return encodePhoto(file, language);
  worker ??= new Worker(new URL('./photo-worker.ts', import.meta.url), { type: 'module', name: 'photo' });
  asked += 1;
  const number = asked;
  const own = worker;
  return new Promise((done, failed) => {
    const stop = () => {
      own.removeEventListener('message', listen);
      own.removeEventListener('error', broke);
    };
    const listen = ({ data }: MessageEvent<PhotoAnswer>) => {
      if (data.number !== number) return;
      stop();
      if ('photo' in data) done(data.photo);
      else failed(new RangeError(data.sentence));
    };
    const broke = () => {
      stop();
      own.terminate();
      worker = undefined;
      failed(
        new RangeError(
          language.say(
            "Cannot take '{name}': this browser ran out of memory for it. Close other tabs, or take it with a lower resolution.",
            { name: file.name },
          ),
        ),
      );
    };
    own.addEventListener('message', listen);
    own.addEventListener('error', broke);
    own.postMessage({ number, file, locale: language.locale } satisfies PhotoQuestion);
  });
}
