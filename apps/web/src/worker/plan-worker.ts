import { planScales } from '@becket/tasks/plan-scales';
import { config } from 'zod';
import { loadLanguage } from '../desk/device-language.ts';
import type { PlanAnswer, PlanQuestion } from './plan-away.ts';

// As in main.ts: said before any schema is made.
config({ jitless: true });

/** Several scales under several weights, off the main thread: it takes seconds. */
addEventListener('message', async ({ data: { notes, rules, locale } }: MessageEvent<PlanQuestion>) => {
  const post = postMessage as (answer: PlanAnswer) => void;
  try {
    const language = await loadLanguage(locale);
    post(planScales(notes, rules, (done, of) => post({ is: 'step', done, of }), language));
  } catch (error) {
    post({ is: 'failed', sentence: error instanceof Error ? error.message : String(error) });
  }
});
