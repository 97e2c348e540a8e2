import { comparedSounds } from '@becket/core';
import type { SoundAnswer, SoundQuestion } from './sound-away.ts';

/** Makes sounds off the main thread: half a minute of them takes tenths of a second. */
addEventListener('message', ({ data }: MessageEvent<SoundQuestion>) => {
  const post = postMessage as (answer: SoundAnswer, options?: { transfer: Transferable[] }) => void;
  const { number, passages, sampleRate } = data;
  try {
    const sounds = comparedSounds(passages, sampleRate) as Float32Array<ArrayBuffer>[];
    post({ number, sounds, problem: undefined }, { transfer: sounds.map(({ buffer }) => buffer) });
  } catch (error) {
    post({ number, sounds: undefined, problem: error instanceof Error ? error.message : String(error) });
  }
});
