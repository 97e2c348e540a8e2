/*
 * Note names and key numbers. The compass of this file is the usual 88 keys: 1 = A0 … 88 = C8 (MIDI note = key + 20).
 * A piano may have fewer keys; the few with more have theirs outside this compass, and a RangeError says so.
 *
 * Octave numbers change at C and C4 is the C nearest the middle of the keyboard, A4 the pitch note (ISO 16, from
 * memory; the same numbering as in MIDI practice with note 60 = C4).
 */
import { english, type Language } from '../words/index.ts';

/** Key numbers of the lowest and highest note, A0 and C8. */
export const FIRST_KEY = 1;
export const LAST_KEY = 88;

/** Key number of A4, the note that the reference pitch belongs to. */
export const A4_KEY = 49;

const SHARP_NAMES = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;
const SEMITONES_ABOVE_C: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

/** Semitones from C0 up to A0, so that semitones above C0 = key + 8. */
const KEY_TO_SEMITONES_ABOVE_C0 = 8;

/** Returns `key` when it is a whole number from 1 to 88; otherwise a RangeError that says for what it was needed. */
export function requireKey(key: number, task: string): number {
  if (!(Number.isInteger(key) && key >= FIRST_KEY && key <= LAST_KEY)) {
    throw new RangeError(
      `Cannot compute ${task} as the key number must be a whole number from 1 (A0) to 88 (C8): current value is ${key}`,
    );
  }
  return key;
}

/**
 * Name of a key: letter, `#` for the black keys, octave number. Black keys are always spelled as sharps, so that one
 * key has one name in data; `parseNote` reads the flat spellings too.
 *
 * Throws: RangeError outside 1 … 88.
 * Source: the definition above.
 * @example noteName(49)  // = A4
 * @example noteName(2)  // = A#0
 */
export function noteName(key: number): string {
  const semitones = requireKey(key, 'a note name') + KEY_TO_SEMITONES_ABOVE_C0;
  return `${SHARP_NAMES[semitones % 12]}${Math.floor(semitones / 12)}`;
}

/** How the letters of a note name are meant. */
export interface NoteSpelling {
  /**
   * `international` (the default): B is the white key below C. `german`: that key is H, and B means B flat. The same
   * text names two different keys, so nothing guesses: ask for German names only where they are known to be in use.
   */
  readonly letters?: 'international' | 'german';
}

/**
 * Key number from a note name or a key number as people write them: `A0`, `A#4`, `a♯4`, `Bb3`, `B♭3`, `Cb4` (= B3),
 * `49`. Spaces around and inside are ignored; capital and small letters mean the same.
 *
 * Throws: SyntaxError when the text is neither; RangeError when it names a note outside A0 … C8.
 * Source: common practice for the spellings; German letters H and B: common practice.
 * @example parseNote('A4')  // = 49
 * @example parseNote('B♭3')  // = 38
 * @example parseNote('H3', { letters: 'german' })  // = 39
 */
export function parseNote(
  text: string,
  { letters = 'international' }: NoteSpelling = {},
  language: Language = english,
): number {
  const compact = text.replace(/\s+/g, '');
  if (/^[+-]?\d+$/.test(compact)) return withinCompass(Number(compact), text, language);

  const parts = /^([a-h])([#♯b♭]?)(-?\d+)$/i.exec(compact);
  const isGerman = letters === 'german';
  const letter = parts?.[1]?.toUpperCase();
  if (parts === null || letter === undefined || (letter === 'H' && !isGerman)) {
    throw new SyntaxError(
      language.say(
        "Cannot read a note as a name like A0, C#4 or Bb3, or a key number from 1 to 88, is needed{letter, select, H { (H is read only where German note names are asked for)} other {}}: found '{text}'",
        { letter: letter ?? 'none', text },
      ),
    );
  }
  const white = isGerman && letter === 'H' ? 'B' : letter;
  const germanFlat = isGerman && letter === 'B' ? -1 : 0;
  const sign = parts[2] === '' ? 0 : /[#♯]/.test(parts[2]!) ? 1 : -1;
  if (germanFlat !== 0 && sign > 0) {
    throw new SyntaxError(
      language.say(
        "Cannot read a note as a German B is already flat and takes no sharp; write H or B: found '{text}'",
        { text },
      ),
    );
  }
  // "Bb" in German letters is the same key as "B": the flat is only written out.
  const alteration = germanFlat !== 0 ? germanFlat : sign;
  const semitones = 12 * Number(parts[3]) + SEMITONES_ABOVE_C[white]! + alteration;
  return withinCompass(semitones - KEY_TO_SEMITONES_ABOVE_C0, text, language);
}

function withinCompass(key: number, text: string, { say }: Language): number {
  if (key < FIRST_KEY || key > LAST_KEY) {
    throw new RangeError(
      say(
        "Cannot read a note as it must lie from A0 (key 1) to C8 (key 88): found '{text}', which would be key {key}",
        { text, key },
      ),
    );
  }
  return key;
}
