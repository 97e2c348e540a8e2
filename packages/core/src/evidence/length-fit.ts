import { type Metres, metres, millimetres, noteName, requirePositive } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';
import { FEWEST_FOR_A_LINE, robustSmooth } from './robust-smooth.ts';
import { type SentenceUnit, spokenLengths } from './spoken-length.ts';

/** The speaking length of one note, worked out from its readings. */
export interface LengthReading {
  readonly key: number;
  readonly speakingLength: Metres;
}

export interface LengthFitOptions {
  /** The keys of the section; a line does not go across a break. */
  readonly firstKey: number;
  readonly lastKey: number;
  /** Standard uncertainty of one reading with the rule; 0.5 mm when not given (common practice). */
  readonly singleReading?: Metres;
  /** Of the intervals, 0.5 to 0.999; 0.95 when not given. */
  readonly level?: number;
  /** In which unit the sentences tell their lengths; millimetres when not given. */
  readonly lengthUnit?: SentenceUnit;
}

/** What the section says of one note. */
export interface FittedLength {
  readonly key: number;
  readonly speakingLength: Metres;
  /** Within these the string itself lies, with the chance `level`, if the section says all there is to know of it. */
  readonly low: Metres;
  readonly high: Metres;
  readonly standardUncertainty: Metres;
  readonly hasReading: boolean;
}

export interface LengthOutlier {
  readonly key: number;
  readonly speakingLength: Metres;
  readonly expected: Metres;
  readonly sentence: string;
}

export type LengthFit =
  | {
      readonly isFitted: true;
      /** Every key of the section, bass to treble. */
      readonly lengths: readonly FittedLength[];
      readonly outliers: readonly LengthOutlier[];
      /** Standard deviation of a reading about the line. */
      readonly scatter: Metres;
    }
  | { readonly isFitted: false; readonly reason: string };

/**
 * The speaking lengths of a section as one smooth line: readings that do not belong to it are named, gaps are filled with
 * an interval.
 *
 *     ln L(key) is smooth;   L = L̂ · exp(± t · √(u²(line) + s²/L̂²))
 *
 * A rule reads millimetres, whatever the length, so a reading of ln L counts with the square of its length. The interval
 * holds for the string, not for the line: it has the scatter s about the line in it, which is the hand of the reader and
 * the work of the maker together. t is Student's factor for the readings left after the line has taken its share.
 *
 * @param readings  one for each note that was read, five or more
 * @param language  of the sentences
 *
 * Holds for: one section, strings that end on one bridge and one line of terminations. An interval far outside the readings
 * is wide, and should be believed less still.
 * Error: of simulated gaps the 95 % interval held a further reading in 94 of 100 and the string itself, which scatters less
 * than a reading, in 98.5 (see the test).
 * Throws: RangeError when a key is outside the section or double, or a length is not > 0.
 * Source: `robustSmooth`; the interval as in JCGM 100:2008, G.3 with the degrees of freedom of the fit.
 * @example lengthFit([20, 21, 23, 24, 25].map((key) => ({ key, speakingLength: metres(1.2 * 0.95 ** (key - 20)) })), { firstKey: 20, lastKey: 25 }).lengths.map((one) => Math.round(one.speakingLength * 1000))[2]  // = 1083
 */
