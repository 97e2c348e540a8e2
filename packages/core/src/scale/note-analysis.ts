import { bearingForce, type PlainString, type WoundString, woundTensionAtPitch } from '../strings/index.ts';
import { A228_MINIMUM, STEEL_YOUNGS_MODULUS, type WireStrengthTable } from '../tables/index.ts';
import {
  type Cents,
  cents,
  type Hertz,
  hertz,
  type KilogramsPerMetre,
  kilogramsPerMetre,
  type Metres,
  metres,
  type NewtonSecondsPerMetre,
  type Newtons,
  newtonSecondsPerMetre,
  newtons,
  type Pascals,
  pascals,
  propagate,
} from '../units/index.ts';
import { type ExactCorrections, exactCorrections, NO_CORRECTIONS } from './exact-corrections.ts';
import {
  carryingDiameter,
  type NoteFigureName,
  type NoteFigures,
  noteFigureNames,
  noteFigures,
  tensionInClosedForm,
} from './note-figures.ts';
import { noteFromInputs, noteInputs } from './note-inputs.ts';
import { type AssumedUncertainties, COMMON_UNCERTAINTIES, type ScaleNote } from './scale.ts';

/** How a note's B was worked out. */
export type InharmonicityMethod = 'core formula' | 'exact modes, fitted over partials 1-8';

/** What an analysis is based on; everything has a default. */
export interface AnalysisOptions {
  /** Where wire strength comes from; ASTM A228 minimum when not given. */
  readonly strengthTable?: WireStrengthTable | undefined;
  /** Modulus for strings that state none; 202 GPa for every wire when not given, `musicWireModulus` for a value by diameter. */
  readonly youngsModulusAt?: ((diameter: Metres) => Pascals) | undefined;
  /**
   * How tension and B of wound strings are worked out; 'exact modes' when not given. 'core formula' is the quick look: its
   * tension is up to 0.2 % low and its B leaves out the bare ends, which multiply B by 1.04 to 4.5.
   */
  readonly woundStrings?: 'exact modes' | 'core formula' | undefined;
  /** Uncertainties where a note states none; 'left out' when only the figures are wanted, several times faster. */
  readonly uncertainties?: AssumedUncertainties | 'left out' | undefined;
}

/** What one note's strings do. All figures are of one string unless the name says unison. */
export interface NoteAnalysis {
  readonly note: ScaleNote;
  readonly key: number;
  readonly tension: Newtons;
  /** Tension of all strings of the note together. */
  readonly unisonTension: Newtons;
  /** Tension of each string where they were read one by one; else of one string, as often as there are strings. */
  readonly stringTensions: readonly Newtons[];
  /** Mass per length; of a wound string where every layer is present. */
  readonly linearDensity: KilogramsPerMetre;
  /** In the wire that carries the tension: the core of a wound string. */
  readonly stress: Pascals;
  readonly breakLoad: Newtons;
  /** Tension as a share of the break load, by `strengthTable`. */
  readonly breakShare: number;
  /** Name of the table that the break load rests on. */
  readonly strengthTable: string;
  /** The sentence that stands beside break load and break share. */
  readonly strengthRemark: string;
  readonly isWithinStrengthTable: boolean;
  readonly inharmonicity: number;
  readonly inharmonicityMethod: InharmonicityMethod;
  readonly impedance: NewtonSecondsPerMetre;
  /** How much the speaking length alone is stretched at pitch. */
  readonly elongation: Metres;
  /** First mode along the wire; its winding counted at full density. */
  readonly longitudinalMode: Hertz;
  /** Change of pitch when the strings warm by one kelvin and the plate does not; see `pitchPerKelvin`. */
  readonly pitchPerKelvin: Cents;
  /** What the whole unison bears on the bridge with; undefined where the bearing angle was not read. */
  readonly bearing: NoteBearing | undefined;
  /** Standard uncertainty of each figure, in its unit; undefined when they were left out. */
  readonly standardUncertainties: Readonly<Record<NoteFigureName, number>> | undefined;
  /** What each input contributes to each figure, with its sign: shows what to measure better. */
  readonly contributions: Readonly<Record<NoteFigureName, Readonly<Record<string, number>>>> | undefined;
}

/** Bearing of one note, all its strings together. */
export interface NoteBearing {
  readonly force: Newtons;
  /** Undefined when uncertainties were left out. */
  readonly standardUncertainty: Newtons | undefined;
  readonly contributions: Readonly<Record<string, number>> | undefined;
}

/**
 * Analyses one note: a pure function of the note and the options, so that after an edit only that note is worked out anew.
 *
 * Every figure carries its standard uncertainty, by first-order propagation from diameter, lengths, frequency, densities,
 * modulus and strength. Where the strings of a unison were read one by one the unison's relative uncertainty is taken to
 * be that of one string, which is on the careful side.
 *
 * Throws: RangeError when a dimension of the string is not positive and finite, or `individualStrings` has another count
 * than `strings`.
 * Source: the pages of `core/strings` named by the fields; JCGM 100:2008 for the uncertainties.
 */
