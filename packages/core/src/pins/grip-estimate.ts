import { type NewtonMetres, newtonMetres, requireNotNegative, requirePositive } from '../units/index.ts';
import { message } from '../words/index.ts';
import type { PinGrip, TorqueReading } from './grip.ts';

/** What a torque reading is worth, as shares: plain data, so that a shop can state its own. */
export interface TorqueAccuracy {
  /** How far the wrench may be off, ± as a share of the reading; shared by all readings of that wrench. */
  readonly wrenchLimit: number;
  /** Standard uncertainty of one reading by this hand on one pin, as a share: a pin turns in small jumps. */
  readonly handScatter: number;
  /** How far friction at the bearings may take the tension of the front length from that of the speaking length, ± as a share. */
  readonly frictionLimit: number;
  readonly source: string;
}

/**
 * Wrench: ±6 %, as ISO 6789 allows hand torque tools up to 10 N·m (from memory; it allows 4 % above). Hand and friction:
 * our own figures, common practice, no source.
 */
export const COMMON_TORQUE_ACCURACY: TorqueAccuracy = {
  wrenchLimit: 0.06,
  handScatter: 0.05,
  frictionLimit: 0.1,
  source: message('assumed: wrench ±6 %, hand 5 %, friction ±10 % of the pull (common practice, no source)'),
};

/** Torque with which the string pulls the pin back, and what that figure is worth without friction. */
export interface KnownPull {
  readonly pull: NewtonMetres;
  readonly standardUncertainty: NewtonMetres;
}

export interface GripEstimate {
  readonly grip: NewtonMetres;
  readonly standardUncertainty: NewtonMetres;
  /** The part that this pin has for itself: the hand, and the tension of its own string. */
  readonly ownUncertainty: NewtonMetres;
  /** The part that all pins read in this way share: the wrench, and friction. More pins do not lower it. */
  readonly sharedUncertainty: NewtonMetres;
  readonly from: PinGrip['from'];
  /** Half the difference of the two directions, when both were read: the pull they speak for. */
  readonly pullFromReadings: NewtonMetres | undefined;
}

/**
 * The grip of a pin and what it is worth, also where nobody knows how hard the string pulls.
 *
 *     slack     g = τ              u_own = s·τ/√n                       u_shared = w·τ/√3
 *     both      g = (τ↑ + τ↓)/2    u_own = s·√(τ↑²/n↑ + τ↓²/n↓)/2       u_shared = √((w·g)² + (f·M)²)/√3
 *     one way   g = τ ∓ M          u_own = √(s²·τ²/n + u²(M))           u_shared = √((w·τ)² + (f·M)²)/√3
 *
 * w, s, f are wrench limit, hand scatter and friction limit. Friction does not drop out with both directions: it raises the
 * tension of the front length while the pin goes sharp and lowers it while it goes flat, so both err the same way.
 *
 * @param readings  readings of one pin, each of known direction
 * @param pull      M with u(M) [N·m]; undefined when the tension is not known
 * @returns undefined when the readings give no grip: none at all, or one direction only and the pull is not known
 *
 * Holds for: a pin turned slowly and steadily.
 * Throws: RangeError when a torque is below 0 or the pull is not > 0.
 * Source: statics; limits as rectangular distributions, JCGM 100:2008, 4.3.7.
 * @example inNewtonMetres(gripEstimate([{ torque: newtonMetres(14), turning: 'sharp' }], { pull: newtonMetres(3), standardUncertainty: newtonMetres(0.1) }).grip)  // = 11 N·m
 */
export function gripEstimate(
  readings: readonly TorqueReading[],
  pull: KnownPull | undefined,
  accuracy: TorqueAccuracy = COMMON_TORQUE_ACCURACY,
): GripEstimate | undefined {
  const task = 'the grip of a pin';
  // A pin that turns by itself reads 0, and that is a reading.
  for (const { torque } of readings) requireNotNegative(torque, 'the torque', task);
  if (pull !== undefined) {
    requirePositive(pull.pull, 'the pull of the string', task);
    requireNotNegative(pull.standardUncertainty, 'the uncertainty of the pull', task);
  }
  const [slack, sharp, flat] = (['slack', 'sharp', 'flat'] as const).map((turning) =>
    meanOf(readings, turning),
  );
  const fromReadings =
    sharp !== undefined && flat !== undefined ? (sharp.torque - flat.torque) / 2 : undefined;
  const { handScatter } = accuracy;
  const handOf = ({ torque, count }: MeanTorque): number => (handScatter * torque) / Math.sqrt(count);
  const answer = (
    grip: number,
    from: PinGrip['from'],
    own: number,
    { wrenched, pulled }: { readonly wrenched: number; readonly pulled: number },
  ): GripEstimate => {
    const shared =
      Math.hypot(accuracy.wrenchLimit * wrenched, accuracy.frictionLimit * pulled) / Math.sqrt(3);
    return {
      grip: newtonMetres(grip),
      standardUncertainty: newtonMetres(Math.hypot(own, shared)),
      ownUncertainty: newtonMetres(own),
      sharedUncertainty: newtonMetres(shared),
      from,
      pullFromReadings: fromReadings === undefined ? undefined : newtonMetres(fromReadings),
    };
  };

  if (slack !== undefined)
    return answer(slack.torque, 'slack string', handOf(slack), { wrenched: slack.torque, pulled: 0 });
  if (sharp !== undefined && flat !== undefined) {
    const grip = (sharp.torque + flat.torque) / 2;
    const pulled = pull?.pull ?? Math.abs(fromReadings!);
    return answer(grip, 'both directions', Math.hypot(handOf(sharp), handOf(flat)) / 2, {
      wrenched: grip,
      pulled,
    });
  }
  const one = sharp ?? flat;
  if (one === undefined || pull === undefined) return undefined;
  return answer(
    sharp !== undefined ? one.torque - pull.pull : one.torque + pull.pull,
    sharp !== undefined ? 'sharp-going' : 'flat-going',
    Math.hypot(handOf(one), pull.standardUncertainty),
    { wrenched: one.torque, pulled: pull.pull },
  );
}

interface MeanTorque {
  readonly torque: number;
  readonly count: number;
}

function meanOf(
  readings: readonly TorqueReading[],
  turning: TorqueReading['turning'],
): MeanTorque | undefined {
  const own = readings.filter((reading) => reading.turning === turning);
  if (own.length === 0) return undefined;
  return { torque: own.reduce((sum, { torque }) => sum + torque, 0) / own.length, count: own.length };
}
