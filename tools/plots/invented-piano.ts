import {
  equalTemperedFrequency,
  hertz,
  METRIC_WIRE_SIZES,
  type Metres,
  metres,
  millimetres,
  nearestSize,
  noteName,
  type ScaleNote,
  type WoundString,
} from '@becket/core';

/*
 * A grand of about 1.8 m that nobody has built, for the plots and tables of docs/explanation: smooth lengths, metric
 * wire, 26 wound notes, the lowest ten with two layers. The figures are our own.
 */

const LAST_WOUND = 26;
const LAST_TWO_LAYERS = 10;

/** Plain speaking lengths [m] at some keys; in between, straight in the logarithm. */
const plainLengths: readonly (readonly [key: number, length: number])[] = [
  [27, 1.1],
  [40, 0.63],
  [52, 0.345],
  [64, 0.184],
  [76, 0.098],
  [88, 0.052],
];

function plainLength(key: number): Metres {
  const above = plainLengths.findIndex(([anchor]) => anchor >= key);
  const [k1, l1] = plainLengths[Math.max(0, above - 1)]!;
  const [k2, l2] = plainLengths[above]!;
  return metres(k1 === k2 ? l2 : l1 * (l2 / l1) ** ((key - k1) / (k2 - k1)));
}

/** Between two values, in proportion to the key within a run of keys. */
const between = (key: number, [first, last]: [number, number], [low, high]: [number, number]) =>
  low + ((high - low) * (key - first)) / (last - first);

/** The wound string of a key, with both bare ends of the length asked for, or its own. */
export function inventedWoundString(key: number, bareEnd?: Metres): WoundString {
  const speakingLength = metres(between(key, [1, LAST_WOUND], [1.5, 1.06]));
  const core = between(key, [1, LAST_WOUND], [1.45, 0.975]);
  const winding = between(key ** 0.45, [1, LAST_WOUND ** 0.45], [2.2, 0.3]);
  const bareFront = bareEnd ?? millimetres(20);
  const bareBack = bareEnd ?? millimetres(14);
  const onePart = (share: number, step: number) => ({
    wireDiameter: millimetres(Math.round(winding * share * 100) / 100),
    bareFront: metres(bareFront + step),
    bareBack: metres(bareBack + step),
  });
  return {
    kind: 'wound',
    speakingLength,
    coreDiameter: nearestSize(METRIC_WIRE_SIZES, millimetres(core)).diameter,
    layers: key <= LAST_TWO_LAYERS ? [onePart(0.35, 0), onePart(0.65, 0.006)] : [onePart(1, 0)],
  };
}

/** The whole compass, as the analysis takes it. */
export const inventedPiano: readonly ScaleNote[] = Array.from({ length: 88 }, (_, index): ScaleNote => {
  const key = index + 1;
  const frequency = equalTemperedFrequency(key, hertz(440));
  if (key <= LAST_WOUND) {
    return {
      key,
      section: 'bass',
      bridge: 'bass',
      strings: key <= 12 ? 1 : 2,
      frequency,
      string: inventedWoundString(key),
    };
  }
  const diameter = millimetres(between(key, [27, 88], [1.1, 0.79]));
  return {
    key,
    section: key <= 44 ? 'tenor' : key <= 66 ? 'treble' : 'top treble',
    bridge: 'treble',
    strings: 3,
    frequency,
    string: {
      kind: 'plain',
      speakingLength: plainLength(key),
      diameter: nearestSize(METRIC_WIRE_SIZES, diameter).diameter,
    },
  };
});

/** The note of a key number. */
export const inventedNote = (key: number): ScaleNote => inventedPiano[key - 1]!;

/** Axis of a plot over the compass: a tick at every A. */
export const compassAxis = {
  label: 'note',
  domain: [1, 88],
  ticks: [1, 13, 25, 37, 49, 61, 73, 85],
  tickText: noteName,
} as const;

/** Diameter of the wire that carries the tension of a note: of a wound string, its core. */
export const carryingWire = (key: number): Metres => {
  const { string } = inventedNote(key);
  return string.kind === 'plain' ? string.diameter : string.coreDiameter;
};
