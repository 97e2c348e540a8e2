import { english, type Language } from '@becket/core';
import type { ReadUnit } from '@becket/journal';

/** A unit as it reads in a sentence: 'in' would be taken for the word. */
export function unitWords(unit: ReadUnit, { say }: Language = english): string {
  if (unit === 'in') return say('inch');
  if (unit === 'um') return 'µm';
  return unit === 'cents' ? say('cents') : unit;
}
