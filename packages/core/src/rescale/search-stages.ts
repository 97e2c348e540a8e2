import type { SearchRules, SearchStage } from './schedule-search.ts';
import { PLAIN, WOUND } from './schedule-search.ts';
import type { StringCandidate } from './string-candidates.ts';
import type { RescaleRules, RescaleWeights, WholeScaleProblem } from './whole-scale-problem.ts';

/** What a bend with its middle at this note is worth: nothing at the ends, less where the count of strings changes. */
export function bendFactor(problem: Pick<WholeScaleProblem, 'notes' | 'weights'>, note: number): number {
  const { notes, weights } = problem;
  const [before, here, after] = [notes[note - 1], notes[note]!, notes[note + 1]];
  if (before === undefined || after === undefined) return 0;
  const { strings } = here.asFound;
  const isAlike = before.asFound.strings === strings && after.asFound.strings === strings;
  return isAlike ? 1 : weights.whereUnisonsDiffer;
}

/** What choosing one string at a note costs by itself. */
export function ownCost(
  candidate: Pick<StringCandidate, 'logTension' | 'isAsFound'>,
  asFoundLogTension: number,
  weights: RescaleWeights,
): number {
  const distance = candidate.logTension - asFoundLogTension;
  return weights.tensionFromFound * distance * distance + (candidate.isAsFound ? 0 : weights.changedNote);
}

/** The problem as columns of numbers for the search. */
export function searchStages(
  problem: WholeScaleProblem,
  candidates: readonly (readonly StringCandidate[])[],
  asFoundLogTensions: readonly number[],
  extra?: (note: number, candidate: StringCandidate) => number,
): SearchStage[] {
  const { weights } = problem;
  return problem.notes.map(({ asFound }, note): SearchStage => {
    const here = candidates[note]!;
    const count = here.length;
    const factor = bendFactor(problem, note);
    const [logTension, logInharmonicity, own] = [
      new Float64Array(count),
      new Float64Array(count),
      new Float64Array(count),
    ];
    const [kind, size] = [new Uint8Array(count), new Int32Array(count)];
    for (let index = 0; index < count; index += 1) {
      const candidate = here[index]!;
      logTension[index] = candidate.logTension;
      logInharmonicity[index] = candidate.logInharmonicity;
      own[index] = ownCost(candidate, asFoundLogTensions[note]!, weights) + (extra?.(note, candidate) ?? 0);
      kind[index] = candidate.string.kind === 'plain' ? PLAIN : WOUND;
      size[index] = Math.abs(candidate.size);
    }
    return {
      count,
      logTension,
      logInharmonicity,
      own,
      kind,
      size,
      strings: asFound.strings,
      beginsSection: note > 0 && problem.notes[note - 1]!.asFound.section !== asFound.section,
      bridge: asFound.bridge,
      tensionBend: factor * weights.tensionBend,
      inharmonicityBend: factor * weights.inharmonicityBend,
    };
  });
}

export function searchRules(rules: RescaleRules, weights: RescaleWeights): SearchRules {
  return {
    minimumRun: [rules.minimumRunPlain, rules.minimumRunCore],
    neverGrows: [rules.plainNeverGrows, rules.coresNeverGrow],
    sizeChange: weights.sizeChange,
    tiedString: weights.tiedString,
  };
}
