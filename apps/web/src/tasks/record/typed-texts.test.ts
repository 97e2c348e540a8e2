import type { Ulid } from '@becket/journal';
import { describe, expect, test } from 'vitest';
import { isToBeKept, typedTexts } from './typed-texts.ts';

const place = { key: 40, quantity: 'wire-diameter' } as const;
const entry = (id: string) => ({ id: id as Ulid });

describe('texts that were typed', () => {
  test('belong to one cell each', () => {
    const texts = typedTexts();
    texts.at(place).set({ text: '1.025', is: 'being kept' });
    expect(texts.at({ ...place }).get()?.text).toBe('1.025');
    expect(texts.at({ ...place, key: 41 }).get()).toBeUndefined();
    expect(texts.at({ ...place, quantity: 'speaking-length' }).get()).toBeUndefined();
  });

  test('give way to a row that has their last entry, and to no other', () => {
    const texts = typedTexts();
    const typed = texts.at(place);
    typed.set({ text: '1.025', is: 'being kept', entries: [entry('a').id, entry('b').id] });
    texts.giveWayTo([entry('a')]);
    expect(typed.get()?.text).toBe('1.025');
    texts.giveWayTo([entry('a'), entry('b'), entry('c')]);
    expect(typed.get()).toBeUndefined();
  });

  test('that are not in the journal yet, or were refused, stay', () => {
    const texts = typedTexts();
    const refused = texts.at(place);
    refused.set({ text: '1,0,2', is: 'refused' });
    const fresh = texts.at({ ...place, key: 41 });
    fresh.set({ text: '1.0', is: 'being kept' });
    texts.giveWayTo([entry('a')]);
    expect([refused.get()?.text, fresh.get()?.text]).toEqual(['1,0,2', '1.0']);
  });
});

describe('a cell that is left', () => {
  test('is kept where it says something else than its row', () => {
    expect(isToBeKept('1.0', undefined, '')).toBe(true);
    expect(isToBeKept('', undefined, '1.0')).toBe(true);
    expect(isToBeKept(' 1.0 ', undefined, '1.0')).toBe(false);
  });

  test('is not kept twice, and is kept when it goes back to what its row still shows', () => {
    const typed = { text: '1.025', is: 'being kept' } as const;
    expect(isToBeKept('1.025', typed, '1.0')).toBe(false);
    expect(isToBeKept('1.0', typed, '1.0')).toBe(true);
  });

  test('is tried again after a refusal, unless it says what its row says', () => {
    const typed = { text: '1,0,2', is: 'refused' } as const;
    expect(isToBeKept('1,0,2', typed, '1.0')).toBe(true);
    expect(isToBeKept('1.0', typed, '1.0')).toBe(false);
  });
});
