import { type Cents, cents, type Hertz, hertz, requireNotNegative, requirePositive } from '../units/index.ts';

/*
 * All of `pitch` speaks of a note by its FIRST PARTIAL, f₁, because that is what a tuner hears and an instrument
 * measures. The ideal first mode f₀ of the same string without stiffness lies below it by ½·1200·log₂(1 + B) cents
 * (0.3 cents for B = 3.5e-4, 17 cents for B = 0.02).
 */

/** Returns `n` when it is a whole number from 1 up. */
export function requirePartial(n: number, name: string, task: string): number {
  if (!(Number.isInteger(n) && n >= 1)) {
    throw new RangeError(
      `Cannot compute ${task} as ${name} must be a whole number from 1 up: current value is ${n}`,
    );
  }
  return n;
}

/**
 * Frequency of partial n of a stiff string whose first partial is known.
 *
 *     f_n = n · f₁ · √((1 + B·n²) / (1 + B))        from f_n = n · f₀ · √(1 + B·n²)
 *
 * @param note.firstPartial   f₁ [Hz], > 0
 * @param note.inharmonicity  B, ≥ 0
 * @param note.partial        n, whole number from 1
 * @returns f_n [Hz]
 *
 * Holds for: a uniform string with pinned ends; for a wound string B is the fitted one, and then f_n is as good as
 * the fit.
 * Error: relative u(f_n) = u(f₁)/f₁ ⊕ ½·|n²/(1 + B·n²) − 1/(1 + B)|·u(B).
 * Throws: RangeError when an input is outside its range.
 * Source: R. W. Young, J. Acoust. Soc. Am. 24 (1952) 267; H. Fletcher, J. Acoust. Soc. Am. 36 (1964) 203, for the law
 * (page numbers from memory).
 * @example partialFromFirst({ firstPartial: hertz(100), inharmonicity: 0.0004, partial: 8 })  // ≈ 810.013 Hz
 */
export function partialFromFirst(note: {
  firstPartial: Hertz;
  inharmonicity: number;
  partial: number;
}): Hertz {
  const task = 'the frequency of a partial';
  const firstPartial = requirePositive(note.firstPartial, 'the first partial', task);
  const inharmonicity = requireNotNegative(note.inharmonicity, 'inharmonicity', task);
  const n = requirePartial(note.partial, 'the partial number', task);
  return hertz(n * firstPartial * Math.sqrt((1 + inharmonicity * n * n) / (1 + inharmonicity)));
}

/** Cents by which partial n lies above n times the first partial: 600·log₂((1 + B·n²)/(1 + B)). */
export const centsAboveHarmonic = (inharmonicity: number, n: number): number =>
  (600 / Math.LN2) * (Math.log1p(inharmonicity * n * n) - Math.log1p(inharmonicity));

/** Change of `centsAboveHarmonic` per unit of B. */
export const centsAboveHarmonicPerB = (inharmonicity: number, n: number): number =>
  (600 / Math.LN2) * ((n * n) / (1 + inharmonicity * n * n) - 1 / (1 + inharmonicity));

/**
 * Width of an interval whose chosen partials coincide: partial p of the lower note on partial q of the upper one.
 *
 *     w = 1200·log₂(p/q) + c_p(B_lower) − c_q(B_upper)        c_n(B) = 600·log₂((1 + B·n²)/(1 + B))
 *
 * @param interval.lowerInharmonicity  B of the lower note, ≥ 0
 * @param interval.upperInharmonicity  B of the upper note, ≥ 0
 * @param interval.lowerPartial        p, whole number from 1
 * @param interval.upperPartial        q, whole number from 1
 * @returns w, distance between the two FIRST PARTIALS [cents]; subtract ½·1200·log₂ of (1 + B) of each note for the
 *          distance between ideal first modes
 *
 * Holds for: partials that follow f_n = n·f₀·√(1 + B·n²).
 * Error: u(w)² = (∂c_p/∂B · u(B_lower))² + (∂c_q/∂B · u(B_upper))².
 * Throws: RangeError when an input is outside its range.
 * Source: the law of the partials, solved for f₁(upper)/f₁(lower).
 * @example matchedWidth({ lowerInharmonicity: 3e-4, upperInharmonicity: 6e-4, lowerPartial: 4, upperPartial: 2 })  // ≈ 1202.330 cents
 */
export function matchedWidth(interval: {
  lowerInharmonicity: number;
  upperInharmonicity: number;
  lowerPartial: number;
  upperPartial: number;
}): Cents {
  const task = 'the width of an interval';
  const lowerB = requireNotNegative(interval.lowerInharmonicity, 'inharmonicity of the lower note', task);
  const upperB = requireNotNegative(interval.upperInharmonicity, 'inharmonicity of the upper note', task);
  const p = requirePartial(interval.lowerPartial, 'the partial of the lower note', task);
  const q = requirePartial(interval.upperPartial, 'the partial of the upper note', task);
  return cents(1200 * Math.log2(p / q) + centsAboveHarmonic(lowerB, p) - centsAboveHarmonic(upperB, q));
}
