/** When which key sounds; times in seconds. */
export interface PassageNote {
  readonly key: number;
  readonly from: number;
  readonly to: number;
}

const ALONE = 4;
const ONE_STEP = 1.2;
const BETWEEN_STEPS = 0.1;
const MAJOR_THIRD = 4;
const OCTAVE = 12;

/** One note by itself. */
export const singleNote = (key: number): PassageNote[] => [{ key, from: 0, to: ALONE }];

/** A note and the octave above it, together. */
export const octaveAbove = (key: number): PassageNote[] => [
  { key, from: 0, to: ALONE },
  { key: key + OCTAVE, from: 0, to: ALONE },
];

/**
 * Major thirds upwards by semitones, so that both notes cross the break one after the other.
 *
 * @param firstHigher  the first key above the break
 * @param keys         keys that exist, lowest and highest
 * @returns thirds whose lower note runs from two below the place at which the upper note crosses to one above it; those that
 *          reach beyond the keys are left out
 * @example  thirdsAcross(31, [1, 88]).filter(({ from }) => from === 0).map(({ key }) => key)  // = [25,29]
 */
export function thirdsAcross(
  firstHigher: number,
  [lowest, highest]: readonly [number, number],
): PassageNote[] {
  const notes: PassageNote[] = [];
  for (let key = firstHigher - MAJOR_THIRD - 2; key <= firstHigher + 1; key += 1) {
    if (key < lowest || key + MAJOR_THIRD > highest) continue;
    const from = (notes.length / 2) * (ONE_STEP + BETWEEN_STEPS);
    for (const one of [key, key + MAJOR_THIRD]) notes.push({ key: one, from, to: from + ONE_STEP });
  }
  return notes;
}
