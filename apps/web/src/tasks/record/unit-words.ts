import type { ReadUnit } from '@becket/journal';

/** A unit as it reads in a sentence: 'in' would be taken for the word. */
export const unitWords = (unit: ReadUnit): string => (unit === 'in' ? 'inch' : unit);
