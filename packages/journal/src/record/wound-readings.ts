import type { Metres, WoundReadings } from '@becket/core';

/** What the checks of wound strings look at, by the names of the readings. */
export type WoundQuantity =
  | 'speaking-length'
  | 'back-length'
  | 'loop-to-winding'
  | 'winding-length'
  | 'bare-front'
  | 'bare-back'
  | 'core-diameter'
  | 'inner-layer-diameter'
  | 'over-all-diameter';

/**
 * The readings of one wound string in the shape that its checks take, from whatever knows a length by its name.
 *
 * @example woundReadingsOf(1, () => undefined).key  // = 1
 */
export const woundReadingsOf = (
  key: number,
  lengthOf: (quantity: WoundQuantity) => Metres | undefined,
): WoundReadings => ({
  key,
  speakingLength: lengthOf('speaking-length'),
  backLength: lengthOf('back-length'),
  loopToWinding: lengthOf('loop-to-winding'),
  windingLength: lengthOf('winding-length'),
  bareFront: lengthOf('bare-front'),
  bareBack: lengthOf('bare-back'),
  coreDiameter: lengthOf('core-diameter'),
  innerLayerDiameter: lengthOf('inner-layer-diameter'),
  overAllDiameter: lengthOf('over-all-diameter'),
});
