import { grouped } from '../lists/index.ts';
import {
  beatTable,
  type Interval,
  type NoteInharmonicity,
  type StretchOptions,
  stretchedTuning,
  type TableBeat,
  tuningIntervals,
} from '../pitch/index.ts';
import { type Hertz, hertz, requirePositive } from '../units/index.ts';

/** One interval near the break, as it beats in the scale that was found and in the one that is proposed. */
export interface BreakBeat
  extends Pick<TableBeat, 'interval' | 'lowerKey' | 'upperKey' | 'lowerPartial' | 'upperPartial'> {
  readonly before: Hertz;
  readonly after: Hertz;
  /** Whether one note lies below the break that was found and the other above. */
  readonly isAcrossBreak: boolean;
}

/** How evenly one interval at one pair of partials runs up through the break. */
export interface BreakEvenness extends Pick<TableBeat, 'interval' | 'lowerPartial' | 'upperPartial'> {
  /** Largest change of the rate from one key to the next. */
  readonly largestStepBefore: Hertz;
  readonly largestStepAfter: Hertz;
}

export interface BreakBeats {
  readonly beats: readonly BreakBeat[];
  readonly evenness: readonly BreakEvenness[];
}

/** What a tuner checks an octave of temperament by, and the octave itself. */
const INTERVALS_AT_BREAK: readonly Interval[] = tuningIntervals.filter(({ name }) =>
  ['minor third', 'major third', 'fourth', 'fifth', 'octave'].includes(name),
);

/**
 * Beat rates round the break, before and after a change of scale.
 *
 * Each scale is tuned to its own inharmonicity first, by the same rule of octaves, temperament and reference pitch: what is
 * compared is two well-tuned pianos, so the rates show what the strings do and not who tuned them.
 *
 * @param scales.before    B of every note that was found, consecutive keys, at least 25, A4 among them
 * @param scales.after     B of the same keys in the proposed scale
 * @param scales.breakKey  lowest plain note of the scale that was found
 * @param scales.reach     how many keys below and above the break are listed; default 12
 * @param scales.tuning    reference pitch, temperament, octave rule, as in `stretchedTuning`
 * @returns thirds, fourths, fifths and octaves with both notes within reach, by interval and lower key
 *
 * Holds for: partials that follow B, see `beatRate`; those of wound strings do so only as well as their B was fitted.
 * Throws: RangeError when the two scales have not the same keys, or as `stretchedTuning`.
 * Source: `stretchedTuning` and `beatTable`.
 * @example  breakBeats({ before: Array.from({ length: 40 }, (_, index) => ({ key: index + 20, inharmonicity: 0 })), after: Array.from({ length: 40 }, (_, index) => ({ key: index + 20, inharmonicity: 0 })), breakKey: 33, reach: 8, tuning: { referencePitch: hertz(440) } }).beats.find(({ interval, lowerKey }) => interval === 'major third' && lowerKey === 33).before  // ≈ 6.929 Hz
 */
export function breakBeats(scales: {
  before: readonly NoteInharmonicity[];
  after: readonly NoteInharmonicity[];
  breakKey: number;
  reach?: number | undefined;
  tuning: StretchOptions;
}): BreakBeats {
  const { before, after, breakKey, tuning } = scales;
  const task = 'beat rates round the break';
  const reach = requirePositive(scales.reach ?? 12, 'the reach in keys', task);
  const areSameKeys =
    before.length === after.length && before.every(({ key }, index) => key === after[index]!.key);
  if (!areSameKeys) {
    throw new RangeError(
      `Cannot compute ${task} as both scales need the same keys: found ${before.length} and ${after.length} notes`,
    );
  }
  const isNear = ({ key }: { key: number }): boolean => key >= breakKey - reach && key < breakKey + reach;
  const tableOf = (notes: readonly NoteInharmonicity[]): TableBeat[] => {
    const { targets } = stretchedTuning(notes, tuning);
    const sounding = notes.map(({ key, inharmonicity }, index) => ({
      key,
      inharmonicity,
      firstPartial: targets[index]!.frequency,
    }));
    return beatTable(sounding.filter(isNear), INTERVALS_AT_BREAK);
  };
  const afterTable = tableOf(after);
  const beats = tableOf(before).map((beat, index): BreakBeat => {
    const { interval, lowerKey, upperKey, lowerPartial, upperPartial } = beat;
    return {
      interval,
      lowerKey,
      upperKey,
      lowerPartial,
      upperPartial,
      before: beat.rate,
      after: afterTable[index]!.rate,
      isAcrossBreak: lowerKey < breakKey && upperKey >= breakKey,
    };
  });
  return { beats, evenness: evennessOf(beats) };
}

function evennessOf(beats: readonly BreakBeat[]): BreakEvenness[] {
  const runs = grouped(
    beats,
    ({ interval, lowerPartial, upperPartial }) => `${interval} ${lowerPartial}:${upperPartial}`,
  );
  return [...runs.values()].map((run) => {
    const { interval, lowerPartial, upperPartial } = run[0]!;
    const largestStep = (rate: (beat: BreakBeat) => number): Hertz =>
      hertz(
        run
          .slice(1)
          .reduce((most, beat, index) => Math.max(most, Math.abs(rate(beat) - rate(run[index]!))), 0),
      );
    return {
      interval,
      lowerPartial,
      upperPartial,
      largestStepBefore: largestStep(({ before }) => before),
      largestStepAfter: largestStep(({ after }) => after),
    };
  });
}
