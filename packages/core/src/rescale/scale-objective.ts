import {
  inharmonicity,
  type PlainString,
  stringTension,
  type WoundString,
  woundTensionAtPitch,
} from '../strings/index.ts';
import { STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import type { Newtons } from '../units/index.ts';
import { bendFactor } from './search-stages.ts';
import { isSameString, type StringCandidate } from './string-candidates.ts';
import type { RescaleWeights, WholeScaleProblem } from './whole-scale-problem.ts';
import { exactInharmonicityOfEnds } from './winding-layout.ts';

/** The sum in its parts, each without its weight, so that two answers can be laid side by side. */
export interface ObjectiveParts {
  /** Σ of squared bends of ln T and of ln B, counted less where the number of strings changes. */
  readonly tensionBend: number;
  readonly inharmonicityBend: number;
  /** Σ of squared distances of ln T from what was found. */
  readonly tensionFromFound: number;
  readonly changedNotes: number;
  readonly sizeChanges: number;
  readonly tiedStrings: number;
}

/**
 * The sum that `bestWholeScale` minimises, in its parts, for any choice of strings with exact figures: to weigh another
 * person's scale, or the one that was found, by the same rule. Limits are not looked at.
 */
export function scaleObjective(
  problem: WholeScaleProblem,
  strings: readonly (PlainString | WoundString)[],
): { readonly objective: number; readonly parts: ObjectiveParts } {
  const asFound = problem.notes.map((note, index) =>
    Math.log(exactTension(problem, index, note.asFound.string)),
  );
  const parts = objectiveParts(problem, exactFigures(problem, strings), asFound);
  return { objective: weighedSum(parts, problem.weights), parts };
}

/** Strings with the exact figures that the sum weighs them by, one a note. */
export function exactFigures(
  problem: WholeScaleProblem,
  strings: readonly (PlainString | WoundString)[],
): WeighedString[] {
  return strings.map((string, note) => {
    const tension = exactTension(problem, note, string);
    return {
      string,
      isAsFound: isSameString(string, problem.notes[note]!.asFound.string),
      logTension: Math.log(tension),
      logInharmonicity: Math.log(exactInharmonicity(problem, string, tension)),
    };
  });
}

/** Adds up parts by their weights. */
export function weighedSum(parts: ObjectiveParts, weights: RescaleWeights): number {
  return (
    weights.tensionBend * parts.tensionBend +
    weights.inharmonicityBend * parts.inharmonicityBend +
    weights.tensionFromFound * parts.tensionFromFound +
    weights.changedNote * parts.changedNotes +
    weights.sizeChange * parts.sizeChanges +
    weights.tiedString * parts.tiedStrings
  );
}

/** What the sum has to know of a string. */
export type WeighedString = Pick<StringCandidate, 'string' | 'isAsFound' | 'logTension' | 'logInharmonicity'>;

/** The parts of the sum as the statement has them, apart from how the search adds them up. */
export function objectiveParts(
  problem: Pick<WholeScaleProblem, 'notes' | 'weights'>,
  chosen: readonly WeighedString[],
  asFoundLogTensions: readonly number[],
): ObjectiveParts {
  let [tensionBend, inharmonicityBend, tensionFromFound] = [0, 0, 0];
  let [changedNotes, sizeChanges, tiedStrings] = [0, 0, 0];
  let run = 0; // plain strings of one size so far, within the section
  chosen.forEach((here, note) => {
    const [before, after] = [chosen[note - 1], chosen[note + 1]];
    const factor = bendFactor(problem, note);
    if (before !== undefined && after !== undefined) {
      tensionBend += factor * (before.logTension - 2 * here.logTension + after.logTension) ** 2;
      inharmonicityBend +=
        factor * (before.logInharmonicity - 2 * here.logInharmonicity + after.logInharmonicity) ** 2;
    }
    tensionFromFound += (here.logTension - asFoundLogTensions[note]!) ** 2;
    if (!here.isAsFound) changedNotes += 1;
    const isSameKind = before?.string.kind === here.string.kind;
    const isSameSize = isSameKind && isOneSize(before!.string, here.string);
    if (isSameKind && !isSameSize) sizeChanges += 1;
    const { section, strings } = problem.notes[note]!.asFound;
    const isSameSection = problem.notes[note - 1]?.asFound.section === section;
    if (!(isSameSize && isSameSection)) {
      tiedStrings += run % 2;
      run = 0;
    }
    run += here.string.kind === 'plain' ? strings : 0;
  });
  tiedStrings += run % 2;
  return { tensionBend, inharmonicityBend, tensionFromFound, changedNotes, sizeChanges, tiedStrings };
}

function isOneSize(a: PlainString | WoundString, b: PlainString | WoundString): boolean {
  const wire = (string: PlainString | WoundString) =>
    string.kind === 'plain' ? string.diameter : string.coreDiameter;
  // A tenth of a micrometre, as candidates are told apart.
  return Math.round(wire(a) * 1e7) === Math.round(wire(b) * 1e7);
}

/** Tension of the flexible string at pitch. */
export function exactTension(
  problem: WholeScaleProblem,
  note: number,
  string: PlainString | WoundString,
): Newtons {
  const { frequency } = problem.notes[note]!.asFound;
  if (string.kind === 'wound') return woundTensionAtPitch({ string, frequency, stiffness: 'ignored' }).value;
  const { diameter, speakingLength, steelDensity: density } = string;
  return stringTension({ diameter, speakingLength, frequency, density });
}

/** B of one string: the core formula, and of a wound string what its bare ends add by the exact modes. */
export function exactInharmonicity(
  problem: WholeScaleProblem,
  string: PlainString | WoundString,
  tension: Newtons,
): number {
  const diameter = string.kind === 'plain' ? string.diameter : string.coreDiameter;
  const youngsModulus = string.youngsModulus ?? problem.youngsModulusAt?.(diameter) ?? STEEL_YOUNGS_MODULUS;
  const { speakingLength } = string;
  const byCore = inharmonicity({ diameter, speakingLength, tension, youngsModulus });
  return string.kind === 'plain'
    ? byCore
    : byCore + exactInharmonicityOfEnds({ ...string, youngsModulus }, tension);
}
