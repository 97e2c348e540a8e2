import {
  type Metres,
  type Newtons,
  newtons,
  type Radians,
  radians,
  requireNotNegative,
  requirePositive,
  requireWithin,
} from '../units/index.ts';

/**
 * Force with which a deflected string bears on the bridge, from the angle.
 *
 *     F = T · sin θ
 *
 * @param string.tension     T, the same on both sides of the bridge [N], > 0
 * @param string.deflection  θ, the whole angle by which the bridge turns the string out of a straight line [rad], −π/2 to π/2;
 *                           negative where the string lifts off
 * @returns F [N], at right angles to the string before the bridge
 *
 * The resultant of the two pulls is 2·T·sin(θ/2), along the bisector of the bend; its part at right angles to one of the
 * two straight parts is T·sin θ, the form that the trade uses. They differ by the factor cos(θ/2), less than 0.01 % at 1.5°.
 * Holds for: no friction at the bridge pins. Side bearing at the pins adds a force along the bridge, not down.
 * Error: u(F)/F = u(T)/T ⊕ u(θ)/tan θ: an angle read to 0.1° gives a bearing of 1° to 10 %.
 * Throws: RangeError when the tension is not positive or the angle is out of range.
 * Source: D. Gilmore, pianotech mailing list, 19 February 2004.
 * @example  bearingForce({ tension: newtons(700), deflection: degrees(1) })  // ≈ 12.2167 N
 */
export function bearingForce(string: { tension: Newtons; deflection: Radians }): Newtons {
  const task = 'bearing force';
  const tension = requirePositive(string.tension, 'tension', task);
  const deflection = requireWithin(string.deflection, -Math.PI / 2, Math.PI / 2, 'deflection [rad]', task);
  return newtons(tension * Math.sin(deflection));
}

/** A bridge that stands proud of the straight line between the front termination and the next support behind. */
export interface BearingRise {
  /** h, height of the bridge top over that line [m]; negative where the string would not touch. */
  readonly rise: Metres;
  /** a, horizontal distance from the front termination to the bridge [m], > 0. */
  readonly spanFront: Metres;
  /** b, horizontal distance from the bridge to the aliquot, felt or hitch pin behind [m], > 0. */
  readonly spanBack: Metres;
}

/**
 * Bearing force from a rise over two spans.
 *
 *     F = T · (h / √(h² + a²) + h / √(h² + b²))
 *
 * @param string.tension  T [N], > 0
 * @param string          h, a, b as in `BearingRise`
 * @returns F [N], at right angles to the line between the two outer supports
 *
 * Holds for: the line joining the outer supports taken as the reference; for small rises F ≈ T·h·(1/a + 1/b).
 * Error: u(F)/F = u(T)/T ⊕ u(h)/h and that of the shorter span; a rise of 1 mm read to 0.1 mm gives 10 %.
 * Throws: RangeError when tension or a span is not positive, or the rise is not a finite number.
 * Source: statics of two straight parts.
 * @example  bearingForceFromRise({ tension: newtons(700), rise: millimetres(1), spanFront: millimetres(600), spanBack: millimetres(60) })  // ≈ 12.8317 N
 */
export function bearingForceFromRise(string: BearingRise & { tension: Newtons }): Newtons {
  const task = 'bearing force from a rise';
  const tension = requirePositive(string.tension, 'tension', task);
  const { rise, spanFront, spanBack } = requireRise(string, task);
  return newtons(tension * (rise / Math.hypot(rise, spanFront) + rise / Math.hypot(rise, spanBack)));
}

/**
 * Angle by which a rise over two spans deflects the string.
 *
 *     θ = atan(h / a) + atan(h / b)
 *
 * @returns θ, the whole deflection [rad], negative for a negative rise
 * Throws: RangeError when a span is not positive, or the rise is not a finite number.
 * Source: geometry.
 * @example  inDegrees(deflectionFromRise({ rise: millimetres(1), spanFront: millimetres(600), spanBack: millimetres(60) }))  // ≈ 1.0503 °
 */
export function deflectionFromRise(bearing: BearingRise): Radians {
  const { rise, spanFront, spanBack } = requireRise(bearing, 'deflection from a rise');
  return radians(Math.atan2(rise, spanFront) + Math.atan2(rise, spanBack));
}

function requireRise(
  bearing: BearingRise,
  task: string,
): { rise: number; spanFront: number; spanBack: number } {
  requireNotNegative(Math.abs(bearing.rise), 'the size of the rise', task);
  return {
    rise: bearing.rise,
    spanFront: requirePositive(bearing.spanFront, 'front span', task),
    spanBack: requirePositive(bearing.spanBack, 'back span', task),
  };
}
