/**
 * A temperament: how far each of the twelve notes stands from equal temperament.
 *
 * `offsets`: 12 values in cents, index 0 = C, 1 = C# … 9 = A … 11 = B, the same in every octave. Only differences
 * count: a tuning holds A4 at the reference pitch, so the offset of A is taken off all of them.
 */
export interface Temperament {
  readonly name: string;
  readonly offsets: readonly number[];
  readonly source: string;
}

/** Index of A among the twelve offsets. */
const A = 9;

/** What twelve pure fifths exceed seven octaves by: 1200·log₂(3¹²/2¹⁹) = 23.460 cents. */
export const PYTHAGOREAN_COMMA = 1200 * Math.log2(3 ** 12 / 2 ** 19);

/** What four pure fifths exceed two octaves and a pure major third by: 1200·log₂(81/80) = 21.506 cents. */
export const SYNTONIC_COMMA = 1200 * Math.log2(81 / 80);

const PURE_FIFTH = 1200 * Math.log2(3 / 2);

/**
 * Offsets of a temperament that is laid out as a circle of fifths.
 *
 *     note(i + 1) = note(i) + 701.955 − narrowing(i)     from C through G, D, A … to F
 *     offset      = note − 100 · semitones
 *
 * @param narrowings  cents by which each of the eleven fifths C–G, G–D, D–A, A–E, E–B, B–F#, F#–C#, C#–G#, G#–D#, D#–A#,
 *                    A#–F is narrower than pure; the twelfth, F–C, is what is left
 * @returns 12 values in cents, index 0 = C, with C at 0
 *
 * Throws: RangeError unless there are eleven finite values.
 * Source: definition.
 * @example offsetsFromFifths(Array(11).fill(PYTHAGOREAN_COMMA / 12))[7]  // ≈ 0.000 cents
 */
export function offsetsFromFifths(narrowings: readonly number[]): number[] {
  if (narrowings.length !== 11 || !narrowings.every(Number.isFinite)) {
    throw new RangeError(
      `Cannot lay out a temperament as eleven finite narrowings are needed: found ${narrowings.length} values`,
    );
  }
  const offsets = Array<number>(12).fill(0);
  let position = 0;
  narrowings.forEach((narrowing, index) => {
    position += PURE_FIFTH - narrowing;
    const semitones = 7 * (index + 1);
    offsets[semitones % 12] = position - 100 * semitones;
  });
  return offsets;
}

export const equalTemperament: Temperament = {
  name: 'equal',
  offsets: Array<number>(12).fill(0),
  source: 'definition: twelve equal semitones of 100 cents to the octave',
};

const quarter = PYTHAGOREAN_COMMA / 4;
const sixth = PYTHAGOREAN_COMMA / 6;
const syntonicQuarter = SYNTONIC_COMMA / 4;

/** Historic temperaments a technician may be asked for, each with where its layout was read. */
export const historicTemperaments: readonly Temperament[] = [
  {
    name: 'quarter-comma meantone',
    // From E♭ up to G#: the keys D# and A# are then tuned as E♭ and B♭, and the wolf is G#–E♭.
    offsets: chainFromEFlat(Array<number>(11).fill(syntonicQuarter)),
    source: 'eleven fifths E♭–G#, each a quarter of the syntonic comma narrow; layout from memory',
  },
  {
    name: 'Werckmeister III',
    offsets: offsetsFromFifths([quarter, quarter, quarter, 0, 0, quarter, 0, 0, 0, 0, 0]),
    source:
      'fifths C–G, G–D, D–A and B–F# a quarter of the Pythagorean comma narrow, the rest pure; cents agree with those of K. Gann, An Introduction to Historical Tunings, as quoted in the Haskell package hmt 0.15',
  },
  {
    name: 'Kirnberger III',
    offsets: offsetsFromFifths([
      syntonicQuarter,
      syntonicQuarter,
      syntonicQuarter,
      syntonicQuarter,
      0,
      0,
      PYTHAGOREAN_COMMA - SYNTONIC_COMMA,
      0,
      0,
      0,
      0,
    ]),
    source:
      'C–G–D–A–E each a quarter of the syntonic comma narrow, F#–C# a schisma narrow, the rest pure; from memory',
  },
  {
    name: 'Vallotti',
    // F–C is the twelfth fifth and takes what is left, a sixth of the comma.
    offsets: offsetsFromFifths([sixth, sixth, sixth, sixth, sixth, 0, 0, 0, 0, 0, 0]),
    source: 'fifths F–C–G–D–A–E–B each a sixth of the Pythagorean comma narrow, the rest pure; from memory',
  },
  {
    name: 'Young 1799',
    offsets: offsetsFromFifths([
      (3 / 16) * SYNTONIC_COMMA,
      (3 / 16) * SYNTONIC_COMMA,
      (3 / 16) * SYNTONIC_COMMA,
      (3 / 16) * SYNTONIC_COMMA,
      youngSmall(),
      youngSmall(),
      0,
      0,
      0,
      0,
      youngSmall(),
    ]),
    source:
      'C–G–D–A–E each 3/16 of the syntonic comma narrow, E–B–F# and A#–F–C sharing the rest, the others pure (from memory); cents agree with those of K. Gann, An Introduction to Historical Tunings, as quoted in the Haskell package hmt 0.15',
  },
];

/** The four lightly narrowed fifths of Young's first temperament share what the other four leave of the comma. */
function youngSmall(): number {
  return (PYTHAGOREAN_COMMA - 4 * (3 / 16) * SYNTONIC_COMMA) / 4;
}

/** As `offsetsFromFifths`, with the chain starting at E♭ (held under D#), so that the wolf lies between G# and E♭. */
function chainFromEFlat(narrowings: readonly number[]): number[] {
  const fromC = offsetsFromFifths(narrowings);
  const shifted = Array.from({ length: 12 }, (_, pitch) => fromC[(pitch + 9) % 12]!);
  return shifted.map((offset) => offset - shifted[0]!);
}

/**
 * Cents by which a key stands off equal temperament when A stands on it.
 *
 * @param key          key number, 1 = A0
 * @param temperament  12 offsets in cents, index 0 = C
 * Throws: RangeError unless the temperament has twelve finite offsets.
 * Source: definition.
 * @example temperamentOffset(40, equalTemperament)  // = 0
 */
export function temperamentOffset(key: number, temperament: Temperament): number {
  const { offsets, name } = temperament;
  if (offsets.length !== 12 || !offsets.every(Number.isFinite)) {
    throw new RangeError(
      `Cannot use the temperament '${name}' as twelve finite offsets in cents are needed, C to B: found [${offsets.join(', ')}]`,
    );
  }
  return offsets[(key + 8) % 12]! - offsets[A]!;
}
