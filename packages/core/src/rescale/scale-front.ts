import type { ScaleNote } from '../scale/index.ts';
import type { PlainString, WoundString } from '../strings/index.ts';
import { type Metres, metres, type Newtons, newtons, requireWithin } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';
import type { ScaleClash } from './scale-clash.ts';
import { bestPreparedScale, type PreparedScale, type WholeScaleAnswer } from './whole-scale.ts';
import type { RescaleWeights, WholeScaleProblem } from './whole-scale-problem.ts';

/** One note whose string is another than was found. */
export interface StringChange {
  readonly key: number;
  readonly from: PlainString | WoundString;
  readonly to: PlainString | WoundString;
}

/** What an answer needs of one size of plain wire. */
export interface PlainWireNeed {
  readonly diameter: Metres;
  readonly strings: number;
  /** Sum of the speaking lengths alone: what `cutLength` adds for fronts, backs and coils comes on top. */
  readonly speakingLength: Metres;
}

/** One answer on the way from what was found to what is smooth. */
export interface FrontAnswer {
  /** 0 = as it was, tidied; 1 = as smooth as it goes; 1/2 = by the weights of the problem as they are. */
  readonly place: number;
  readonly answer: WholeScaleAnswer;
  /** Bends of ln T and ln B by the weights of the problem: lower is smoother. */
  readonly roughness: number;
  /** Distance from what was found by the weights of the problem. */
  readonly disturbance: number;
  /** Size changes and tied strings by the weights of the problem. */
  readonly untidiness: number;
  readonly changes: readonly StringChange[];
  /** Load of all strings, less what was found. */
  readonly loadChange: Newtons;
  readonly plainWire: readonly PlainWireNeed[];
  /** Wound strings to order, all of them and those that are not a copy of what was found. */
  readonly woundStrings: number;
  readonly newWoundStrings: number;
}

export interface ScaleFront {
  readonly feasible: true;
  /** From the one nearest to what was found to the smoothest; no two alike, none worse than another in every respect. */
  readonly answers: readonly FrontAnswer[];
  /** Scales that were worked out on the way. */
  readonly solved: number;
}

export interface NoScaleFront {
  readonly feasible: false;
  readonly clash: ScaleClash;
}

/** How far the work has come. */
export interface FrontProgress {
  readonly solved: number;
  readonly of: number;
  /** Answers so far, in order of their place; duplicates are still among them. */
  readonly latest: FrontAnswer | undefined;
}

/** Places of the sweep, the ends first so that the range is known early; on a scale where each step counts alike. */
const FIRST_PLACES = [0, 1, ...[-4.5, -3, -1.5, 0, 1.5, 3, 4.5].map((u) => 1 / (1 + Math.exp(-u)))];
const FURTHER_PLACES = [-6, -3.75, -2.25, -0.75, 0.75, 2.25, 3.75, 6].map((u) => 1 / (1 + Math.exp(-u)));
const FEWEST_ANSWERS = 5;
/** Next to nothing: of the scales nearest to what was found, which cost alike, the smoothest is wanted and not any. */
const LEAST_PLACE = 1e-6;

/**
 * The weights of a place: smoothness counts 2p times, nearness to what was found 2(1 − p) times as much as in the problem.
 * @example  weightsAtPlace(COMMON_RESCALE_WEIGHTS, 0.5).tensionBend  // = 1
 */
export function weightsAtPlace(weights: RescaleWeights, place: number): RescaleWeights {
  requireWithin(place, 0, 1, 'the place between as found and smooth', 'the weights of an answer');
  return {
    ...weights,
    tensionBend: 2 * place * weights.tensionBend,
    inharmonicityBend: 2 * place * weights.inharmonicityBend,
    tensionFromFound: 2 * (1 - place) * weights.tensionFromFound,
    changedNote: 2 * (1 - place) * weights.changedNote,
  };
}

/**
 * Five to nine scales from "as it was, tidied" to "as smooth as it goes", side by side.
 *
 * A generator, for it takes seconds: each step works out one scale and yields how far it is; whoever stops asking has
 * cancelled it. Every answer is an optimum under the weights of its place (see its proof), so none can be bettered in one
 * respect without losing in another, as far as weights can find them: answers in a dent of the curve are not found.
 *
 * @param prepared  see `prepareScale`
 * @returns answers in order, fewer than five where the catalogue has no more that differ; or the clash
 *
 * Throws: as `bestWholeScale`.
 * Source: sweeping weights over a sum of aims is common practice in planning, no source.
 */
