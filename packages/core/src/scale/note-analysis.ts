import {
  breakShare,
  fullLinearDensity,
  inharmonicity,
  plainLinearDensity,
  stringImpedance,
  stringTension,
  wireStress,
  woundStringTension,
} from '../strings/index.ts';
import { A228_MINIMUM, STEEL_YOUNGS_MODULUS, type WireStrengthTable } from '../tables/index.ts';
import {
  type KilogramsPerMetre,
  type Metres,
  type NewtonSecondsPerMetre,
  type Newtons,
  newtons,
  type Pascals,
} from '../units/index.ts';
import type { ScaleNote } from './scale.ts';

/** How a note's B was worked out. */
export type InharmonicityMethod = 'core formula' | 'exact modes, fitted over partials 1-8';

/** What an analysis is based on. */
export interface AnalysisOptions {
  /** Where wire strength comes from; ASTM A228 minimum when not given. */
  readonly strengthTable?: WireStrengthTable | undefined;
}

/** What one note's strings do. All figures are of one string unless the name says unison. */
export interface NoteAnalysis {
  readonly note: ScaleNote;
  readonly key: number;
  readonly tension: Newtons;
  /** Tension of all strings of the note together. */
  readonly unisonTension: Newtons;
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
}

/**
 * Analyses one note: a pure function of the note and the options, so that after an edit only that note is worked out anew.
 *
 * Throws: RangeError when a dimension of the string is not positive and finite.
 * Source: the pages of `core/strings` named by the fields.
 */
export function analyseNote(note: ScaleNote, options: AnalysisOptions = {}): NoteAnalysis {
  const strengthTable = options.strengthTable ?? A228_MINIMUM;
  const { string, frequency } = note;
  const tension = tensionOf(note);
  const coreDiameter = carryingDiameter(note);
  const linearDensity =
    string.kind === 'plain'
      ? plainLinearDensity({ diameter: string.diameter, density: string.steelDensity })
      : fullLinearDensity(string);
  const strength = breakShare({ tension, diameter: coreDiameter, strengthTable });
  return {
    note,
    key: note.key,
    tension,
    unisonTension: newtons(note.strings * tension),
    linearDensity,
    stress: wireStress({ tension, diameter: coreDiameter }),
    breakLoad: strength.breakLoad,
    breakShare: strength.share,
    strengthTable: strength.table,
    strengthRemark: strength.remark,
    isWithinStrengthTable: strength.isWithinTableRange,
    inharmonicity: inharmonicity({
      diameter: coreDiameter,
      speakingLength: string.speakingLength,
      tension,
      youngsModulus: string.youngsModulus ?? STEEL_YOUNGS_MODULUS,
    }),
    inharmonicityMethod: 'core formula',
    impedance: stringImpedance({ tension, linearDensity }),
  };

  function tensionOf({ string: one }: ScaleNote): Newtons {
    return one.kind === 'plain'
      ? stringTension({
          diameter: one.diameter,
          speakingLength: one.speakingLength,
          frequency,
          density: one.steelDensity,
        })
      : woundStringTension(one, frequency);
  }
}

/** Diameter of the wire that carries the tension: of a wound string its core. */
export function carryingDiameter(note: Pick<ScaleNote, 'string'>): Metres {
  return note.string.kind === 'plain' ? note.string.diameter : note.string.coreDiameter;
}
