import { english } from '@becket/core';
import { config } from 'zod';
import { loadLanguage } from '../desk/device-language.ts';
import type { SaveJobAnswer, SaveJobQuestion } from './save-job-away.ts';

// As in main.ts: said before any schema is made.
config({ jitless: true });

/** Makes the file of a job off the main thread: dozens of photos have to be read, checked and summed. */
addEventListener('message', async ({ data: { job, at, locale } }: MessageEvent<SaveJobQuestion>) => {
  const post = postMessage as (answer: SaveJobAnswer) => void;
  const language = await loadLanguage(locale).catch(() => english);
  try {
    const { saveJobHere } = await import('./save-job-here.ts');
    post({ is: 'saved', ...(await saveJobHere({ job, at, language, onStep: post })) });
  } catch (error) {
    const { sentenceOf } = await import('../desk/sentence-of.ts');
    post({ is: 'failed', sentence: sentenceOf(error, language) });
  }
});
