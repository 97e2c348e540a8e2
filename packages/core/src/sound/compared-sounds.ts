import { hertz } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';
import { matchLevels } from './match-levels.ts';
import { renderSound } from './render-sound.ts';
import { HIGHEST_PARTIAL, type NoteToStrike, struckNote } from './struck-note.ts';

/** A note with its place in time [s]: plain data, so that it can be sent to where the sound is made. */
export interface NoteToPlay extends NoteToStrike {
  readonly from: number;
  readonly to: number;
}

/**
 * One passage in several scales, at levels that can be compared.
 *
 * @param passages    the same passage in each scale
 * @param sampleRate  [Hz], > 0; partials above 0.45 of it are left out, as a headset at 16 kHz could not carry them
 * @returns one sound for each, in the same order
 *
 * Throws: RangeError as `struckNote` and `renderSound`.
 * Source: `struckNote`, `renderSound`, `matchLevels`.
 * @example  comparedSounds([[{ key: 49, strings: 1, string: { kind: 'plain', speakingLength: metres(0.4), diameter: millimetres(1) }, firstPartial: hertz(440), from: 0, to: 0.1 }]], 44100)[0].length  // = 4410
 */
export function comparedSounds(
  passages: readonly (readonly NoteToPlay[])[],
  sampleRate: number,
  language: Language = english,
): Float32Array[] {
  const highest = hertz(Math.min(HIGHEST_PARTIAL, 0.45 * sampleRate));
  return matchLevels(
    passages.map((notes) =>
      renderSound(
        notes.map((note) => ({ partials: struckNote({ ...note, highest }), from: note.from, to: note.to })),
        sampleRate,
        language,
      ),
    ),
  );
}
