import { comparedSounds, english } from '@becket/core';
import { loadLanguage } from '../desk/device-language.ts';
import type { SoundAnswer, SoundQuestion } from './sound-away.ts';

/** Makes sounds off the main thread: half a minute of them takes tenths of a second. */
addEventListener('message', async ({ data }: MessageEvent<SoundQuestion>) => {
  const post = postMessage as (answer: SoundAnswer, options?: { transfer: Transferable[] }) => void;
  const { number, passages, sampleRate, locale } = data;
  const language = await loadLanguage(locale).catch(() => english);
  try {
    const sounds = comparedSounds(passages, sampleRate, language) as Float32Array<ArrayBuffer>[];
    post({ number, sounds, problem: undefined }, { transfer: sounds.map(({ buffer }) => buffer) });
  } catch (error) {
    post({ number, sounds: undefined, problem: error instanceof Error ? error.message : String(error) });
  }
});
