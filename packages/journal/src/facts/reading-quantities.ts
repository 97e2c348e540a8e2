import { message } from '@becket/core';
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
  'wire-diameter': { label: message('wire diameter'), dimension: 'length', possible: [0.0006, 0.0018] },
  'core-diameter': { label: message('core diameter'), dimension: 'length', possible: [0.0005, 0.0025] },
  'over-all-diameter': {
    label: message('over-all diameter'),
    dimension: 'length',
    possible: [0.0008, 0.012],
  },
  'inner-layer-diameter': {
    label: message('diameter over the inner layer'),
    dimension: 'length',
    possible: [0.0008, 0.012],
  },
  'speaking-length': { label: message('speaking length'), dimension: 'length', possible: [0.03, 2.6] },
  'front-length': { label: message('front length'), dimension: 'length', possible: [0.005, 1] },
  'back-length': { label: message('back length'), dimension: 'length', possible: [0.005, 1] },
  'bare-front': { label: message('bare end at the front'), dimension: 'length', possible: [0, 0.3] },
  'bare-back': { label: message('bare end at the bridge'), dimension: 'length', possible: [0, 0.3] },
  'loop-to-winding': { label: message('loop to winding start'), dimension: 'length', possible: [0.005, 0.8] },
  'winding-length': { label: message('winding length'), dimension: 'length', possible: [0.1, 2.6] },
  'pin-diameter': { label: message('pin diameter'), dimension: 'length', possible: [0.0055, 0.0095] },
  'pin-length': { label: message('pin length'), dimension: 'length', possible: [0.04, 0.09] },
  'pin-height': {
    label: message('pin height above the plate'),
    dimension: 'length',
    possible: [0.003, 0.05],
  },
  'pin-coils': { label: message('coils on the pin'), dimension: 'count', possible: [0.5, 8] },
  'pin-torque': { label: message('pin torque'), dimension: 'torque', possible: [0, 60] },
  'hitch-pin-diameter': {
    label: message('hitch pin diameter'),
    dimension: 'length',
    possible: [0.0015, 0.01],
  },
  'pressure-bar-height': { label: message('pressure bar height'), dimension: 'length', possible: [0, 0.1] },
  'strike-line-spacing': {
    label: message('spacing at the strike line'),
    dimension: 'length',
    possible: [0.002, 0.06],
  },
  'bridge-spacing': { label: message('spacing at the bridge'), dimension: 'length', possible: [0.002, 0.06] },
  'bearing-angle': { label: message('bearing angle'), dimension: 'angle', possible: [-0.1, 0.2] },
  'bearing-rise': { label: message('bearing rise'), dimension: 'length', possible: [-0.01, 0.02] },
  'soundboard-crown': { label: message('soundboard crown'), dimension: 'length', possible: [-0.02, 0.03] },
  'pitch-offset': { label: message('pitch as found'), dimension: 'pitch offset', possible: [-1200, 1200] },
  'relative-humidity': {
    label: message('relative humidity'),
    dimension: 'relative humidity',
    possible: [0, 100],
  },
  temperature: { label: message('temperature'), dimension: 'temperature', possible: [-30, 60] },
} as const satisfies Record<string, ReadingQuantity>;

/** What says nothing by its figure alone: how far apart the feet stood, and whether the strings pressed on the board. */
export const quantitiesOverSpan: readonly string[] = [
  'bearing-angle',
  'bearing-rise',
  'soundboard-crown',
] satisfies (keyof typeof readingQuantities)[];

/** Lengths of a few millimetres that a calliper or a dial gauge reads, where a tenth of a millimetre says too little. */
const smallQuantities: readonly string[] = [
  'bearing-rise',
  'soundboard-crown',
  'strike-line-spacing',
  'bridge-spacing',
  'pressure-bar-height',
] satisfies (keyof typeof readingQuantities)[];

/** True for a length that is told to the hundredth of a millimetre. */
export const isSmallQuantity = (quantity: ReadingQuantityName): boolean => smallQuantities.includes(quantity);

export type ReadingQuantityName = keyof typeof readingQuantities;
export const readingQuantityNames = Object.keys(readingQuantities) as [
  ReadingQuantityName,
  ...ReadingQuantityName[],
];
