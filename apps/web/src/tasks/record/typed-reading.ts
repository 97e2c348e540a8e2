import { english, type Language } from '@becket/core';
import { type ReadingQuantityName, readingQuantities } from '@becket/journal';
import { readTypedNumber, type TypedNumber } from '../../parts/typed-number.ts';

/** A typed number of one quantity: a bare fraction is of an inch where a length is read, and of a turn where coils are. */
export function readTypedReading(
  text: string,
  quantity: ReadingQuantityName,
  language: Language = english,
): TypedNumber {
  const typed = readTypedNumber(text, language);
  const isBare = /^[\d\s/-]+$/.test(text.trim());
  return typed.is === 'number' && isBare && readingQuantities[quantity].dimension !== 'length'
    ? { ...typed, unit: undefined }
    : typed;
}
