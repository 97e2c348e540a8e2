import type { PlainString, WoundString } from '../strings/index.ts';
import { breakLoad } from '../strings/index.ts';
import { type Newtons, newtons } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';
import type { SearchLoad } from './load-rooms.ts';
import { requireProblem, requireWeights } from './require-problem.ts';
import { emptyNoteClash, isUnder, loadClash, loadsClash, ruleClash, type ScaleClash } from './scale-clash.ts';
import {
  exactFigures,
  exactInharmonicity,
  exactTension,
  type ObjectiveParts,
  objectiveParts,
  type WeighedString,
  weighedSum,
} from './scale-objective.ts';
import { isFound } from './schedule-search.ts';
import { MOST_STEPS_BACK, scheduleWithinLoads } from './schedule-within-loads.ts';
import { searchRules, searchStages } from './search-stages.ts';
import { type NoteCandidates, type StringCandidate, stringCandidates } from './string-candidates.ts';
import type { LoadLimit, RescaleWeights, WholeScaleProblem } from './whole-scale-problem.ts';

/** One note of an answer. All figures are of one string. */
export interface ChosenString {
  readonly key: number;
  readonly string: PlainString | WoundString;
  readonly isAsFound: boolean;
  readonly tension: Newtons;
  readonly inharmonicity: number;
  readonly breakShare: number;
}

/** A load of the answer, with its limit where one was set. */
export interface AnsweredLoad {
  readonly of: LoadLimit['of'];
  readonly name: string | undefined;
  readonly load: Newtons;
  readonly highest: Newtons | undefined;
}

/** How far it is proved that nothing better exists. */
export interface ScaleProof {
  /** True: no schedule of the candidates costs less. False: one may, down to `lowerBound`. */
  readonly isOptimal: boolean;
  readonly lowerBound: number;
  /** Strings that were weighed, over all notes. */
  readonly candidates: number;
  /**
   * Largest difference between ln T and ln B as they were weighed and the exact figures of the chosen strings: the sum was
   * minimised with the first, `notes` carries the second.
   */
  readonly largestTensionError: number;
  readonly largestInharmonicityError: number;
}

export interface WholeScaleAnswer {
  readonly feasible: true;
  /** Bass to treble. */
  readonly notes: readonly ChosenString[];
  readonly objective: number;
  readonly parts: ObjectiveParts;
  readonly loads: readonly AnsweredLoad[];
  readonly proof: ScaleProof;
}

export interface NoWholeScale {
  readonly feasible: false;
  readonly clash: ScaleClash;
}

/** A problem with its candidates worked out: to solve it again under other weights at little cost. */
export interface PreparedScale {
  readonly problem: WholeScaleProblem;
  readonly gathered: readonly NoteCandidates[];
  /** ln T of what was found. */
  readonly asFoundLogTensions: readonly number[];
  /** Exact figures of strings that were chosen once, so that another answer need not work them out again. */
  readonly exact: WeakMap<StringCandidate, ChosenString>;
  /** Exact figures of the strings that were found, worked out when they are first asked for. */
  readonly foundFigures: () => readonly WeighedString[];
  /** Schedules that were found under other weights, a candidate a note: they bound what the next one may cost. */
  readonly known: (readonly number[])[];
}

/**
 * The best whole scale, plain and wound strings chosen together, under hard limits.
 *
 *     minimise  w_T·Σ c·(Δ² ln T)²  +  w_B·Σ c·(Δ² ln B)²  +  w_F·Σ (ln(T / T_found))²
 *               + w_N · changed notes  +  w_S · size changes  +  w_L · tied strings
 *
 * Δ² the second difference over three neighbours; c = 1 where all three have as many strings, else `whereUnisonsDiffer`.
 * Hard: tension and break share of every note, the diameter over the core, minimum runs, sizes that never grow, wound
 * strings below plain ones and only on bridges where they are allowed, pinned strings, loads.
 *
 * @param problem  see `WholeScaleProblem`; notes bass to treble, at least one
 * @returns the strings, the sum in its parts, loads and proof; or which limits clash, at which notes
 *
 * Method: `stringCandidates`, then the exact search of `cheapestSchedule`, within loads by `scheduleWithinLoads`.
 * What is proved: no other choice among the candidates has a smaller sum. Not proved: that a two-layer string between two
 * steps of tension, or a wire outside the catalogue, would not be better. See docs/explanation/rescaling.md.
 * Throws: RangeError for what makes no sense: no note, notes out of order, a negative weight, a load of no section.
 * Source: R. Bellman, Dynamic Programming, 1957 (the method; from memory). The sum is our own.
 * @example  bestWholeScale({ notes: rescaleNotes([{ key: 49, section: 'treble', bridge: 'long', strings: 3, frequency: hertz(440), string: { kind: 'plain', speakingLength: millimetres(400), diameter: millimetres(1) } }], { limits: COMMON_SHOP_POLICY.limits, tensionDown: 0.1, tensionUp: 0, breakMayMove: 0 }), catalogue: { plain: [0.9, 0.95, 1.05].map(millimetres), cores: [], windings: [] }, strengthTable: A228_MINIMUM, weights: COMMON_RESCALE_WEIGHTS, rules: { ...COMMON_RESCALE_RULES, minimumRunPlain: 1, offersAsFound: false } }).notes[0].tension  // ≈ 689.4 N
 */
