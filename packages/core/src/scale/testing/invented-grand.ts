import { equalTemperedFrequency } from '../../pitch/index.ts';
import type { PlainString, WoundString } from '../../strings/index.ts';
import { hertz, metres, millimetres } from '../../units/index.ts';
import type { ScaleNote } from '../scale.ts';

/*
 * A scale of our own invention, roughly that of a large grand: 20 wound notes on the bass bridge, 68 plain notes on the
 * long bridge in three sections, lengths that halve by a little less than an octave, half sizes that fall to the treble.
 */

const LAST_WOUND_KEY = 20;

/** Speaking length of a note [m]. */
function lengthOf(key: number): number {
  if (key <= LAST_WOUND_KEY) return 1.34 - 0.012 * (key - 1);
  return 0.054 * 2 ** ((88 - key) / 13.3);
}

/** Size number, American: 13 at the top, thicker in half sizes to the bass. */
function plainDiameter_mil(key: number): number {
  const sizeNumber = 13 + Math.round(((88 - key) / 67) * 12) / 2;
  return 5 + 2 * sizeNumber;
}

function sectionOf(key: number): string {
  if (key <= LAST_WOUND_KEY) return 'bass';
  return key <= 43 ? 'tenor' : key <= 64 ? 'low treble' : 'high treble';
}

function stringOf(key: number): PlainString | WoundString {
  const speakingLength = metres(lengthOf(key));
  if (key > LAST_WOUND_KEY) {
    return { kind: 'plain', speakingLength, diameter: millimetres(plainDiameter_mil(key) * 0.0254) };
  }
  const share = (key - 1) / (LAST_WOUND_KEY - 1);
  const coreDiameter = millimetres(1.4 - 0.4 * share);
  // The winding that gives a tension from 1150 N in singles at the bottom to 800 N at the top.
  const frequency = 440 * 2 ** ((key - 49) / 12);
  const tension = 1150 - 350 * share;
  const massPerLength = tension / (4 * speakingLength ** 2 * frequency ** 2);
  const windingArea = (massPerLength - 7850 * (Math.PI / 4) * coreDiameter ** 2) / 8930;
  const over = Math.sqrt(windingArea / (Math.PI / 4) ** 2 + coreDiameter ** 2);
  const wire = (over - coreDiameter) / 2;
  const [bareFront, bareBack] = [millimetres(18), millimetres(14)];
  const layers =
    key <= 8
      ? [
          { wireDiameter: metres(wire * 0.35), bareFront, bareBack },
          { wireDiameter: metres(wire * 0.65), bareFront: millimetres(22), bareBack: millimetres(20) },
        ]
      : [{ wireDiameter: metres(wire), bareFront, bareBack }];
  return { kind: 'wound', speakingLength, coreDiameter, layers };
}

/** The whole invented grand, 88 notes. */
export function inventedGrand(): ScaleNote[] {
  return Array.from({ length: 88 }, (_, index): ScaleNote => {
    const key = index + 1;
    return {
      key,
      section: sectionOf(key),
      bridge: key <= LAST_WOUND_KEY ? 'bass bridge' : 'long bridge',
      strings: key <= 10 ? 1 : key <= LAST_WOUND_KEY ? 2 : 3,
      frequency: equalTemperedFrequency(key, hertz(440)),
      string: stringOf(key),
    };
  });
}

/** The same scale with some notes changed. */
export function changed(
  notes: readonly ScaleNote[],
  change: (note: ScaleNote) => Partial<ScaleNote> | undefined,
): ScaleNote[] {
  return notes.map((note) => ({ ...note, ...change(note) }));
}