export function lengthFit(
  readings: readonly LengthReading[],
  options: LengthFitOptions,
  language: Language = english,
): LengthFit {
  const { firstKey, lastKey, singleReading = millimetres(0.5), level = 0.95, lengthUnit = 'mm' } = options;
  const task = 'the lengths of a section';
  for (const { key, speakingLength } of readings)
    requirePositive(speakingLength, `the speaking length of key ${key}`, task);
  requirePositive(singleReading, 'the uncertainty of a single reading', task);
  if (readings.length < FEWEST_FOR_A_LINE) {
    return {
      isFitted: false,
      reason: language.say(
        'Cannot fill the lengths of {first} to {last} as {needed} notes must be read for a line: found {found}. Read more of them.',
        {
          first: noteName(firstKey),
          last: noteName(lastKey),
          needed: FEWEST_FOR_A_LINE,
          found: readings.length,
        },
      ),
    };
  }
  const typical = Math.exp(
    readings.reduce((sum, { speakingLength }) => sum + Math.log(speakingLength), 0) / readings.length,
  );
  const smooth = robustSmooth(
    readings.map(({ key, speakingLength }) => ({
      key,
      value: Math.log(speakingLength),
      precision: (speakingLength / typical) ** 2,
    })),
    { firstKey, lastKey, leastScatter: singleReading / typical },
  );
  const read = new Set(readings.map(({ key }) => key));
  const factor = studentFactor(level, smooth.freedom);
  const lengths = smooth.line.map((log, place): FittedLength => {
    const length = Math.exp(log);
    const relative = Math.hypot(smooth.uncertainty[place]!, (smooth.scatter * typical) / length);
    return {
      key: firstKey + place,
      speakingLength: metres(length),
      low: metres(length * Math.exp(-factor * relative)),
      high: metres(length * Math.exp(factor * relative)),
      standardUncertainty: metres(length * relative),
      hasReading: read.has(firstKey + place),
    };
  });
  const outliers = smooth.outliers.map(({ point }): LengthOutlier => {
    const { key, speakingLength } = readings[point]!;
    const { speakingLength: expected, low, high } = lengths[key - firstKey]!;
    return {
      key,
      speakingLength,
      expected,
      sentence: outlierSentence(key, { speakingLength, expected, low, high }, lengthUnit, language),
    };
  });
  return { isFitted: true, lengths, outliers, scatter: metres(smooth.scatter * typical) };
}

function outlierSentence(
  key: number,
  { speakingLength, expected, low, high }: Record<'speakingLength' | 'expected' | 'low' | 'high', Metres>,
  unit: SentenceUnit,
  language: Language,
): string {
  const told = spokenLengths(unit, language).length;
  const off = speakingLength - expected;
  return language.say(
    '{note}: a speaking length of {length} is {off} {side, select, more {more} other {less}} than the rest of its section suggests, {expected} ({low} to {high}). Measure it again.',
    {
      note: noteName(key),
      length: told(speakingLength),
      off: told(Math.abs(off)),
      side: off > 0 ? 'more' : 'less',
      expected: told(expected),
      low: told(low).replace(/ \w+$/, ''),
      high: told(high).replace(/ \w+$/, ''),
    },
  );
}

/**
 * Student's two-sided factor: the interval x ± t·u holds the share `level`.
 *
 * From the normal quantile by the series of Cornish and Fisher to 1/ν⁴ (M. Abramowitz, I. A. Stegun, 26.7.5; from memory),
 * within 0.5 % for ν ≥ 3 at 95 %; the test compares it with the table of JCGM 100:2008, G.2. Below 3 it is taken at 3:
 * an interval from so little is no interval.
 */
export function studentFactor(level: number, freedom: number): number {
  const z = normalQuantile((1 + level) / 2);
  const n = Math.max(3, freedom);
  return (
    z +
    (z ** 3 + z) / (4 * n) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * n ** 2) +
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * n ** 3) +
    (79 * z ** 9 + 776 * z ** 7 + 1482 * z ** 5 - 1920 * z ** 3 - 945 * z) / (92160 * n ** 4)
  );
}

/** Normal quantile above the middle, from the error function by bisection: slow, exact, and seldom called. */
function normalQuantile(share: number): number {
  let [low, high] = [0, 8];
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (low + high) / 2;
    if (normalShareBelow(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** ½ + φ(x)·(x + x³/3 + x⁵/15 + …), which converges for every x (Abramowitz and Stegun, 26.2.11; from memory). */
function normalShareBelow(x: number): number {
  let term = x;
  let sum = x;
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return 0.5 + (sum * Math.exp(-0.5 * x * x)) / Math.sqrt(2 * Math.PI);
}
