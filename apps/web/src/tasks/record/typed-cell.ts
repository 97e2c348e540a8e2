import { english, type Language } from '@becket/core';
import {
  type Absence,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  unitsForDimension,
} from '@becket/journal';
import type { ShownUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';

/** What a cell is to do with what was typed into it. */
export type TypedCell =
  | { readonly do: 'nothing' }
  | { readonly do: 'record'; readonly value: number; readonly unit: ReadUnit }
  | { readonly do: 'say'; readonly answer: Absence }
  | { readonly do: 'object'; readonly sentence: string };

/** Keys that answer instead of a number. */
export const absenceKeys: readonly { readonly answer: Absence; readonly typed: readonly string[] }[] = [
  { answer: 'unknown', typed: ['?'] },
  { answer: 'none', typed: ['-', '–', '—'] },
  { answer: 'does not apply', typed: ['/', 'n/a', 'x'] },
];

/** Reads what was typed into a cell: a number with or without its unit, or one of the three answers. */
export function readTypedCell(
  text: string,
  quantity: ReadingQuantityName,
  unit: ShownUnit,
  language: Language = english,
): TypedCell {
  const word = text.trim().toLowerCase();
  if (word === '') return { do: 'nothing' };
  const answer = absenceKeys.find(({ answer: name, typed }) => typed.includes(word) || name === word);
  if (answer !== undefined) return { do: 'say', answer: answer.answer };
  const typed = readTypedNumber(text, language);
  if (typed.is !== 'number')
    return typed.is === 'empty' ? { do: 'nothing' } : { do: 'object', sentence: typed.sentence };
  const { dimension, label } = readingQuantities[quantity];
  const known = unitsForDimension(dimension);
  const own = dimension === 'length' ? unit : known[0];
  const used = typed.unit ?? own;
  const fitting = known.find((one) => one === used);
  if (fitting === undefined)
    return {
      do: 'object',
      sentence: language.say(
        "Cannot record this {label}: a unit of {units} is needed, '{found}' was found. Type the number alone, or with one of these.",
        { label: language.say(label), units: known.join(', '), found: String(used) },
      ),
    };
  return { do: 'record', value: typed.value, unit: fitting };
}
