export { isInKeyRange, type KeyRange, keyRangeAt } from './key-range.ts';
export { type LengthKind, type LengthUnit, otherUnit } from './length-unit.ts';
export {
  A4_KEY,
  FIRST_KEY,
  LAST_KEY,
  type NoteSpelling,
  noteName,
  parseNote,
  requireKey,
} from './note-names.ts';
export { type Estimate, type PropagatedEstimate, propagate } from './propagate-uncertainty.ts';
export * from './quantities.ts';
export type { Quantity } from './quantity.ts';
export { requireNotNegative, requirePositive, requireWithin } from './require.ts';
