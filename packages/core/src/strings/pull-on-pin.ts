import {
  type Metres,
  type NewtonMetres,
  type Newtons,
  newtonMetres,
  requirePositive,
} from '../units/index.ts';

/**
 * Turning moment with which a string pulls on its tuning pin.
 *
 *     M = T · (D/2 + d/2)
 *
 * @param pin.tension       T, in the front length [N], > 0
 * @param pin.pinDiameter   D [m], > 0
 * @param pin.wireDiameter  d [m], > 0; of a wound string the core
 * @returns M [N·m]; it helps a pin that is turned flat and hinders one that is turned sharp
 *
 * Holds for: a coil that leaves the pin at a right angle. Friction at agraffe, capo and felt lets the tension in the front
 * length differ from that of the speaking length, by the direction in which the pin was last turned.
 * Error: u(M)/M = u(T)/T and about u(D)/D: 10 % of friction is the larger part.
 * Throws: RangeError when an input is not positive and finite.
 * Source: statics; the arm reaches to the middle of the wire.
 * @example  pullOnPin({ tension: newtons(700), pinDiameter: inches(0.282), wireDiameter: millimetres(1) })  // ≈ 2.857 N·m
 */
export function pullOnPin(pin: {
  tension: Newtons;
  pinDiameter: Metres;
  wireDiameter: Metres;
}): NewtonMetres {
  const task = 'the pull of a string on its pin';
  const tension = requirePositive(pin.tension, 'tension', task);
  const pinDiameter = requirePositive(pin.pinDiameter, 'pin diameter', task);
  const wireDiameter = requirePositive(pin.wireDiameter, 'wire diameter', task);
  return newtonMetres(tension * (pinDiameter / 2 + wireDiameter / 2));
}
