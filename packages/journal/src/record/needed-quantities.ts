import type { ReadingQuantityName } from '../facts/reading-quantities.ts';

/** What has to be known of a note's strings before their tension can be computed. */
export function neededQuantities(winding: 'plain' | 'wound', layers: number): ReadingQuantityName[] {
  if (winding === 'plain') return ['wire-diameter', 'speaking-length'];
  const innerLayer: ReadingQuantityName[] = layers === 2 ? ['inner-layer-diameter'] : [];
  return ['core-diameter', ...innerLayer, 'over-all-diameter', 'speaking-length', 'bare-front', 'bare-back'];
}
