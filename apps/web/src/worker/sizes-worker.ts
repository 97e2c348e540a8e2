import { inferredWireSizes } from '@becket/tasks/infer-wire-sizes';
import type { SizesAnswer, SizesQuestion } from './sizes-away.ts';

/** The most probable wire sizes of a piano, off the main thread: which string to measure next takes tenths of a second. */
addEventListener('message', ({ data }: MessageEvent<SizesQuestion>) => {
  const { number, read, lattice } = data;
  const answer: SizesAnswer = { number, sizes: inferredWireSizes(read, { lattice }) };
  postMessage(answer);
});
