import { type AnalysisOptions, analyseNote, type ScaleNote } from '../scale/index.ts';
import type { PlainString, WoundString } from '../strings/index.ts';
import { type Metres, metres, type Newtons, newtons, requirePositive } from '../units/index.ts';

/** What a small change does to one string. */
export interface FigureChange {
  readonly tension: Newtons;
  /** Change of the share itself: 0.004 is from 0.500 to 0.504. */
  readonly breakShare: number;
  /** Change of B as a share of B. */
  readonly inharmonicityShare: number;
}

/** A change both ways; the two differ a little, for nothing here is straight. */
export interface BothWays {
  readonly more: FigureChange;
  readonly less: FigureChange;
}

export interface NoteSensitivity {
  readonly key: number;
  readonly speakingLength: BothWays;
  /** Of the plain wire, or of the core under the same windings. */
  readonly wireDiameter: BothWays;
  /** Of every winding wire at once; undefined for a plain string, to which it does not apply. */
  readonly windingDiameter: BothWays | undefined;
}

export interface SensitivitySteps {
  /** Default 0.5 mm: a length read with a steel rule between pins. */
  readonly speakingLength?: Metres | undefined;
  /** Default 5 µm: half of what a workshop micrometer resolves, and about what wire is drawn to. Common practice. */
  readonly diameter?: Metres | undefined;
}

/**
 * What small errors of length and diameter do to tension, break share and B of every note of a scale.
 *
 * Worked out by making the change and analysing the string anew, not from slopes, so it holds for steps of any size. A wound
 * string keeps its winding when its speaking length changes: the bare end at the bridge takes the difference, as for a
 * string that was made before the error was found.
 *
 * @param notes    the scale, each note with the string it is to have
 * @param steps    how large the changes are [m], > 0
 * @param options  strength table and modulus, as in `analyseNote`
 * @returns one entry a note, in the order given
 *
 * Throws: RangeError when a step is not positive, or leaves nothing of a wire.
 * Source: `analyseNote`. To first order T goes with L²·d² and B of a plain string with d²/L⁴.
 * @example  scaleSensitivity([{ key: 49, section: 'treble', bridge: 'long', strings: 3, frequency: hertz(440), string: { kind: 'plain', speakingLength: millimetres(400), diameter: millimetres(1) } }])[0].speakingLength.more.tension  // ≈ 1.911 N
 */
export function scaleSensitivity(
  notes: readonly ScaleNote[],
  steps: SensitivitySteps = {},
  options: Pick<AnalysisOptions, 'strengthTable' | 'youngsModulusAt'> = {},
): NoteSensitivity[] {
  const task = 'the sensitivity of a scale';
  const lengthStep = requirePositive(steps.speakingLength ?? 0.5e-3, 'the step of the speaking length', task);
  const diameterStep = requirePositive(steps.diameter ?? 5e-6, 'the step of the diameter', task);
  return notes.map((note) => {
    const figures = (string: PlainString | WoundString) => {
      const { individualStrings: _, ...one } = note;
      return analyseNote({ ...one, string }, { ...options, uncertainties: 'left out' });
    };
    const base = figures(note.string);
    const changed = (string: PlainString | WoundString): FigureChange => {
      const now = figures(string);
      return {
        tension: newtons(now.tension - base.tension),
        breakShare: now.breakShare - base.breakShare,
        inharmonicityShare: now.inharmonicity / base.inharmonicity - 1,
      };
    };
    const bothWays = (change: (sign: 1 | -1) => PlainString | WoundString): BothWays => ({
      more: changed(change(1)),
      less: changed(change(-1)),
    });
    const { string } = note;
    return {
      key: note.key,
      speakingLength: bothWays((sign) => withLength(string, sign * lengthStep)),
      wireDiameter: bothWays((sign) => withWire(string, sign * diameterStep)),
      windingDiameter:
        string.kind === 'plain'
          ? undefined
          : bothWays((sign) => ({
              ...string,
              layers: string.layers.map((layer) => ({
                ...layer,
                wireDiameter: metres(layer.wireDiameter + sign * diameterStep),
              })),
            })),
    };
  });
}

function withLength(string: PlainString | WoundString, step: number): PlainString | WoundString {
  const speakingLength = metres(string.speakingLength + step);
  if (string.kind === 'plain') return { ...string, speakingLength };
  return {
    ...string,
    speakingLength,
    // A winding cannot reach past the bridge pin: then it is the winding that is shorter.
    layers: string.layers.map((layer) => ({
      ...layer,
      bareBack: metres(Math.max(0, layer.bareBack + step)),
    })),
  };
}

function withWire(string: PlainString | WoundString, step: number): PlainString | WoundString {
  return string.kind === 'plain'
    ? { ...string, diameter: metres(string.diameter + step) }
    : { ...string, coreDiameter: metres(string.coreDiameter + step) };
}
