import {
  A4_KEY,
  type Cents,
  cents,
  type Hertz,
  hertz,
  noteName,
  requireKey,
  requireNotNegative,
  requireWithin,
} from '../units/index.ts';
import { equalTemperedFrequency } from './equal-temperament.ts';
import { type OctaveRule, octaveShares, usualOctaveRule } from './octave-rule.ts';
import { centsAboveHarmonic, centsAboveHarmonicPerB } from './partials.ts';
import { solvePositiveDefinite } from './positive-definite.ts';
import { equalTemperament, type Temperament, temperamentOffset } from './temperament.ts';

/** What is known of one note of the compass. */
export interface NoteInharmonicity {
  readonly key: number;
  /** B in f_n = n·f₀·√(1 + B·n²), ≥ 0. */
  readonly inharmonicity: number;
  /** u(B), standard uncertainty; left out when it is not known. */
  readonly standardUncertainty?: number;
}

export interface StretchOptions {
  /** Frequency of the first partial of A4. */
  readonly referencePitch: Hertz;
  readonly temperament?: Temperament;
  readonly octaveRule?: OctaveRule;
  /**
   * λ, how much a bend in the curve counts against an octave that is off its rule; > 0, 10 unless given. Small values
   * follow every jump of B from note to note; large ones draw an even curve and leave the octaves to disagree.
   */
  readonly smoothness?: number;
  /**
   * r, how far the errors of B go together from note to note: 0 (independent, the default) when each was measured by
   * itself, 1 when all come from one doubtful constant, such as the modulus of the wire.
   */
  readonly correlation?: number;
}

/** Where the first partial of one note belongs. */
export interface TuningTarget {
  readonly key: number;
  /** Of the first partial [Hz]. */
  readonly frequency: Hertz;
  /** Distance of the first partial from equal temperament at the same reference pitch, from inharmonicity alone. */
  readonly stretch: Cents;
  /** Distance that the temperament adds to it. */
  readonly temperamentOffset: Cents;
  /** Of stretch and frequency; left out unless every note came with its u(B). */
  readonly standardUncertainty?: { readonly stretch: Cents; readonly frequency: Hertz };
}

/** How well one octave of the curve keeps its rule. */
export interface TunedOctave {
  readonly lowerKey: number;
  /** Width between the first partials that the rule asks for. */
  readonly asked: Cents;
  /** Width that the curve gives; in an unequal temperament too, as every octave has the same offset at both ends. */
  readonly given: Cents;
}

export interface StretchedTuning {
  readonly targets: readonly TuningTarget[];
  readonly octaves: readonly TunedOctave[];
  readonly referencePitch: Hertz;
  readonly temperament: string;
  readonly octaveRule: string;
}

/** Two octaves with both ends: below that, the curve is not determined by its octaves. */
const FEWEST_NOTES = 25;

/** Third difference of neighbouring notes; it vanishes on any parabola, so an evenly growing stretch costs nothing. */
const BEND = [-1, 3, -3, 1] as const;

/**
 * Target frequency of every first partial over a compass, stretched so that octaves match at their partials.
 *
 *     s(k)  stretch of key k [cents], s(A4) = 0
 *     w(k)  = Σ share · (c_p(B_k) − c_p/2(B_k+12))         what the octave above key k asks for beyond 1200 cents
 *     Σ_k (s(k+12) − s(k) − w(k))²  +  λ · Σ_k (s(k+3) − 3·s(k+2) + 3·s(k+1) − s(k))²   is least
 *     f(k)  = f_A · 2^((key − 49)/12 + (s(k) + t(k))/1200)
 *
 * with c_n(B) = 600·log₂((1 + B·n²)/(1 + B)), the shares and partials p by the octave rule, and t(k) the temperament.
 * The first sum alone leaves the twelve notes within an octave undetermined; the second chooses the smoothest of the
 * curves and shares out what jumps of B (at the break from plain to wound strings) would make uneven.
 *
 * @param notes     consecutive keys, lowest first, at least 25, A4 among them; index 0 = lowest note
 * @param options   see `StretchOptions`
 * @returns targets in the order of the notes, octaves in the order of their lower notes
 *
 * All cents are distances between FIRST PARTIALS, not ideal first modes. Without inharmonicity the result is equal
 * temperament to the last digit.
 * Holds for: partials that follow f_n = n·f₀·√(1 + B·n²), up to the sixth. It knows nothing of unisons, soundboard
 * resonances or taste.
 * Error: first order, u²(s_j) = (1 − r)·Σ_k (∂s_j/∂B_k · u(B_k))² + r·(Σ_k ∂s_j/∂B_k · u(B_k))² (JCGM 100:2008, 5.2.2);
 * the reference pitch is a choice and has none. A tenth of a cent deserves to be printed.
 * Throws: RangeError when the keys are not consecutive, too few, without A4, or a value is outside its range.
 * Source: the matching of partials is common practice; the least squares and λ = 10 are our own. See
 * docs/explanation/temperament-stretch-beats.md.
 * @example stretchedTuning(Array.from({ length: 88 }, (_, index) => ({ key: index + 1, inharmonicity: 0.0004 })), { referencePitch: hertz(440) }).targets[60].stretch  // ≈ 1.787 cents
 */
