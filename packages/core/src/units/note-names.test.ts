import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import { makeLanguage } from '../words/index.ts';
import { A4_KEY, noteName, parseNote, requireKey } from './note-names.ts';

describe('noteName()', () => {
  it('names the ends of the compass, the pitch note and the black keys as sharps', () => {
    expect([1, 2, 3, 4, 40, A4_KEY, 88].map(noteName)).toEqual(['A0', 'A#0', 'B0', 'C1', 'C4', 'A4', 'C8']);
  });

  it('agrees with MIDI practice: note 60 is C4, note 69 is A4 (MIDI = key + 20)', () => {
    expect(noteName(60 - 20)).toBe('C4');
    expect(noteName(69 - 20)).toBe('A4');
  });

  it('refuses a key that is not on the keyboard', () => {
    for (const key of [0, 89, 1.5, Number.NaN, -3]) expect(() => noteName(key)).toThrow(RangeError);
    expect(() => noteName(89)).toThrow(
      'Cannot compute a note name as the key number must be a whole number from 1 (A0) to 88 (C8): current value is 89',
    );
  });
});

describe('parseNote()', () => {
  it('reads back every name', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 88 }), (key) => parseNote(noteName(key)) === key),
      { seed: 1 },
    );
  });

  it('reads key numbers, flats, sharps, both signs, small letters and spaces', () => {
    expect(
      ['49', ' 1 ', 'a#4', 'A♯4', 'Bb4', 'b♭4', 'bb4', 'B 4', 'Cb4', 'B#3', 'E#4'].map((t) => parseNote(t)),
    ).toEqual([49, 1, 50, 50, 50, 50, 50, 51, 39, 40, 45]);
  });

  it('reads a letter B as the white key unless German names are asked for', () => {
    expect(parseNote('B3')).toBe(39);
    expect(parseNote('B3', { letters: 'german' })).toBe(38);
    expect(parseNote('Bb3', { letters: 'german' })).toBe(38);
    expect(parseNote('H3', { letters: 'german' })).toBe(39);
    expect(parseNote('Hb3', { letters: 'german' })).toBe(38);
    expect(() => parseNote('H3')).toThrow(/only where German note names are asked for/);
    expect(() => parseNote('B#3', { letters: 'german' })).toThrow(SyntaxError);
  });

  it('says what is needed and what was found', () => {
    expect(() => parseNote('J4')).toThrow(
      "Cannot read a note as a name like A0, C#4 or Bb3, or a key number from 1 to 88, is needed: found 'J4'",
    );
    for (const text of ['', 'A', '#4', 'A##4', '4A', '4.5', 'A4 B4']) {
      expect(() => parseNote(text)).toThrow(SyntaxError);
    }
  });

  it('refuses notes outside the compass, by name and by number', () => {
    for (const text of ['G#0', 'C#8', '0', '89', '-1', 'A-1', 'C99']) {
      expect(() => parseNote(text)).toThrow(RangeError);
    }
    expect(() => parseNote('C#8')).toThrow("found 'C#8', which would be key 89");
    expect(parseNote('Cb8')).toBe(87);
  });
});

describe('requireKey()', () => {
  it('hands the key back', () => {
    expect(requireKey(7, 'a test')).toBe(7);
  });
});

it('refuses in German where German is asked for', () => {
  expect(() => parseNote('H3', {}, makeLanguage('de-DE', german))).toThrow(
    'Der Ton lässt sich nicht lesen: Nötig ist ein Name wie A0, C#4 oder Bb3 oder eine Tastennummer von 1 bis 88 (H wird nur gelesen, wo deutsche Tonnamen verlangt sind); gefunden: „H3“.',
  );
});
