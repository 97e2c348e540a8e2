import { inferredWireSizes } from '@becket/tasks/infer-wire-sizes';
import { loadLanguage } from '../desk/device-language.ts';
import type { SizesAnswer, SizesQuestion } from './sizes-away.ts';

/** The most probable wire sizes of a piano, off the main thread: which string to measure next takes tenths of a second. */
addEventListener('message', async ({ data }: MessageEvent<SizesQuestion>) => {
  const { number, read, lattice, locale } = data;
  const language = await loadLanguage(locale);
  const answer: SizesAnswer = { number, sizes: inferredWireSizes(read, { lattice, language }) };
  postMessage(answer);
});