export function stretchedTuning(
  notes: readonly NoteInharmonicity[],
  options: StretchOptions,
): StretchedTuning {
  const {
    referencePitch,
    temperament = equalTemperament,
    octaveRule = usualOctaveRule,
    smoothness = 10,
    correlation = 0,
  } = options;
  const task = 'a stretched tuning';
  requireCompass(notes);
  if (!(Number.isFinite(smoothness) && smoothness > 0)) {
    throw new RangeError(`Cannot compute ${task} as smoothness must be > 0: current value is ${smoothness}`);
  }
  requireWithin(correlation, 0, 1, 'correlation', task);

  const shares = notes.slice(0, -12).map(({ key }) => octaveShares(key, octaveRule));
  const asked = shares.map((octave, index) =>
    octave.reduce((sum, { lowerPartial, share }) => {
      const lower = centsAboveHarmonic(notes[index]!.inharmonicity, lowerPartial);
      const upper = centsAboveHarmonic(notes[index + 12]!.inharmonicity, lowerPartial / 2);
      return sum + share * (lower - upper);
    }, 0),
  );

  // Change of what each octave asks for, per unit of u(B) of each note: column k, one value an octave.
  const uncertainties = notes.map(({ standardUncertainty }) => standardUncertainty);
  const areAllKnown = uncertainties.every((u): u is number => u !== undefined);
  const columns = areAllKnown ? notes.map((_, index) => askedPerUncertainty(index)) : [];
  function askedPerUncertainty(index: number): number[] {
    const { inharmonicity, standardUncertainty } = notes[index]!;
    const column = Array<number>(shares.length).fill(0);
    for (const { lowerPartial, share } of shares[index] ?? []) {
      column[index]! += share * centsAboveHarmonicPerB(inharmonicity, lowerPartial) * standardUncertainty!;
    }
    for (const { lowerPartial, share } of shares[index - 12] ?? []) {
      column[index - 12]! -=
        share * centsAboveHarmonicPerB(inharmonicity, lowerPartial / 2) * standardUncertainty!;
    }
    return column;
  }

  const anchor = notes.findIndex(({ key }) => key === A4_KEY);
  const [stretches, ...changes] = smoothestCurves([asked, ...columns], {
    count: notes.length,
    anchor,
    smoothness,
  });

  const targets = notes.map(({ key }, index): TuningTarget => {
    const stretch = stretches![index]!;
    const offset = temperamentOffset(key, temperament);
    const frequency = equalTemperedFrequency(key, referencePitch) * 2 ** ((stretch + offset) / 1200);
    const target = {
      key,
      frequency: hertz(frequency),
      stretch: cents(stretch),
      temperamentOffset: cents(offset),
    };
    if (!areAllKnown) return target;
    const independent = changes.reduce((sum, change) => sum + change[index]! ** 2, 0);
    const together = changes.reduce((sum, change) => sum + change[index]!, 0) ** 2;
    const uncertainty = Math.sqrt((1 - correlation) * independent + correlation * together);
    return {
      ...target,
      standardUncertainty: {
        stretch: cents(uncertainty),
        frequency: hertz((frequency * uncertainty * Math.LN2) / 1200),
      },
    };
  });

  const octaves = asked.map((width, index) => ({
    lowerKey: notes[index]!.key,
    asked: cents(1200 + width),
    given: cents(1200 + stretches![index + 12]! - stretches![index]!),
  }));
  return { targets, octaves, referencePitch, temperament: temperament.name, octaveRule: octaveRule.name };
}

/**
 * The curve of least squares for each list of asked widths; all share one matrix, so it is factored once. The anchor
 * note is held at 0 by leaving it out of the unknowns.
 */
function smoothestCurves(
  askedLists: readonly (readonly number[])[],
  { count, anchor, smoothness }: { count: number; anchor: number; smoothness: number },
): number[][] {
  const octaveCount = count - 12;
  const matrix = Array.from({ length: count }, () => Array<number>(count).fill(0));
  const add = (row: number, column: number, value: number) => {
    matrix[row]![column]! += value;
  };
  for (let k = 0; k < octaveCount; k++) {
    add(k, k, 1);
    add(k + 12, k + 12, 1);
    add(k, k + 12, -1);
    add(k + 12, k, -1);
  }
  for (let k = 0; k + 3 < count; k++) {
    BEND.forEach((a, i) => {
      BEND.forEach((b, j) => {
        add(k + i, k + j, smoothness * a * b);
      });
    });
  }

  const isFree = (index: number) => index !== anchor;
  const free = <T>(values: readonly T[]) => values.filter((_, index) => isFree(index));
  const rightSides = askedLists.map((asked) => {
    const b = Array<number>(count).fill(0);
    asked.forEach((width, k) => {
      b[k]! -= width;
      b[k + 12]! += width;
    });
    return free(b);
  });
  return solvePositiveDefinite(free(matrix).map(free), rightSides).map((solution) => [
    ...solution.slice(0, anchor),
    0,
    ...solution.slice(anchor),
  ]);
}

function requireCompass(notes: readonly NoteInharmonicity[]): void {
  const task = 'a stretched tuning';
  if (notes.length < FEWEST_NOTES) {
    throw new RangeError(
      `Cannot compute ${task} as at least ${FEWEST_NOTES} consecutive notes are needed: found ${notes.length}`,
    );
  }
  notes.forEach(({ key, inharmonicity, standardUncertainty }, index) => {
    requireKey(key, task);
    const before = notes[index - 1];
    if (before !== undefined && key !== before.key + 1) {
      throw new RangeError(
        `Cannot compute ${task} as the keys must follow one another: found key ${key} after key ${before.key}; fill the gap first`,
      );
    }
    requireNotNegative(inharmonicity, `inharmonicity of ${noteName(key)}`, task);
    if (standardUncertainty !== undefined) {
      requireNotNegative(standardUncertainty, `the uncertainty of inharmonicity of ${noteName(key)}`, task);
    }
  });
  if (!notes.some(({ key }) => key === A4_KEY)) {
    throw new RangeError(`Cannot compute ${task} as A4 (key 49) must be among the notes: found none`);
  }
}
