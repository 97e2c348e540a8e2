import {
  type Metres,
  metres,
  type NewtonMetres,
  newtonMetres,
  requireNotNegative,
  requirePositive,
} from '../units/index.ts';
import { studentShareBelow, studentT } from './student-t.ts';

/** What one test pin did: how much larger it was than the pin that was there, and how much more the hole then held. */
export interface TestPinStep {
  /** Δd, > 0. */
  readonly larger: Metres;
  /** Δg; below 0 when it held less. */
  readonly gripGained: NewtonMetres;
}

/** Grip gained for each metre of diameter, as the test pins of this block say. */
export interface TestPinLaw {
  /** k [N·m of grip per m of diameter]. */
  readonly gripPerDiameter_n: number;
  /** Standard uncertainty of k, and the interval at `level`. */
  readonly standardUncertainty_n: number;
  readonly interval_n: readonly [low: number, high: number];
  readonly level: number;
  /** How far a single hole lies from the law: residual standard deviation. */
  readonly scatter: NewtonMetres;
  readonly count: number;
  /** Largest step tried: beyond it the law is only drawn out. */
  readonly largestStep: Metres;
  /** Σ Δd² [m²]. */
  readonly squares_m2: number;
}

/** Fewer test pins say nothing of how holes differ. */
export const FEWEST_TEST_PINS = 2;

/**
 * Least squares through the origin: the same pin driven again would hold as it did.
 *
 *     Δg = k·Δd;   k = Σ Δd·Δg / Σ Δd²;   s² = Σ (Δg − k·Δd)² / (n − 1);   u(k) = s/√(Σ Δd²);   k ± t(n−1)·u(k)
 *
 * @param steps  one for each test pin whose hole had a grip and a diameter before
 * @returns undefined with fewer than two
 *
 * Holds for: steps of a few tenths of a millimetre in a sound hole, over the sizes that were tried. What is known of wood and
 * interference says nearly straight at first, then less for more; the scatter of the block hides that.
 * Error: from two test pins t is 12.7 at 95 %: the interval says so.
 * Throws: RangeError when a step is not > 0 or a grip not finite.
 * Source: N. R. Draper, H. Smith, *Applied Regression Analysis*, the line through the origin; from memory.
 * @example testPinLaw([{ larger: millimetres(0.1), gripGained: newtonMetres(3) }, { larger: millimetres(0.2), gripGained: newtonMetres(5) }]).gripPerDiameter_n  // = 26000
 */
export function testPinLaw(steps: readonly TestPinStep[], level = 0.95): TestPinLaw | undefined {
  const task = 'what a larger pin gains';
  for (const { larger, gripGained } of steps) {
    requirePositive(larger, 'the step in diameter', task);
    if (!Number.isFinite(gripGained))
      throw new RangeError(
        `Cannot compute ${task} as the grip gained must be finite: current value is ${gripGained}`,
      );
  }
  const count = steps.length;
  if (count < FEWEST_TEST_PINS) return undefined;
  const sum = (of: (step: TestPinStep) => number) => steps.reduce((total, step) => total + of(step), 0);
  const squares = sum(({ larger }) => larger ** 2);
  const slope = sum(({ larger, gripGained }) => larger * gripGained) / squares;
  const variance = sum(({ larger, gripGained }) => (gripGained - slope * larger) ** 2) / (count - 1);
  const uncertainty = Math.sqrt(variance / squares);
  const reach = studentT(level, count - 1) * uncertainty;
  return {
    gripPerDiameter_n: slope,
    standardUncertainty_n: uncertainty,
    interval_n: [slope - reach, slope + reach],
    level,
    scatter: newtonMetres(Math.sqrt(variance)),
    count,
    largestStep: metres(Math.max(...steps.map(({ larger }) => larger))),
    squares_m2: squares,
  };
}

export interface PredictedGrip {
  readonly grip: NewtonMetres;
  /** Where a single hole comes to lie, at `level` of the law. */
  readonly interval: { readonly low: NewtonMetres; readonly high: NewtonMetres; readonly level: number };
  /** True when the step is larger than any that was tried. */
  readonly isBeyondTrials: boolean;
  /** Chance that it comes to lie below a torque. */
  readonly chanceBelow: (torque: NewtonMetres) => number;
}

/**
 * The grip to expect of one hole with a larger pin.
 *
 *     ĝ = g + k·Δd ± t(n−1)·s·√(1 + Δd²/Σ Δdᵢ²)
 *
 * @param hole.grip    g as found [N·m]
 * @param hole.larger  Δd [m], ≥ 0
 *
 * Error: the uncertainty of g is in s, as far as the grips of the tested holes were read in the same way.
 * Throws: RangeError when the step is below 0.
 * Source: as `testPinLaw`, prediction of a new observation.
 * @example predictedGrip(testPinLaw([{ larger: millimetres(0.1), gripGained: newtonMetres(3) }, { larger: millimetres(0.2), gripGained: newtonMetres(5) }]), { grip: newtonMetres(8), larger: millimetres(0.1) }).grip  // ≈ 10.6
 */
export function predictedGrip(
  law: TestPinLaw,
  { grip, larger }: { readonly grip: NewtonMetres; readonly larger: Metres },
): PredictedGrip {
  requireNotNegative(larger, 'the step in diameter', 'the grip of a larger pin');
  const expected = grip + law.gripPerDiameter_n * larger;
  const deviation = law.scatter * Math.sqrt(1 + larger ** 2 / law.squares_m2);
  const reach = studentT(law.level, law.count - 1) * deviation;
  return {
    grip: newtonMetres(expected),
    interval: {
      low: newtonMetres(expected - reach),
      high: newtonMetres(expected + reach),
      level: law.level,
    },
    // A rounding error of the diameters is no further step.
    isBeyondTrials: larger > law.largestStep * (1 + 1e-9),
    chanceBelow: (torque) =>
      deviation === 0
        ? Number(expected < torque)
        : studentShareBelow((torque - expected) / deviation, law.count - 1),
  };
}
