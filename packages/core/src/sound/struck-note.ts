import type { PlainString, WoundString } from '../strings/index.ts';
import { type Cents, cents, type Hertz, hertz, requireNotNegative } from '../units/index.ts';
import { partialDecay } from './partial-decay.ts';
import { soundingPartials } from './sounding-partials.ts';
import { strikeAmplitude } from './strike-amplitude.ts';

/** One decaying sine. */
export interface SoundingPartial {
  readonly frequency: Hertz;
  /** Without unit, relative to the other partials. */
  readonly amplitude: number;
  /** σ [1/s], as in e^(−σ·t). */
  readonly decay: number;
}

/** A note to be struck. */
export interface NoteToStrike {
  readonly key: number;
  readonly string: PlainString | WoundString;
  readonly strings: 1 | 2 | 3;
  /** Where the first partial is tuned. */
  readonly firstPartial: Hertz;
  /** Distance of the front termination to where the hammer strikes ÷ speaking length; 1/8 unless given. */
  readonly strikePosition?: number | undefined;
  /** Between the outermost strings of the unison; 0 unless given: a unison without a beat. */
  readonly unisonSpread?: Cents | undefined;
  /** Partials above it are left out; 12 kHz unless given. */
  readonly highest?: Hertz | undefined;
}

/** Where hammers usually strike: common practice, no source. */
export const USUAL_STRIKE_POSITION = 1 / 8;
/** Nothing above it tells two scales apart. */
export const HIGHEST_PARTIAL = hertz(12_000);

/**
 * The partials of a struck note: every string of its unison, spread evenly about the pitch.
 *
 *     f_n,s = f_n · 2^(c_s/1200)        c_s = spread · (s − (S − 1)/2)/(S − 1), s = 0 … S − 1
 *
 * @param note  see `NoteToStrike`
 * @returns partials of string 1 first, then of string 2 …
 *
 * Throws: RangeError when a dimension, pitch or spread is out of range.
 * Source: `soundingPartials`, `strikeAmplitude`, `partialDecay`.
 * @example  struckNote({ key: 49, strings: 3, string: { kind: 'plain', speakingLength: metres(0.4), diameter: millimetres(1) }, firstPartial: hertz(440), unisonSpread: cents(1) })[0].frequency  // ≈ 439.8729 Hz
 */
export function struckNote(note: NoteToStrike): SoundingPartial[] {
  const { key, string, strings, firstPartial } = note;
  const spread = requireNotNegative(note.unisonSpread ?? cents(0), 'the spread of a unison', 'a struck note');
  const position = note.strikePosition ?? USUAL_STRIKE_POSITION;
  const partials = soundingPartials({ string, firstPartial, highest: note.highest ?? HIGHEST_PARTIAL });
  return Array.from({ length: strings }, (_, which) => {
    const offset = strings === 1 ? 0 : spread * ((which - (strings - 1) / 2) / (strings - 1));
    return partials.map((frequency, index) => ({
      frequency: hertz(frequency * 2 ** (offset / 1200)),
      amplitude: strikeAmplitude({ partial: index + 1, frequency, position, key }),
      decay: partialDecay({ key, speakingLength: string.speakingLength, partial: index + 1 }),
    }));
  }).flat();
}