export function* scaleFront(
  prepared: PreparedScale,
  language: Language = english,
): Generator<FrontProgress, ScaleFront | NoScaleFront, void> {
  let answers: FrontAnswer[] = [];
  let solved = 0;
  const of = FIRST_PLACES.length;
  for (const place of [...FIRST_PLACES, ...FURTHER_PLACES]) {
    if (solved >= of && answers.length >= FEWEST_ANSWERS) break;
    const weights = weightsAtPlace(prepared.problem.weights, Math.max(place, LEAST_PLACE));
    const found = bestPreparedScale(prepared, weights, language);
    solved += 1;
    if (!found.feasible) return found;
    const latest = frontAnswer(prepared, place, found);
    answers = withoutWorse([...answers, latest]);
    yield { solved, of: Math.max(of, solved), latest };
  }
  return { feasible: true, answers: answers.sort((a, b) => a.place - b.place), solved };
}

/** The same in one go. */
export function wholeScaleFront(prepared: PreparedScale): ScaleFront | NoScaleFront {
  const steps = scaleFront(prepared);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function frontAnswer(
  { problem, asFoundLogTensions }: PreparedScale,
  place: number,
  answer: WholeScaleAnswer,
): FrontAnswer {
  const { weights, notes } = problem;
  const { parts } = answer;
  const changes = answer.notes.flatMap(({ key, string, isAsFound }, note) =>
    isAsFound ? [] : [{ key, from: notes[note]!.asFound.string, to: string }],
  );
  const loadFound = notes.reduce(
    (sum, { asFound }, note) => sum + asFound.strings * Math.exp(asFoundLogTensions[note]!),
    0,
  );
  const wound = answer.notes.map(({ string, isAsFound }, note) =>
    string.kind === 'wound' ? { strings: notes[note]!.asFound.strings, isAsFound } : undefined,
  );
  const countOf = (isCounted: (one: { isAsFound: boolean }) => boolean): number =>
    wound.reduce((sum, one) => sum + (one !== undefined && isCounted(one) ? one.strings : 0), 0);
  return {
    place,
    answer,
    roughness: weights.tensionBend * parts.tensionBend + weights.inharmonicityBend * parts.inharmonicityBend,
    disturbance: weights.tensionFromFound * parts.tensionFromFound + weights.changedNote * parts.changedNotes,
    untidiness: weights.sizeChange * parts.sizeChanges + weights.tiedString * parts.tiedStrings,
    changes,
    loadChange: newtons(answer.loads.find(({ of }) => of === 'all')!.load - loadFound),
    plainWire: plainWireNeed(problem, answer),
    woundStrings: countOf(() => true),
    newWoundStrings: countOf(({ isAsFound }) => !isAsFound),
  };
}

/** Plain wire by size, thick to thin. */
function plainWireNeed({ notes }: WholeScaleProblem, answer: WholeScaleAnswer): PlainWireNeed[] {
  const bySize = new Map<number, PlainWireNeed>();
  answer.notes.forEach(({ string }, note) => {
    if (string.kind !== 'plain') return;
    const { strings }: ScaleNote = notes[note]!.asFound;
    // A size in inches and the same in millimetres are one: a tenth of a micrometre.
    const size = Math.round(string.diameter * 1e7);
    const before = bySize.get(size);
    bySize.set(size, {
      diameter: before?.diameter ?? string.diameter,
      strings: (before?.strings ?? 0) + strings,
      speakingLength: metres((before?.speakingLength ?? 0) + strings * string.speakingLength),
    });
  });
  return [...bySize.values()].sort((a, b) => b.diameter - a.diameter);
}

/** Each scale once, and none that another is no worse than in every respect. */
function withoutWorse(answers: readonly FrontAnswer[]): FrontAnswer[] {
  const aims = ({ roughness, disturbance, untidiness }: FrontAnswer) => [roughness, disturbance, untidiness];
  const isNoWorse = (one: FrontAnswer, other: FrontAnswer): boolean =>
    aims(one).every((aim, index) => aim <= aims(other)[index]! + 1e-12);
  return answers.filter(
    (answer, index) =>
      !answers.some(
        (other, at) => at !== index && isNoWorse(other, answer) && (at < index || !isNoWorse(answer, other)),
      ),
  );
}
