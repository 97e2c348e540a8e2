import type { Language } from '@becket/core';
import type { InferredWireSizes, ReadForWireSizes, WireLatticeName } from '@becket/tasks';

export interface SizesQuestion {
  readonly number: number;
  readonly read: ReadForWireSizes;
  readonly lattice: WireLatticeName | undefined;
  /** What it is written in, a BCP 47 tag: a language itself cannot be sent to a worker. */
  readonly locale: string;
}
export interface SizesAnswer {
  readonly number: number;
  readonly sizes: InferredWireSizes | undefined;
}

let worker: Worker | undefined;
let asked = 0;

/**
 * Infers the wire sizes of a piano in a worker, and calls back with the answer unless another question came after it.
 * Gives back the way to lose interest.
 */
export function inferSizesAway(
  { unisons, readings, sizeStamps }: ReadForWireSizes,
  lattice: WireLatticeName | undefined,
  onAnswer: (sizes: InferredWireSizes | undefined) => void,
  { locale }: Language,
): () => void {
  worker ??= new Worker(new URL('./sizes-worker.ts', import.meta.url), { type: 'module', name: 'sizes' });
  asked += 1;
  const number = asked;
  const own = worker;
  const listen = ({ data }: MessageEvent<SizesAnswer>) => {
    if (data.number !== number) return;
    own.removeEventListener('message', listen);
    onAnswer(data.sizes);
  };
  own.addEventListener('message', listen);
  // Only what the inference looks at travels.
  const read = {
    unisons,
    readings: readings.filter(({ quantity }) => quantity === 'wire-diameter'),
    sizeStamps,
  };
  const question: SizesQuestion = { number, read, lattice, locale };
  own.postMessage(question);
  return () => own.removeEventListener('message', listen);
}
