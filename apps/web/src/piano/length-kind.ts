import { type ReadingQuantityName, readingQuantities } from '@becket/journal';
import type { LengthKind } from '../parts/length-text.ts';

/** How finely a quantity is told: whatever is called a diameter as a diameter, everything else as a length. */
export function lengthKindOf(quantity: ReadingQuantityName): LengthKind {
  return readingQuantities[quantity].label.includes('diameter') ? 'diameter' : 'length';
}
