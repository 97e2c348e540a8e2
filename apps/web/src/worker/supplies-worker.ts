import { suppliesOf } from '@becket/tasks';
import { loadLanguage } from '../desk/device-language.ts';
import type { SuppliesAnswer, SuppliesQuestion } from './supplies-away.ts';

/** What a job needs, off the main thread: inferring its wire sizes takes tenths of a second. */
addEventListener('message', async ({ data }: MessageEvent<SuppliesQuestion>) => {
  const { number, job, policy, locale } = data;
  let answer: SuppliesAnswer;
  try {
    answer = { number, supplies: suppliesOf(job, policy, await loadLanguage(locale)), problem: undefined };
  } catch (error) {
    answer = {
      number,
      supplies: undefined,
      problem: error instanceof Error ? error.message : String(error),
    };
  }
  postMessage(answer);
});
