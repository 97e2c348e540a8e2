/**
 * What can be read on a piano as a number, with its dimension and the range within which a value is possible at all.
 *
 * The range is a gate against slips of unit and finger, not a judgement of the piano: it spans every instrument we
 * could think of with room to spare. Common practice, no source.
 */
export interface ReadingQuantity {
  /** The words on every screen and paper. */
  readonly label: string;
  readonly dimension:
    | 'length'
    | 'torque'
    | 'frequency'
    | 'angle'
    | 'count'
    | 'pitch offset'
    | 'relative humidity'
    | 'temperature';
  /** Lowest and highest possible value: SI, degrees Celsius, per cent, cents, or a plain count. */
  readonly possible: readonly [low: number, high: number];
}

export const readingQuantities = {
  'wire-diameter': { label: 'wire diameter', dimension: 'length', possible: [0.0006, 0.0018] },
  'core-diameter': { label: 'core diameter', dimension: 'length', possible: [0.0005, 0.0025] },
  'over-all-diameter': { label: 'over-all diameter', dimension: 'length', possible: [0.0008, 0.012] },
  'inner-layer-diameter': {
    label: 'diameter over the inner layer',
    dimension: 'length',
    possible: [0.0008, 0.012],
  },
  'speaking-length': { label: 'speaking length', dimension: 'length', possible: [0.03, 2.6] },
  'front-length': { label: 'front length', dimension: 'length', possible: [0.005, 1] },
  'back-length': { label: 'back length', dimension: 'length', possible: [0.005, 1] },
  'bare-front': { label: 'bare end at the front', dimension: 'length', possible: [0, 0.3] },
  'bare-back': { label: 'bare end at the bridge', dimension: 'length', possible: [0, 0.3] },
  'loop-to-winding': { label: 'loop to winding start', dimension: 'length', possible: [0.005, 0.8] },
  'winding-length': { label: 'winding length', dimension: 'length', possible: [0.1, 2.6] },
  'pin-diameter': { label: 'pin diameter', dimension: 'length', possible: [0.0055, 0.0095] },
  'pin-length': { label: 'pin length', dimension: 'length', possible: [0.04, 0.09] },
  'pin-height': { label: 'pin height above the plate', dimension: 'length', possible: [0.003, 0.05] },
  'pin-coils': { label: 'coils on the pin', dimension: 'count', possible: [0.5, 8] },
  'pin-torque': { label: 'pin torque', dimension: 'torque', possible: [0, 60] },
  'hitch-pin-diameter': { label: 'hitch pin diameter', dimension: 'length', possible: [0.0015, 0.01] },
  'pressure-bar-height': { label: 'pressure bar height', dimension: 'length', possible: [0, 0.1] },
  'strike-line-spacing': {
    label: 'spacing at the strike line',
    dimension: 'length',
    possible: [0.002, 0.06],
  },
  'bridge-spacing': { label: 'spacing at the bridge', dimension: 'length', possible: [0.002, 0.06] },
  'bearing-angle': { label: 'bearing angle', dimension: 'angle', possible: [-0.1, 0.2] },
  'bearing-rise': { label: 'bearing rise', dimension: 'length', possible: [-0.01, 0.02] },
  'soundboard-crown': { label: 'soundboard crown', dimension: 'length', possible: [-0.02, 0.03] },
  'pitch-offset': { label: 'pitch as found', dimension: 'pitch offset', possible: [-1200, 1200] },
  'relative-humidity': { label: 'relative humidity', dimension: 'relative humidity', possible: [0, 100] },
  temperature: { label: 'temperature', dimension: 'temperature', possible: [-30, 60] },
} as const satisfies Record<string, ReadingQuantity>;

/** What says nothing by its figure alone: how far apart the feet stood, and whether the strings pressed on the board. */
export const quantitiesOverSpan: readonly string[] = [
  'bearing-angle',
  'bearing-rise',
  'soundboard-crown',
] satisfies (keyof typeof readingQuantities)[];

export type ReadingQuantityName = keyof typeof readingQuantities;
export const readingQuantityNames = Object.keys(readingQuantities) as [
  ReadingQuantityName,
  ...ReadingQuantityName[],
];
