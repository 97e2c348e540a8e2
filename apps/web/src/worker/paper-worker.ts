import { config } from 'zod';
import type { PaperAnswer, PaperQuestion } from './paper-away.ts';

// As in main.ts: said before any schema is made.
config({ jitless: true });

/** Sets papers in type off the main thread: the thickest takes some seconds on a phone. */
addEventListener('message', async ({ data: { number, job, wish } }: MessageEvent<PaperQuestion>) => {
  const post = postMessage as (answer: PaperAnswer) => void;
  try {
    const { paperHere } = await import('./paper-here.ts');
    post({ number, is: 'made', ...(await paperHere(job, wish)) });
  } catch (error) {
    const { sentenceOf } = await import('../desk/sentence-of.ts');
    post({ number, is: 'failed', sentence: sentenceOf(error) });
  }
});
