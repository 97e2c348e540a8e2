import {
  bearingForce,
  breakLoad,
  elongation,
  fitInharmonicityByLine,
  fullLinearDensity,
  inharmonicity,
  longitudinalMode,
  type PlainString,
  pitchPerKelvin,
  plainLinearDensity,
  stringImpedance,
  stringTension,
  type WoundString,
  wireStress,
  woundStringModes,
  woundStringTension,
  woundTensionAtPitch,
} from '../strings/index.ts';
import {
  A228_MINIMUM,
  STEEL_EXPANSION_PER_KELVIN,
  STEEL_YOUNGS_MODULUS,
  type WireStrengthTable,
} from '../tables/index.ts';
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
  'elongation',
  'longitudinalMode',
  'pitchPerKelvin',
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
  const isExact = string.kind === 'wound' && options.woundStrings !== 'core formula';
  const tension = tensionAtPitch(string, frequency, isExact);
  const stringTensions = tensionsOfUnison(note, tension, isExact);
  const unisonTension = stringTensions.reduce((sum, one) => sum + one, 0);
  const stringsWorth = unisonTension / tension;
  const strength = strengthTable.strengthAt(steel);
  const basis: Basis = { strengthTable, stringsWorth, isExact };
  const figures = figuresOf({ ...string, youngsModulus }, frequency, basis);

  const propagated =
    assumed === 'left out'
      ? undefined
      : propagate(
          (inputs): NoteFigures => {
            const changed = noteFromInputs(string, inputs);
            return figuresOf(changed.string, changed.frequency, basis, inputs.strength, inputs.expansion);
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

/** Diameter of the wire that carries the tension: of a wound string its core. */
export function carryingDiameter(string: PlainString | WoundString): Metres {
  return string.kind === 'plain' ? string.diameter : string.coreDiameter;
}

/** Tension that puts the first mode of the flexible string at a frequency. */
function tensionAtPitch(string: PlainString | WoundString, frequency: Hertz, isExact: boolean): Newtons {
  if (string.kind === 'plain') {
    return stringTension({
      diameter: string.diameter,
      speakingLength: string.speakingLength,
      frequency,
      density: string.steelDensity,
    });
  }
  return isExact
    ? woundTensionAtPitch({ string, frequency, stiffness: 'ignored' }).value
    : woundStringTension(string, frequency);
}

function tensionsOfUnison(note: ScaleNote, tension: Newtons, isExact: boolean): Newtons[] {
  const { individualStrings } = note;
  if (individualStrings === undefined) return Array.from({ length: note.strings }, () => tension);
  if (individualStrings.length !== note.strings) {
    throw new RangeError(
      `Cannot analyse note ${note.key} as its unison of ${note.strings} needs as many strings read one by one: ` +
        `found ${individualStrings.length}`,
    );
  }
  return individualStrings.map((one) => tensionAtPitch(one, note.frequency, isExact));
}

/** What stays the same while the inputs of a note are varied. */
interface Basis {
  readonly strengthTable: WireStrengthTable;
  /** Tension of the unison over the tension of the one string that stands for it. */
  readonly stringsWorth: number;
  readonly isExact: boolean;
}

function figuresOf(
  string: PlainString | WoundString,
  frequency: Hertz,
  { strengthTable, stringsWorth, isExact }: Basis,
  strengthFactor = 1,
  expansion = STEEL_EXPANSION_PER_KELVIN,
): NoteFigures {
  const tension = tensionAtPitch(string, frequency, isExact);
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
    inharmonicity: inharmonicityOf(string, tension, isExact),
    impedance: stringImpedance({ tension, linearDensity }),
    elongation: elongation({
      tension,
      length: string.speakingLength,
      diameter: steel,
      youngsModulus: string.youngsModulus,
    }),
    longitudinalMode: longitudinalMode({
      speakingLength: string.speakingLength,
      coreDiameter: steel,
      linearDensity,
      youngsModulus: string.youngsModulus,
    }),
    pitchPerKelvin: pitchPerKelvin({
      tension,
      diameter: steel,
      youngsModulus: string.youngsModulus,
      stringExpansion: expansion,
    }),
  };
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

/** Partials that B of a wound string is fitted over; it stands in the name of the method. */
const FITTED_PARTIALS = 8;

function inharmonicityOf(string: PlainString | WoundString, tension: Newtons, isExact: boolean): number {
  if (string.kind === 'wound' && isExact) {
    const partials = woundStringModes({ string, tension, count: FITTED_PARTIALS }).value;
    return fitInharmonicityByLine(partials).inharmonicity;
  }
  return inharmonicity({
    diameter: carryingDiameter(string),
    speakingLength: string.speakingLength,
    tension,
    youngsModulus: string.youngsModulus,
  });
}

function byFigure<T>(take: (name: NoteFigureName) => T): Record<NoteFigureName, T> {
  return Object.fromEntries(noteFigureNames.map((name) => [name, take(name)])) as Record<NoteFigureName, T>;
}
