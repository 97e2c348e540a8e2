import { planScales } from '@becket/tasks/plan-scales';
import { config } from 'zod';
import type { PlanAnswer, PlanQuestion } from './plan-away.ts';

// As in main.ts: said before any schema is made.
config({ jitless: true });

/** Several scales under several weights, off the main thread: it takes seconds. */
addEventListener('message', ({ data: { notes, rules } }: MessageEvent<PlanQuestion>) => {
  const post = postMessage as (answer: PlanAnswer) => void;
  try {
    post(planScales(notes, rules, (done, of) => post({ is: 'step', done, of })));
  } catch (error) {
    post({ is: 'failed', sentence: error instanceof Error ? error.message : String(error) });
  }
});