export function bestWholeScale(
  problem: WholeScaleProblem,
  language: Language = english,
): WholeScaleAnswer | NoWholeScale {
  return bestPreparedScale(prepareScale(problem), problem.weights, language);
}

/** Works out what every note may choose from: the costly part, the same for all weights. */
export function prepareScale(problem: WholeScaleProblem): PreparedScale {
  requireProblem(problem);
  let found: readonly WeighedString[] | undefined;
  return {
    problem,
    gathered: problem.notes.map((note) => stringCandidates(problem, note)),
    asFoundLogTensions: problem.notes.map((note, index) =>
      Math.log(exactTension(problem, index, note.asFound.string)),
    ),
    exact: new WeakMap(),
    foundFigures: () => {
      found ??= exactFigures(
        problem,
        problem.notes.map(({ asFound }) => asFound.string),
      );
      return found;
    },
    known: [],
  };
}

/** `bestWholeScale` of a prepared problem, under its own weights or others. */
export function bestPreparedScale(
  prepared: PreparedScale,
  weights: RescaleWeights = prepared.problem.weights,
  language: Language = english,
): WholeScaleAnswer | NoWholeScale {
  requireWeights(weights);
  const problem = { ...prepared.problem, weights };
  const { gathered, asFoundLogTensions } = prepared;
  const empty = emptyNoteClash(problem, gathered, language);
  if (empty !== undefined) return { feasible: false, clash: empty };

  const candidates = gathered.map((note) => note.candidates);
  const stages = searchStages(problem, candidates, asFoundLogTensions);
  const rules = searchRules(problem.rules, weights);
  const loads = problem.rules.loads.map((limit) => searchLoad(problem, candidates, limit));
  const found = scheduleWithinLoads(stages, rules, loads, MOST_STEPS_BACK, prepared.known);
  if ('lightest' in found)
    return {
      feasible: false,
      clash: loadClash(problem, problem.rules.loads[found.limit]!, found.lightest, language),
    };
  if ('clashing' in found)
    return {
      feasible: false,
      clash: loadsClash(
        problem,
        found.clashing.map((limit) => problem.rules.loads[limit]!),
        found.isProven,
        language,
      ),
    };
  if (!isFound(found)) return { feasible: false, clash: ruleClash(problem, stages, rules, language) };

  prepared.known.push(found.choices);
  const chosen = found.choices.map((choice, note) => candidates[note]![choice]!);
  const parts = objectiveParts(problem, chosen, asFoundLogTensions);
  const notes = chosen.map((candidate, note) => {
    const known = prepared.exact.get(candidate) ?? exactly(problem, note, candidate);
    prepared.exact.set(candidate, known);
    return known;
  });
  return {
    feasible: true,
    notes,
    objective: weighedSum(parts, weights),
    parts,
    loads: answeredLoads(problem, notes),
    proof: {
      isOptimal: found.isProven,
      lowerBound: found.lowerBound,
      candidates: candidates.reduce((sum, here) => sum + here.length, 0),
      largestTensionError: largest(
        notes.map(({ tension }, note) => Math.log(tension) - chosen[note]!.logTension),
      ),
      largestInharmonicityError: largest(
        notes.map((note, index) => Math.log(note.inharmonicity) - chosen[index]!.logInharmonicity),
      ),
    },
  };
}

function exactly(
  problem: WholeScaleProblem,
  note: number,
  { string, isAsFound, wire }: StringCandidate,
): ChosenString {
  const tension = exactTension(problem, note, string);
  const strength = problem.strengthTable.strengthAt(wire).strength;
  return {
    key: problem.notes[note]!.asFound.key,
    string,
    isAsFound,
    tension,
    inharmonicity: exactInharmonicity(problem, string, tension),
    breakShare: tension / breakLoad({ diameter: wire, strength }),
  };
}

function searchLoad(
  problem: WholeScaleProblem,
  candidates: readonly (readonly StringCandidate[])[],
  limit: LoadLimit,
): SearchLoad {
  return {
    // Who asks for no more than was found has added the same strings up by another way.
    highest: limit.highest * (1 + ROUNDING),
    adds: problem.notes.map(({ asFound }, note) =>
      isUnder(limit, asFound)
        ? Float64Array.from(candidates[note]!, ({ tension }) => asFound.strings * tension)
        : undefined,
    ),
  };
}

const ROUNDING = 1e-9;

/** Loads of all strings, of each section and of each bridge. */
function answeredLoads(problem: WholeScaleProblem, notes: readonly ChosenString[]): AnsweredLoad[] {
  const names = (of: 'section' | 'bridge'): LoadLimit[] =>
    [...new Set(problem.notes.map(({ asFound }) => asFound[of]))].map((name) => ({
      of,
      name,
      highest: newtons(0),
    }));
  const groups: LoadLimit[] = [{ of: 'all', highest: newtons(0) }, ...names('section'), ...names('bridge')];
  return groups.map((group) => {
    const load = problem.notes.reduce(
      (sum, { asFound }, note) =>
        isUnder(group, asFound) ? sum + asFound.strings * notes[note]!.tension : sum,
      0,
    );
    const limit = problem.rules.loads.find(({ of, name }) => of === group.of && name === group.name);
    return { of: group.of, name: group.name, load: newtons(load), highest: limit?.highest };
  });
}

const largest = (values: readonly number[]): number =>
  values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
