import { type Metres, metres } from '@becket/core';
import type { AsFoundNote } from '@becket/journal';
import type { CutPolicy } from './cut-policy.ts';

type WireEnd = 'front-length' | 'back-length' | 'hitch-pin-diameter';

export type EndFrom = 'as read' | 'line between its neighbours' | 'starting figure';

export interface EndLength {
  readonly value: Metres;
  readonly from: EndFrom;
}

/** What a cut length needs beside the speaking length: the lengths in front of it and behind it, and the pin of a loop. */
export interface WireEnds {
  readonly front: EndLength;
  readonly back: EndLength;
  readonly hitchPin: EndLength;
}

type ReadNote = Pick<AsFoundNote, 'key' | 'section' | 'figures'>;

/**
 * The ends of the strings of a piano, note by note.
 *
 * What was not read at a note lies on the straight line between the nearest notes of its section at which it was; beyond
 * the last of them it is as there. Where the section has none, it is the figure of the policy. Each says so.
 */
export function wireEnds(notes: readonly AsFoundNote[], policy: CutPolicy): (note: ReadNote) => WireEnds {
  const otherwise: Readonly<Record<WireEnd, number>> = {
    'front-length': policy.frontLength_m,
    'back-length': policy.backLength_m,
    'hitch-pin-diameter': policy.hitchPinDiameter_m,
  };
  const read = new Map<string, { key: number; value: number }[]>();
  const readAlong = (section: string | undefined, end: WireEnd) => {
    const name = `${section}/${end}`;
    const known =
      read.get(name) ??
      notes
        .filter((note) => note.section?.section === section)
        .flatMap(({ key, figures }) => {
          const value = figures[end]?.value ?? 0;
          return value > 0 ? [{ key, value }] : [];
        });
    read.set(name, known);
    return known;
  };
  const endOf = ({ key, section, figures }: ReadNote, end: WireEnd): EndLength => {
    const own = figures[end]?.value ?? 0;
    if (own > 0) return { value: metres(own), from: 'as read' };
    const known = readAlong(section?.section, end);
    const [below, above] = [known.findLast((one) => one.key < key), known.find((one) => one.key > key)];
    const [from, to] = [below ?? above, above ?? below];
    if (from === undefined || to === undefined)
      return { value: metres(otherwise[end]), from: 'starting figure' };
    const share = from.key === to.key ? 0 : (key - from.key) / (to.key - from.key);
    return {
      value: metres(from.value + share * (to.value - from.value)),
      from: 'line between its neighbours',
    };
  };
  return (note) => ({
    front: endOf(note, 'front-length'),
    back: endOf(note, 'back-length'),
    hitchPin: endOf(note, 'hitch-pin-diameter'),
  });
}
