import { requireNotNegative, requirePositive, requireWithin } from '../units/index.ts';

/**
 * The chance that pins taken at random all miss the bad ones.
 *
 *     P = C(N − D, n) / C(N, n) = Π_{i<n} (N − D − i)/(N − i)
 *
 * @param pins     N, pins of the field
 * @param bad      D, bad pins among them, anywhere
 * @param measured n, pins measured, taken at random
 * @returns P, 0 to 1
 *
 * Throws: RangeError when a count is not a whole number within the field.
 * Source: hypergeometric distribution, any handbook of statistics.
 * @example chanceAllMissed({ pins: 10, bad: 2, measured: 3 })  // ≈ 0.4667
 */
export function chanceAllMissed({
  pins,
  bad,
  measured,
}: {
  pins: number;
  bad: number;
  measured: number;
}): number {
  const task = 'the chance of missing bad pins';
  requirePositive(pins, 'the number of pins', task);
  requireWithin(bad, 0, pins, 'the number of bad pins', task);
  requireWithin(measured, 0, pins, 'the number of measured pins', task);
  let chance = 1;
  for (let index = 0; index < measured; index += 1)
    chance *= Math.max(0, pins - bad - index) / (pins - index);
  return chance;
}

/** Where a bad zone can still hide, and which pin to measure next. */
export interface HiddenZones {
  /** Share of the places where a zone of the stated size can lie that no measured pin has touched, 0 to 1. */
  readonly chanceMissed: number;
  /** The unmeasured pin that lies in most of those places; undefined when no place is left. */
  readonly nextPin: number | undefined;
  /** The chance once that pin is measured. */
  readonly chanceAfterNext: number;
}

/**
 * The chance that a bad zone of a stated size has been missed by the pins measured so far.
 *
 * A zone is `size` pins in a row, anywhere along the field with equal chance. It was missed when none of its pins was
 * measured, so the chance is the share of untouched windows among all N − size + 1 windows. A measurement inside a zone
 * is taken to reveal it.
 *
 * @param pins      N, pins in a row
 * @param measured  indices 0 to N − 1 of the pins measured
 * @param size      pins of the zone, 1 to N
 *
 * Throws: RangeError when an index or the size does not fit the field.
 * Source: counting; our own statement of it.
 * @example hiddenZones({ pins: 10, measured: [4], size: 3 }).chanceMissed  // = 0.625
 */
export function hiddenZones({
  pins,
  measured,
  size,
}: {
  pins: number;
  measured: readonly number[];
  size: number;
}): HiddenZones {
  const task = 'the chance that a bad zone was missed';
  requirePositive(pins, 'the number of pins', task);
  requireWithin(size, 1, pins, 'the size of the zone', task);
  const isMeasured = new Uint8Array(pins);
  for (const pin of measured) {
    requireNotNegative(pin, 'the index of a pin', task);
    requireWithin(pin, 0, pins - 1, 'the index of a pin', task);
    isMeasured[pin] = 1;
  }
  const windows = pins - size + 1;
  const hiddenAround = new Int32Array(pins);
  let hidden = 0;
  for (let start = 0; start < windows; start += 1) {
    if (isMeasured.subarray(start, start + size).some((one) => one === 1)) continue;
    hidden += 1;
    for (let pin = start; pin < start + size; pin += 1) hiddenAround[pin]! += 1;
  }
  let nextPin: number | undefined;
  for (let pin = 0; pin < pins; pin += 1) {
    if (hiddenAround[pin]! > (nextPin === undefined ? 0 : hiddenAround[nextPin]!)) nextPin = pin;
  }
  const removed = nextPin === undefined ? 0 : hiddenAround[nextPin]!;
  return { chanceMissed: hidden / windows, nextPin, chanceAfterNext: (hidden - removed) / windows };
}
