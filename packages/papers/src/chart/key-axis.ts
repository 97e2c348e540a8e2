import { type Language, noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import type { Axis, Chart } from '../page-tree.ts';

/** C1, the lowest C of a piano, and the keys from one C to the next. */
const LOWEST_C = 4;
const OCTAVE = 12;

/** An axis of key numbers, with a tick at its ends and at each C between. */
export function keyAxis(first: number, last: number, { say }: Language): Axis {
  const ticks = Array.from({ length: 8 }, (_, octave) => LOWEST_C + OCTAVE * octave).filter(
    // A tick too near an end would write over it.
    (key) => Math.min(key - first, last - key) > (last - first) / 12,
  );
  return {
    name: say('key'),
    scale: 'linear',
    from: first - 0.5,
    to: last + 0.5,
    ticks: [first, ...ticks, last].map((at) => ({ at, text: `${at} ${noteName(at)}` })),
  };
}

/** The sections of a piano behind a chart over its keys. */
export const sectionBands = ({ sections }: Job): Chart['bands'] =>
  sections.map(({ section, firstKey, lastKey }) => ({ from: firstKey, to: lastKey, name: section }));
