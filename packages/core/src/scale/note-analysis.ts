import {
  breakLoad,
  fullLinearDensity,
  inharmonicity,
  type PlainString,
  plainLinearDensity,
  stringImpedance,
  stringTension,
  type WoundString,
  wireStress,
  woundStringTension,
} from '../strings/index.ts';
import { A228_MINIMUM, STEEL_YOUNGS_MODULUS, type WireStrengthTable } from '../tables/index.ts';
import {
  type Hertz,
  type KilogramsPerMetre,
  kilogramsPerMetre,
  type Metres,
  type NewtonSecondsPerMetre,
  type Newtons,
  newtonSecondsPerMetre,
  newtons,
  type Pascals,
  pascals,
  propagate,
} from '../units/index.ts';
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
  /** Uncertainties where a note states none; 'left out' when only the figures are wanted, at an eighth of the time. */
  readonly uncertainties?: AssumedUncertainties | 'left out' | undefined;
}

/** The figures of one note that carry an uncertainty. */
export const noteFigureNames = [
  'tension',
  'unisonTension',
  'linearDensity',
  'stress',
  'breakLoad',
  'breakShare',
  'inharmonicity',
  'impedance',
] as const;
export type NoteFigureName = (typeof noteFigureNames)[number];

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
  /** Standard uncertainty of each figure, in its unit; undefined when they were left out. */
  readonly standardUncertainties: Readonly<Record<NoteFigureName, number>> | undefined;
  /** What each input contributes to each figure, with its sign: shows what to measure better. */
  readonly contributions: Readonly<Record<NoteFigureName, Readonly<Record<string, number>>>> | undefined;
}

type NoteFigures = Readonly<Record<NoteFigureName, number>>;

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
  const strength = strengthTable.strengthAt(steel);

  const tension = tensionAtPitch(string, frequency);
  const stringTensions = tensionsOfUnison(note, tension);
  const unisonTension = stringTensions.reduce((sum, one) => sum + one, 0);
  const stringsWorth = unisonTension / tension;
  const figures = figuresOf({ ...string, youngsModulus }, frequency, strengthTable, 1, stringsWorth);

  const propagated =
    assumed === 'left out'
      ? undefined
      : propagate(
          (inputs): NoteFigures => {
            const changed = noteFromInputs(string, inputs);
            return figuresOf(
              changed.string,
              changed.frequency,
              strengthTable,
              inputs.strength!,
              stringsWorth,
            );
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
    inharmonicityMethod: 'core formula',
    impedance: newtonSecondsPerMetre(figures.impedance),
    standardUncertainties: propagated && byFigure((name) => propagated[name].standardUncertainty),
    contributions: propagated && byFigure((name) => propagated[name].contributions),
  };
}

/** Diameter of the wire that carries the tension: of a wound string its core. */
export function carryingDiameter(string: PlainString | WoundString): Metres {
  return string.kind === 'plain' ? string.diameter : string.coreDiameter;
}

/** Tension that puts the first mode of the flexible string at a frequency. */
function tensionAtPitch(string: PlainString | WoundString, frequency: Hertz): Newtons {
  if (string.kind === 'wound') return woundStringTension(string, frequency);
  return stringTension({
    diameter: string.diameter,
    speakingLength: string.speakingLength,
    frequency,
    density: string.steelDensity,
  });
}

function tensionsOfUnison(note: ScaleNote, tension: Newtons): Newtons[] {
  const { individualStrings } = note;
  if (individualStrings === undefined) return Array.from({ length: note.strings }, () => tension);
  if (individualStrings.length !== note.strings) {
    throw new RangeError(
      `Cannot analyse note ${note.key} as its unison of ${note.strings} needs as many strings read one by one: ` +
        `found ${individualStrings.length}`,
    );
  }
  return individualStrings.map((one) => tensionAtPitch(one, note.frequency));
}

function figuresOf(
  string: PlainString | WoundString,
  frequency: Hertz,
  strengthTable: WireStrengthTable,
  strengthFactor: number,
  stringsWorth: number,
): NoteFigures {
  const tension = tensionAtPitch(string, frequency);
  const steel = carryingDiameter(string);
  const linearDensity =
    string.kind === 'plain'
      ? plainLinearDensity({ diameter: string.diameter, density: string.steelDensity })
      : fullLinearDensity(string);
  const strength = pascals(strengthFactor * strengthTable.strengthAt(steel).strength);
  const load = breakLoad({ diameter: steel, strength });
  return {
    tension,
    unisonTension: stringsWorth * tension,
    linearDensity,
    stress: wireStress({ tension, diameter: steel }),
    breakLoad: load,
    breakShare: tension / load,
    inharmonicity: inharmonicity({
      diameter: steel,
      speakingLength: string.speakingLength,
      tension,
      youngsModulus: string.youngsModulus,
    }),
    impedance: stringImpedance({ tension, linearDensity }),
  };
}

function byFigure<T>(take: (name: NoteFigureName) => T): Record<NoteFigureName, T> {
  return Object.fromEntries(noteFigureNames.map((name) => [name, take(name)])) as Record<NoteFigureName, T>;
}
