import { type Hertz, hertz } from '../units/index.ts';

/** A change of B this small is rounding of the partials. */
const SMALLEST_STEP = 1e-14;

/** B fitted to a string's partials. */
export interface InharmonicityFit {
  /** B of f_n = n · f · √(1 + B·n²). */
  readonly inharmonicity: number;
  /** f, the ideal first mode that goes with this B; not the first partial. */
  readonly frequency: Hertz;
  /** The fit used partials 1 to this. */
  readonly partials: number;
  /** Root mean square of what the law leaves unexplained [cents]. */
  readonly misfitCents: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/**
 * B by a straight line through (f_n / n)² over n².
 *
 *     (f_n / n)² = f² + f²·B · n²        B = slope / intercept, least squares with equal weights
 *
 * @param frequencies  f_n [Hz]; index 0 = partial 1
 * @param partials     use partials 1 to this, 2 or more; default all that are given
 * @returns B with f; misfit in cents
 *
 * Holds for: partials that follow the law, as those of a uniform pinned string do exactly. Those of a wound string with
 * bare ends do not: B then depends on the range of partials, which must be stated beside it.
 * Error: see the misfit. High partials, far apart on the axis of n², decide.
 * Throws: RangeError when a frequency is missing or not positive, or the line meets f² ≤ 0.
 * Source: H. Fletcher, J. Acoust. Soc. Am. 36 (1964) 203, the law; least squares is common practice.
 * @example  fitInharmonicityByLine([hertz(100.05), hertz(200.4), hertz(301.35)]).inharmonicity  // ≈ 0.0010026
 */
export function fitInharmonicityByLine(
  frequencies: readonly Hertz[],
  partials: number = frequencies.length,
): InharmonicityFit {
  const used = partialsToFit(frequencies, partials);
  const meanX = mean(used.map((_, index) => (index + 1) ** 2));
  const meanY = mean(used.map((frequency, index) => (frequency / (index + 1)) ** 2));
  let covariance = 0;
  let variance = 0;
  used.forEach((frequency, index) => {
    const fromMeanX = (index + 1) ** 2 - meanX;
    covariance += fromMeanX * ((frequency / (index + 1)) ** 2 - meanY);
    variance += fromMeanX ** 2;
  });
  const slope = covariance / variance;
  const intercept = meanY - slope * meanX;
  if (!(intercept > 0)) {
    throw new RangeError(
      `Cannot fit inharmonicity as the line must cut the axis above zero: found ${intercept} Hz² over ${partials} partials`,
    );
  }
  const inharmonicity = slope / intercept;
  const frequency = Math.sqrt(intercept);
  return {
    inharmonicity,
    frequency: hertz(frequency),
    partials,
    misfitCents: rootMeanSquare(
      used.map(
        (f, index) => centsOver(f, index + 1) - centsOver(frequency, 1) - lawCents(inharmonicity, index + 1),
      ),
    ),
    iterations: 1,
    converged: true,
  };
}

/**
 * B by least squares in cents, so that every partial counts alike to the ear.
 *
 *     minimise Σ (1200·log₂(f_n / n) − 1200·log₂ f − 600·log₂(1 + B·n²))²        over f and B
 *
 * @param frequencies  f_n [Hz]; index 0 = partial 1
 * @param partials     use partials 1 to this, 2 or more; default all that are given
 * @returns B with f; misfit in cents. B may be below zero, down to where 1 + B·n² vanishes at the last partial
 *
 * For each B the best f follows at once; B by Gauss–Newton steps, halved while they do not lower the sum.
 * Holds for: as `fitInharmonicityByLine`. Throws: RangeError when a frequency is missing or not positive.
 * Source: Gauss–Newton, e.g. J. Nocedal and S. Wright, Numerical Optimization, ch. 10 (from memory).
 * @example  fitInharmonicityInCents([hertz(100.05), hertz(200.4), hertz(301.35)]).inharmonicity  // ≈ 0.0010026
 */
export function fitInharmonicityInCents(
  frequencies: readonly Hertz[],
  partials: number = frequencies.length,
): InharmonicityFit {
  const used = partialsToFit(frequencies, partials);
  // Cents over the first partial, not over 1 Hz, keep the numbers small and their digits.
  const first = used[0]!;
  const sounding = used.map((frequency, index) => centsOver(frequency / first, index + 1));
  const floor = (-1 + 1e-9) / partials ** 2;

  const residualsAt = (b: number): { residuals: number[]; level: number; sum: number } => {
    const rest = sounding.map((value, index) => value - lawCents(b, index + 1));
    const level = mean(rest);
    const residuals = rest.map((value) => value - level);
    return { residuals, level, sum: residuals.reduce((sum, value) => sum + value * value, 0) };
  };

  let inharmonicity = Math.max(fitInharmonicityByLine(frequencies, partials).inharmonicity, floor / 2);
  let current = residualsAt(inharmonicity);
  let iterations = 0;
  let converged = false;
  while (!converged && iterations < 100) {
    iterations += 1;
    const slopes = used.map((_, index) => {
      const n2 = (index + 1) ** 2;
      return ((600 / Math.LN2) * n2) / (1 + inharmonicity * n2);
    });
    const meanSlope = mean(slopes);
    let numerator = 0;
    let denominator = 0;
    slopes.forEach((slope, index) => {
      numerator += (slope - meanSlope) * current.residuals[index]!;
      denominator += (slope - meanSlope) ** 2;
    });
    let step = numerator / denominator;
    let next = residualsAt(Math.max(inharmonicity + step, floor));
    while (next.sum > current.sum && Math.abs(step) > SMALLEST_STEP) {
      step /= 2;
      next = residualsAt(Math.max(inharmonicity + step, floor));
    }
    const moved = Math.max(inharmonicity + step, floor) - inharmonicity;
    converged = Math.abs(moved) <= 1e-10 * Math.abs(inharmonicity) + SMALLEST_STEP;
    if (next.sum <= current.sum) {
      inharmonicity += moved;
      current = next;
    }
  }
  return {
    inharmonicity,
    frequency: hertz(first * 2 ** (current.level / 1200)),
    partials,
    misfitCents: Math.sqrt(current.sum / partials),
    iterations,
    converged,
  };
}

/** 1200 · log₂(f / n), a pitch in cents over 1. */
function centsOver(frequency: number, n: number): number {
  return 1200 * Math.log2(frequency / n);
}

function lawCents(inharmonicity: number, n: number): number {
  return (600 / Math.LN2) * Math.log1p(inharmonicity * n ** 2);
}

function partialsToFit(frequencies: readonly Hertz[], partials: number): readonly Hertz[] {
  if (!Number.isInteger(partials) || partials < 2 || partials > frequencies.length) {
    throw new RangeError(
      `Cannot fit inharmonicity as the number of partials must be from 2 to the ${frequencies.length} given: ` +
        `current value is ${partials}`,
    );
  }
  const used = frequencies.slice(0, partials);
  used.forEach((frequency, index) => {
    if (!(Number.isFinite(frequency) && frequency > 0)) {
      throw new RangeError(
        `Cannot fit inharmonicity as partial ${index + 1} must be > 0: current value is ${frequency}`,
      );
    }
  });
  return used;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((value) => value * value)));
}
