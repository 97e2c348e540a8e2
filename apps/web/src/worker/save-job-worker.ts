import { config } from 'zod';
import type { SaveJobAnswer, SaveJobQuestion } from './save-job-away.ts';

// As in main.ts: said before any schema is made.
config({ jitless: true });

/** Makes the file of a job off the main thread: dozens of photos have to be read, checked and summed. */
addEventListener('message', async ({ data: { job, at } }: MessageEvent<SaveJobQuestion>) => {
  const post = postMessage as (answer: SaveJobAnswer) => void;
  try {
    const { saveJobHere } = await import('./save-job-here.ts');
    post({ is: 'saved', ...(await saveJobHere({ job, at, onStep: post })) });
  } catch (error) {
    const { sentenceOf } = await import('../desk/sentence-of.ts');
    post({ is: 'failed', sentence: sentenceOf(error) });
  }
});
