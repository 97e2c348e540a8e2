import { message } from '../words/index.ts';
import { type BeatRate, beatRate, type SoundingNote } from './beat-rate.ts';

/** An interval and the pairs of partials at which it is heard to beat, the loudest usually first. */
export interface Interval {
  readonly name: string;
  readonly semitones: number;
  /** [partial of the lower note, partial of the upper note] */
  readonly pairs: readonly (readonly [lowerPartial: number, upperPartial: number])[];
}

/**
 * Intervals that a tuner listens to, in the order of their size.
 *
 * Source: the lowest pair of each is the ratio of the pure interval (definition); the further pairs are its multiples.
 */
export const tuningIntervals: readonly Interval[] = [
  { name: message('minor third'), semitones: 3, pairs: [[6, 5]] },
  { name: message('major third'), semitones: 4, pairs: [[5, 4]] },
  {
    name: message('fourth'),
    semitones: 5,
    pairs: [
      [4, 3],
      [8, 6],
    ],
  },
  {
    name: message('fifth'),
    semitones: 7,
    pairs: [
      [3, 2],
      [6, 4],
    ],
  },
  { name: message('minor sixth'), semitones: 8, pairs: [[8, 5]] },
  { name: message('major sixth'), semitones: 9, pairs: [[5, 3]] },
  {
    name: message('octave'),
    semitones: 12,
    pairs: [
      [2, 1],
      [4, 2],
      [6, 3],
      [8, 4],
    ],
  },
  { name: message('major tenth'), semitones: 16, pairs: [[5, 2]] },
  {
    name: message('twelfth'),
    semitones: 19,
    pairs: [
      [3, 1],
      [6, 2],
    ],
  },
  {
    name: message('double octave'),
    semitones: 24,
    pairs: [
      [4, 1],
      [8, 2],
    ],
  },
  { name: message('major seventeenth'), semitones: 28, pairs: [[5, 1]] },
];

/** A note of the compass as it sounds. */
export interface SoundingKey extends SoundingNote {
  readonly key: number;
}

export interface TableBeat extends BeatRate {
  readonly interval: string;
  readonly lowerKey: number;
  readonly upperKey: number;
  readonly lowerPartial: number;
  readonly upperPartial: number;
}

/**
 * Beat rates of every interval of the list that fits between the notes given, at each of its pairs of partials.
 *
 * @param notes      notes in any order; intervals with a missing note are left out
 * @param intervals  those to list, `tuningIntervals` unless given
 * @returns ordered by interval as listed, then lower key, then pair
 *
 * Holds for and Throws: as `beatRate`.
 * Source: `beatRate` for each pair.
 * @example beatTable([{ key: 33, firstPartial: hertz(174.614), inharmonicity: 0 }, { key: 37, firstPartial: hertz(220), inharmonicity: 0 }])[0].rate  // ≈ 6.93 Hz
 */
export function beatTable(
  notes: readonly SoundingKey[],
  intervals: readonly Interval[] = tuningIntervals,
): TableBeat[] {
  const byKey = new Map(notes.map((note) => [note.key, note]));
  const lowerKeys = [...byKey.keys()].sort((a, b) => a - b);
  return intervals.flatMap(({ name, semitones, pairs }) =>
    lowerKeys.flatMap((lowerKey) => {
      const lower = byKey.get(lowerKey)!;
      const upper = byKey.get(lowerKey + semitones);
      if (upper === undefined) return [];
      return pairs.map(([lowerPartial, upperPartial]) => ({
        interval: name,
        lowerKey,
        upperKey: lowerKey + semitones,
        lowerPartial,
        upperPartial,
        ...beatRate({ lower, upper, lowerPartial, upperPartial }),
      }));
    }),
  );
}
