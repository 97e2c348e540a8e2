import type { LengthKind } from '@becket/core';
import { isSmallQuantity, type ReadingQuantityName } from './reading-quantities.ts';

/**
 * How finely a quantity is told: whatever is called a diameter as a diameter, what is small as such, all else as a length.
 * @example lengthKindOf('pin-diameter')  // = diameter
 * @example lengthKindOf('bearing-rise')  // = thin
 */
export const lengthKindOf = (quantity: ReadingQuantityName): LengthKind =>
  quantity.endsWith('-diameter') ? 'diameter' : isSmallQuantity(quantity) ? 'thin' : 'length';
