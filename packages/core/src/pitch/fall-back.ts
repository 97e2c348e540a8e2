import { type Cents, cents, requireNotNegative } from '../units/index.ts';

/** One raise of a section: where it stood, where it was left, and where it was found at the next pass. */
export interface Raise {
  /** Offset from pitch before it was raised; below is negative. */
  readonly before: Cents;
  /** Where it was left. */
  readonly after: Cents;
  /** Where it stood when the next pass began. */
  readonly later: Cents;
  /** Standard uncertainty of each of the three. */
  readonly standardUncertainty: Cents;
}

/** What is taken for the fall-back of a section before the piano has shown its own. */
export interface FallBackDefaults {
  /** Share of a raise that is lost again. */
  readonly share: number;
  readonly standardUncertainty: number;
  /** Standard deviation of the share from pass to pass: a later pass falls less, another season falls otherwise. */
  readonly passToPass: number;
  /** A raise smaller than this tells nothing: other things move a section by as much. */
  readonly smallestRaise: Cents;
  readonly source: string;
}

/** Our own figures for new wire after the first rough tuning; common practice, no source. */
export const COMMON_FALL_BACK: FallBackDefaults = {
  share: 0.25,
  standardUncertainty: 0.1,
  passToPass: 0.05,
  smallestRaise: cents(8),
  source: 'common practice, no source',
};

/** The share of a raise that a section loses again. */
export interface FallBack {
  readonly share: number;
  readonly standardUncertainty: number;
  /** The shares of the raises it rests on, in their order; none when it is the default. */
  readonly shares: readonly number[];
  /** Raises too small to tell anything. */
  readonly tooSmall: number;
}

/**
 * Which share of a raise a section loses again until the next pass, from the raises it has had.
 *
 *     k_i = (a_i − b′_i) / r_i,   r_i = a_i − b_i
 *     u_i² = 2 u² / r_i² + τ²
 *     k = Σ w k / Σ w,   w_i = 1 / u_i²,   with the default k₀ ± u₀ as one more raise
 *     u(k) = √(1 / Σ w) · max(1, √(χ² / n))
 *
 * b is where the section stood, a where it was left, b′ where it was found at the next pass [cents]; u is their standard
 * uncertainty, τ how far the share itself changes from pass to pass, n the number of raises beside the default.
 *
 * @param raises    of one section, in their order; may be none
 * @param defaults  k₀, u₀, τ and the smallest raise that counts
 * @returns k and u(k); from no raise the default itself. A mean outside 0 to 0.6 is taken to the nearer end
 *
 * Holds for: falls in proportion to the raise. Wire also creeps with time, and a board moves with the season: both go into
 * the falls of this piano as they came, and are foretold only if they come again alike.
 * Error: u(k); with readings of 1 cent and a raise of 50 cents each share is known to 0.06.
 * Throws: RangeError when an uncertainty is negative or not finite.
 * Source: the model is common practice, no source. Weighted mean and its widening by √(χ²/n) as R. T. Birge, Phys. Rev. 40,
 * 207 (1932), from memory.
 * @example fallBack([{ before: cents(-50), after: cents(10), later: cents(-8), standardUncertainty: cents(1) }]).share  // ≈ 0.2883
 */
export function fallBack(raises: readonly Raise[], defaults: FallBackDefaults = COMMON_FALL_BACK): FallBack {
  const seen: { share: number; weight: number }[] = [];
  let tooSmall = 0;
  for (const { before, after, later, standardUncertainty } of raises) {
    requireNotNegative(standardUncertainty, 'the uncertainty of an offset', 'the fall-back of a section');
    const raise = after - before;
    if (raise < defaults.smallestRaise) {
      tooSmall += 1;
      continue;
    }
    const variance = (2 * standardUncertainty ** 2) / raise ** 2 + defaults.passToPass ** 2;
    seen.push({ share: (after - later) / raise, weight: 1 / variance });
  }
  const all = [{ share: defaults.share, weight: 1 / defaults.standardUncertainty ** 2 }, ...seen];
  const weights = all.reduce((sum, { weight }) => sum + weight, 0);
  const share = all.reduce((sum, one) => sum + one.weight * one.share, 0) / weights;
  const chiSquare = all.reduce((sum, one) => sum + one.weight * (one.share - share) ** 2, 0);
  const widening = seen.length === 0 ? 1 : Math.max(1, Math.sqrt(chiSquare / seen.length));
  return {
    share: Math.min(largestShare, Math.max(0, share)),
    standardUncertainty: Math.sqrt(1 / weights) * widening,
    shares: seen.map((one) => one.share),
    tooSmall,
  };
}

/** Beyond this an overpull would be larger than one and a half times the way to pitch: the section does not settle, it slips. */
const largestShare = 0.6;
