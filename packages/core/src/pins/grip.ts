import {
  type Metres,
  type NewtonMetres,
  type Newtons,
  newtonMetres,
  requirePositive,
} from '../units/index.ts';

/** One torque reading with what decides its meaning: which way the pin was turned, and what the string did. */
export interface TorqueReading {
  readonly torque: NewtonMetres;
  /** 'slack' when the string did not pull, whichever way the pin was turned. */
  readonly turning: 'sharp' | 'flat' | 'slack';
}

/** The string's pull on its pin. */
export interface StringPull {
  readonly tension: Newtons;
  readonly pinDiameter: Metres;
  readonly wireDiameter: Metres;
}

export interface PinGrip {
  /** Torque with which the block holds the pin. */
  readonly grip: NewtonMetres;
  /** Torque with which the string pulls it back. */
  readonly pull: NewtonMetres;
  /** grip − pull: what is left before the pin turns by itself. */
  readonly margin: NewtonMetres;
  /** grip ÷ pull: the pin holds its string while this is above 1. */
  readonly holdingRatio: number;
  /** Which readings the grip rests on. */
  readonly from: 'both directions' | 'sharp-going' | 'flat-going' | 'slack string';
  /**
   * Pull that the two directions themselves speak for, when both were read: half their difference. Far from `pull`
   * it says that a reading, the tension or the friction at the bearings is not what it was taken for.
   */
  readonly pullFromReadings: NewtonMetres | undefined;
}

/**
 * The grip of one pin from its torque readings.
 *
 *     sharp-going  τ↑ = g + T·r        flat-going  τ↓ = g − T·r        slack  τ = g
 *     r = (d_pin + d_wire)/2: the pull acts at the middle of the wire
 *
 * With both directions g = (τ↑ + τ↓)/2, whatever the pull is. Readings of different kinds are never pooled blindly:
 * several of one kind are averaged first, and each kind is corrected by its own sign. Slack readings are preferred, then
 * both directions, then one.
 *
 * @param readings  one or more readings of one pin
 * @param string    what pulls on it; tension 0 is not a string: leave it and read slack
 * @returns g, T·r and the margin between them [N·m]
 *
 * Holds for: a pin turned slowly and steadily; friction of the wire at its bearings is neglected.
 * Error: with one direction the uncertainty of T·r enters in full, with both it drops out.
 * Throws: RangeError when there is no reading, or a torque or dimension is not > 0.
 * Source: statics of a pin with a wire on its surface; the signs are common practice.
 * @example inNewtonMetres(pinGrip([{ torque: newtonMetres(14), turning: 'sharp' }, { torque: newtonMetres(8), turning: 'flat' }], { tension: newtons(800), pinDiameter: millimetres(7), wireDiameter: millimetres(1) }).grip)  // = 11 N·m
 */
export function pinGrip(
  readings: readonly TorqueReading[],
  { tension, pinDiameter, wireDiameter }: StringPull,
): PinGrip {
  const task = 'the grip of a pin';
  requirePositive(readings.length, 'the number of torque readings', task);
  requirePositive(tension, 'the tension', task);
  requirePositive(pinDiameter, 'the pin diameter', task);
  requirePositive(wireDiameter, 'the wire diameter', task);
  for (const { torque } of readings) requirePositive(torque, 'the torque', task);

  const pull = (tension * (pinDiameter + wireDiameter)) / 2;
  const slack = meanOf(readings, 'slack');
  const sharp = meanOf(readings, 'sharp');
  const flat = meanOf(readings, 'flat');
  const hasBoth = sharp !== undefined && flat !== undefined;
  const [grip, from] =
    slack !== undefined
      ? [slack, 'slack string' as const]
      : hasBoth
        ? [(sharp + flat) / 2, 'both directions' as const]
        : sharp !== undefined
          ? [sharp - pull, 'sharp-going' as const]
          : [flat! + pull, 'flat-going' as const];
  return {
    grip: newtonMetres(grip),
    pull: newtonMetres(pull),
    margin: newtonMetres(grip - pull),
    holdingRatio: grip / pull,
    from,
    pullFromReadings: hasBoth ? newtonMetres((sharp - flat) / 2) : undefined,
  };
}

function meanOf(readings: readonly TorqueReading[], turning: TorqueReading['turning']): number | undefined {
  const own = readings.filter((reading) => reading.turning === turning);
  if (own.length === 0) return undefined;
  return own.reduce((sum, { torque }) => sum + torque, 0) / own.length;
}
