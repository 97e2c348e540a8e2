import { isSmallQuantity, type ReadingQuantityName, readingQuantities } from '@becket/journal';
import type { LengthKind } from '../parts/length-text.ts';

/** How finely a quantity is told: whatever is called a diameter as a diameter, what is small as such, everything else as a length. */
export function lengthKindOf(quantity: ReadingQuantityName): LengthKind {
  if (readingQuantities[quantity].label.includes('diameter')) return 'diameter';
  return isSmallQuantity(quantity) ? 'thin' : 'length';
}
