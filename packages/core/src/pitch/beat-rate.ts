import { type Hertz, hertz, requireNotNegative, requirePositive } from '../units/index.ts';
import { partialFromFirst, requirePartial } from './partials.ts';

/** A note as it sounds. */
export interface SoundingNote {
  /** First partial [Hz]. */
  readonly firstPartial: Hertz;
  /** B in f_n = n·f₀·√(1 + B·n²); 0 for exact multiples. */
  readonly inharmonicity: number;
  /** Standard uncertainties; what is left out counts as exactly known. */
  readonly firstPartialUncertainty?: Hertz;
  readonly inharmonicityUncertainty?: number;
}

export interface BeatRate {
  /** Beats a second, with a sign: above zero the interval is wide, below zero narrow, zero still. */
  readonly rate: Hertz;
  readonly width: 'wide' | 'narrow' | 'still';
  /** Where it is heard: the mean of the two partials that nearly coincide. */
  readonly heardAt: Hertz;
  /** Of the rate [Hz]; 0 when nothing was said to be uncertain. */
  readonly standardUncertainty: Hertz;
}

/**
 * Beat rate of an interval at one pair of partials: partial p of the lower note against partial q of the upper.
 *
 *     rate = f_q(upper) − f_p(lower)        f_n = n · f₁ · √((1 + B·n²)/(1 + B))
 *
 * @param interval.lower         lower note
 * @param interval.upper         upper note
 * @param interval.lowerPartial  p, whole number from 1 (the larger number of the ratio: 3 in a 3:2 fifth)
 * @param interval.upperPartial  q, whole number from 1
 * @returns rate [beats/s] with its sign, what the sign means, where it is heard, and u(rate)
 *
 * Holds for: partials that follow the law above; the beat of two partials only, not how loud it is.
 * Error: first order, u² = Σ (∂rate/∂x · u(x))² over f₁ and B of both notes, taken as independent (JCGM 100:2008, 5.1.2).
 * Throws: RangeError when an input is outside its range.
 * Source: definition of a beat as the difference of two frequencies.
 * @example beatRate({ lower: { firstPartial: hertz(220), inharmonicity: 0 }, upper: { firstPartial: hertz(329.628), inharmonicity: 0 }, lowerPartial: 3, upperPartial: 2 }).rate  // ≈ -0.744 Hz
 */
export function beatRate(interval: {
  lower: SoundingNote;
  upper: SoundingNote;
  lowerPartial: number;
  upperPartial: number;
}): BeatRate {
  const task = 'a beat rate';
  const p = requirePartial(interval.lowerPartial, 'the partial of the lower note', task);
  const q = requirePartial(interval.upperPartial, 'the partial of the upper note', task);
  const lower = soundingPartial(interval.lower, p);
  const upper = soundingPartial(interval.upper, q);
  const rate = upper.frequency - lower.frequency;
  return {
    rate: hertz(rate),
    width: rate > 0 ? 'wide' : rate < 0 ? 'narrow' : 'still',
    heardAt: hertz((upper.frequency + lower.frequency) / 2),
    standardUncertainty: hertz(Math.hypot(upper.uncertainty, lower.uncertainty)),
  };
}

function soundingPartial(note: SoundingNote, n: number): { frequency: number; uncertainty: number } {
  const task = 'a beat rate';
  requirePositive(note.firstPartial, 'the first partial', task);
  const uFirst = requireNotNegative(
    note.firstPartialUncertainty ?? 0,
    'the uncertainty of the first partial',
    task,
  );
  const uB = requireNotNegative(note.inharmonicityUncertainty ?? 0, 'the uncertainty of inharmonicity', task);
  const B = note.inharmonicity;
  const frequency = partialFromFirst({ firstPartial: note.firstPartial, inharmonicity: B, partial: n });
  const perFirst = frequency / note.firstPartial;
  const perB = (frequency / 2) * ((n * n) / (1 + B * n * n) - 1 / (1 + B));
  return { frequency, uncertainty: Math.hypot(perFirst * uFirst, perB * uB) };
}