export function analyseNote(note: ScaleNote, options: AnalysisOptions = {}): NoteAnalysis {
  const strengthTable = options.strengthTable ?? A228_MINIMUM;
  const assumed = options.uncertainties ?? COMMON_UNCERTAINTIES;
  const { string, frequency } = note;
  const steel = carryingDiameter(string);
  const youngsModulus = string.youngsModulus ?? options.youngsModulusAt?.(steel) ?? STEEL_YOUNGS_MODULUS;
  const isExact = string.kind === 'wound' && options.woundStrings !== 'core formula';
  const correctionsOf = (one: PlainString | WoundString, pitch: Hertz): ExactCorrections =>
    isExact && one.kind === 'wound' ? exactCorrections(one, pitch) : NO_CORRECTIONS;

  const corrections = correctionsOf({ ...string, youngsModulus }, frequency);
  const stringTensions = tensionsOfUnison(note, corrections.tensionFactor, isExact);
  const stringsWorth =
    stringTensions.reduce((sum, one) => sum + one, 0) /
    (corrections.tensionFactor * tensionInClosedForm(string, frequency));
  const strength = strengthTable.strengthAt(steel);
  const basis = { strengthTable, stringsWorth, corrections };
  const figures = noteFigures({ ...string, youngsModulus }, frequency, basis);

  const propagated =
    assumed === 'left out'
      ? undefined
      : propagate(
          (inputs): NoteFigures => {
            const changed = noteFromInputs(string, inputs);
            return noteFigures(changed.string, changed.frequency, {
              ...basis,
              // Only the bare ends move the corrections enough to matter; the tests compare with Monte Carlo that spares nothing.
              corrections: haveSameBareEnds(changed.string, string)
                ? corrections
                : correctionsOf(changed.string, changed.frequency),
              strengthFactor: inputs.strength,
              expansion: inputs.expansion,
            });
          },
          noteInputs(note, assumed, youngsModulus, strength.standardUncertainty / strength.strength),
        );

  return {
    note,
    key: note.key,
    tension: newtons(figures.tension),
    unisonTension: newtons(figures.unisonTension),
    stringTensions,
    linearDensity: kilogramsPerMetre(figures.linearDensity),
    stress: pascals(figures.stress),
    breakLoad: newtons(figures.breakLoad),
    breakShare: figures.breakShare,
    strengthTable: strengthTable.name,
    strengthRemark: strengthTable.remark,
    isWithinStrengthTable: strength.isWithinRange,
    inharmonicity: figures.inharmonicity,
    inharmonicityMethod: isExact ? 'exact modes, fitted over partials 1-8' : 'core formula',
    impedance: newtonSecondsPerMetre(figures.impedance),
    elongation: metres(figures.elongation),
    longitudinalMode: hertz(figures.longitudinalMode),
    pitchPerKelvin: cents(figures.pitchPerKelvin),
    bearing: bearingOf(note, figures.unisonTension, propagated?.unisonTension.contributions, assumed),
    standardUncertainties: propagated && byFigure((name) => propagated[name].standardUncertainty),
    contributions: propagated && byFigure((name) => propagated[name].contributions),
  };
}

/** Of every string of the unison; read one by one, or as often as there are strings. */
function tensionsOfUnison(note: ScaleNote, tensionFactor: number, isExact: boolean): Newtons[] {
  const { individualStrings, string, strings, frequency } = note;
  if (individualStrings === undefined) {
    const tension = newtons(tensionFactor * tensionInClosedForm(string, frequency));
    return Array.from({ length: strings }, () => tension);
  }
  if (individualStrings.length !== strings) {
    throw new RangeError(
      `Cannot analyse note ${note.key} as its unison of ${strings} needs as many strings read one by one: ` +
        `found ${individualStrings.length}`,
    );
  }
  return individualStrings.map((one) =>
    isExact && one.kind === 'wound'
      ? woundTensionAtPitch({ string: one, frequency, stiffness: 'ignored' }).value
      : newtons(tensionInClosedForm(one, frequency)),
  );
}

function haveSameBareEnds(a: PlainString | WoundString, b: PlainString | WoundString): boolean {
  if (a.kind === 'plain' || b.kind === 'plain') return true;
  return a.layers.every((layer, index) => {
    const other = b.layers[index];
    return layer.bareFront === other?.bareFront && layer.bareBack === other.bareBack;
  });
}

/** F = T · sin θ of the whole unison; dF = sin θ · dT + T · cos θ · dθ. */
function bearingOf(
  note: ScaleNote,
  unisonTension: number,
  tensionContributions: Readonly<Record<string, number>> | undefined,
  assumed: AssumedUncertainties | 'left out',
): NoteBearing | undefined {
  const { bearingAngle } = note;
  if (bearingAngle === undefined) return undefined;
  const force = bearingForce({ tension: newtons(unisonTension), deflection: bearingAngle });
  if (tensionContributions === undefined || assumed === 'left out') {
    return { force, standardUncertainty: undefined, contributions: undefined };
  }
  const angleUncertainty = note.standardUncertainties?.bearingAngle ?? assumed.bearingAngle_rad;
  const contributions: Record<string, number> = {
    bearingAngle: unisonTension * Math.cos(bearingAngle) * angleUncertainty,
  };
  for (const [input, contribution] of Object.entries(tensionContributions)) {
    contributions[input] = Math.sin(bearingAngle) * contribution;
  }
  return { force, standardUncertainty: newtons(Math.hypot(...Object.values(contributions))), contributions };
}

function byFigure<T>(take: (name: NoteFigureName) => T): Record<NoteFigureName, T> {
  return Object.fromEntries(noteFigureNames.map((name) => [name, take(name)])) as Record<NoteFigureName, T>;
}
