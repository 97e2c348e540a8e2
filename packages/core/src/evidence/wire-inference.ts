import {
  inMicrometres,
  type Metres,
  metres,
  micrometres,
  requireNotNegative,
  requirePositive,
  requireWithin,
} from '../units/index.ts';
import { biasScatterGrid, type Cell, type WeighedCells, weighedCells } from './bias-scatter-grid.ts';
import { ScheduleModel } from './schedule-model.ts';
import { type WireReadingInMicrometres, WireReadingLikelihood } from './wire-reading-likelihood.ts';

/** One reading of a plain wire. */
export interface WireReading {
  readonly diameter: Metres;
  /** Stated for this reading; it only counts where it is worse than what the readings themselves show. */
  readonly standardUncertainty?: Metres;
  /** Read where nothing could wear the wire: at the coil, under the felt. It tells wear from a thinner size. */
  readonly isUnworn?: boolean;
}

/** A size stamped or written on the piano, at a note. */
export interface WireSizeStamp {
  /** Index of the note, 0 = first. */
  readonly note: number;
  /** Index into `diameters`. */
  readonly size: number;
  readonly says: 'starts here' | 'ends here';
}

/**
 * What is taken for granted before a reading is seen: plain data, for the shop to change. Common practice for a worn
 * piano and a micrometer, no source.
 *
 * The chances of runs, steps and slips hardly matter where notes are read. The mean of the bias does: where the sizes could
 * be shifted by a step it alone decides. It was set to -4 µm, between light and heavy wear of the simulated pianos. Where a
 * piano is unlike that the answer is worse: at a bias of +5 µm 92 and at -15 µm 72 to 79 of 100 notes came out right.
 */
export interface WireInferenceRules {
  /** Common difference of worn from new wire, with the zero of the instrument: normal. Negative is thinner. */
  readonly biasMean: Metres;
  readonly biasDeviation: Metres;
  /** Scatter of single readings about their size plus bias, with the wear of the note: log-normal. */
  readonly scatterMedian: Metres;
  readonly scatterLogDeviation: number;
  readonly slipShare: number;
  readonly slipDistance: Metres;
  readonly zeroUncertainty: Metres;
  /**
   * Chance that the size changes after a run of 1, 2, … notes, the last for every longer one. `minimumRun` overrules it.
   */
  readonly changeChance: readonly number[];
  /** Fewest notes that a size serves in a row; it does not bind the first and last run, which may go on outside. */
  readonly minimumRun: number;
  /** How many times likelier a schedule becomes by agreeing with a stamp. */
  readonly stampOdds: number;
}

export const COMMON_WIRE_RULES: WireInferenceRules = {
  biasMean: micrometres(-4),
  biasDeviation: micrometres(6),
  scatterMedian: micrometres(5.5),
  scatterLogDeviation: 0.35,
  slipShare: 0.05,
  slipDistance: micrometres(40),
  zeroUncertainty: micrometres(2),
  changeChance: [0.03, 0.12, 0.2],
  minimumRun: 1,
  stampOdds: 200,
};

export interface WireInferenceProblem {
  /** Bass to treble; for each note its readings, none where it has not been read. */
  readonly notes: readonly (readonly WireReading[])[];
  /** The sizes that the wire may have been, in any order. */
  readonly diameters: readonly Metres[];
  readonly stamps?: readonly WireSizeStamp[];
  readonly rules?: Partial<WireInferenceRules>;
}

export interface InferredWire {
  /** Index into `diameters` of the size in the schedule. */
  readonly choice: number;
  /** Probability that this is the size, 0 to 1. */
  readonly odds: number;
  /** Probability of every size, as in `diameters`; the sum is 1. */
  readonly oddsOfSizes: readonly number[];
  /** Mean of the readings less the chosen size and the common bias; undefined without a reading. */
  readonly difference: Metres | undefined;
}

export interface WireInference {
  /** Bass to treble. Their choices make a schedule that never grows towards the treble. */
  readonly notes: readonly InferredWire[];
  /** The single most probable schedule as a whole, at the most probable bias; index into `diameters` for each note. */
  readonly mostProbable: readonly number[];
  /** Common difference of the readings from new wire. */
  readonly bias: InferredQuantity;
  /** Standard deviation of one reading about its size and the bias. */
  readonly scatter: InferredQuantity;
  /** Notes expected wrong in the schedule: the sum of 1 − odds. */
  readonly notesExpectedWrong: number;
  /** ln of the probability of all readings under this list of sizes: to weigh one list against another. */
  readonly logEvidence: number;
  /** Set when the sizes could all be one or more steps thicker or thinner with another bias, and the readings hardly tell. */
  readonly shiftDoubt: ShiftDoubt | undefined;
}

export interface InferredQuantity {
  readonly value: Metres;
  readonly standardUncertainty: Metres;
  /** The middle 95 %. */
  readonly low: Metres;
  readonly high: Metres;
}

/** The other explanation of the same readings: a different bias, and sizes a step or more thicker or thinner. */
export interface ShiftDoubt {
  /** Probability of the biases further than half the smallest step from the best one. */
  readonly probability: number;
  readonly bias: Metres;
}

/**
 * The most probable schedule of plain wire sizes from worn, scattered readings, with the odds of every note.
 *
 *     P(sizes, b, σ | readings) ∝ P(sizes) · P(b) · P(σ) · Π p(yᵢ | d(sizeᵢ), b, σ)
 *
 * Sizes never grow towards the treble and come in runs (`ScheduleModel`); a reading is its size plus a common bias b, with
 * scatter σ, or a slip (`WireReadingLikelihood`). Bias and scatter are not known and are summed out over a grid as fine
 * as the readings ask for (`biasScatterGrid`); the part of the grid that matters is found by spreading from the best cells until a cell is e⁻⁹ of the
 * best. The choice is the possible schedule with the most notes expected right.
 *
 * A bias of a whole step cannot be told from a size by readings of worn wire alone: all sizes half a number thinner fit as
 * well with a bias a step higher. What decides then is the prior of the bias, steps that differ along the list, and
 * readings of unworn wire or stamps, which are evidence here. `shiftDoubt` says when the doubt is real.
 *
 * @param problem.notes      n notes, bass to treble, each with its readings
 * @param problem.diameters  K sizes in any order, each > 0; alike ones share their odds and the first is chosen
 * @returns see `WireInference`; without any reading or stamp the odds are those of the rules alone
 *
 * Holds for: plain strings of one compass, or the cores of one. Not across a break where the size may grow again.
 * Error: odds are as good as the rules; measured calibration in bench/evidence.bench.ts.
 * Throws: RangeError when there is no note or no size, or a diameter is not > 0.
 * Source: hidden Markov model after Rabiner 1989 (see `ScheduleModel`); marginal odds and priors as in JCGM 101:2008, 6;
 * choice by expected accuracy: common practice.
 * @example inferWireSizes({ notes: [[{ diameter: millimetres(0.822) }], [], [{ diameter: millimetres(0.797) }]], diameters: [millimetres(0.8), millimetres(0.825)] }).notes.map((note) => note.choice)  // = [1,0,0]
 */
export function inferWireSizes(problem: WireInferenceProblem): WireInference {
  const { likelihood, model, order, cells } = preparedInference(problem);
  const { sizes, notes } = model;
  const posterior = new Float64Array(notes * sizes);
  for (const cell of cells.kept) {
    const table = likelihood.fill(cell.bias, cell.scatter);
    model.logEvidence(table);
    model.addPosteriors(table, cell.weight, posterior);
  }
  const ranks = model.mostNotesRight(posterior);
  const bestTable = likelihood.fill(cells.best.bias, cells.best.scatter);
  const mostProbable = model.mostProbable(bestTable).ranks.map((rank) => order[rank]![0]!);
  const halfStep = smallestStep(problem.diameters) / 2;
  // Where the bias may lie a whole step away, its mean would be a bias that nobody believes: take the nearest hill's.
  const isNearBest = (cell: Cell) => Math.abs(cell.bias - cells.best.bias) <= halfStep;
  const bias = inferredQuantity(
    cells.kept.map((cell) => [cell.bias, cell.weight]),
    cells.kept.filter(isNearBest).map((cell) => [cell.bias, cell.weight]),
  );

  const inferred = ranks.map((rank, note): InferredWire => {
    const oddsOfSizes = new Array<number>(problem.diameters.length).fill(0);
    for (let other = 0; other < sizes; other += 1)
      for (const size of order[other]!)
        oddsOfSizes[size] = posterior[note * sizes + other]! / order[other]!.length;
    const choice = order[rank]![0]!;
    const readings = problem.notes[note]!;
    const mean = readings.reduce((sum, reading) => sum + reading.diameter, 0) / readings.length;
    return {
      choice,
      odds: Math.min(1, posterior[note * sizes + rank]!),
      oddsOfSizes,
      difference:
        readings.length === 0
          ? undefined
          : micrometres((mean - problem.diameters[choice]!) * 1e6 - inMicrometres(bias.value)),
    };
  });
  return {
    notes: inferred,
    mostProbable,
    bias,
    scatter: inferredQuantity(cells.kept.map((cell) => [cell.scatter, cell.weight])),
    notesExpectedWrong: inferred.reduce((sum, note) => sum + 1 - note.odds, 0),
    logEvidence: cells.logEvidence,
    shiftDoubt: shiftDoubtOf(cells.kept.filter((cell) => !isNearBest(cell))),
  };
}

/** A problem in the terms of the model. */
export interface PreparedInference {
  readonly likelihood: WireReadingLikelihood;
  /** Readings by note, and the likelihood of any others under the same rules. */
  readonly readings: readonly (readonly WireReadingInMicrometres[])[];
  readonly likelihoodOf: (
    readings: readonly (readonly WireReadingInMicrometres[])[],
  ) => WireReadingLikelihood;
  readonly model: ScheduleModel;
  /** For each rank, thickest first, the indices into `diameters` that it stands for. */
  readonly order: readonly (readonly number[])[];
  /** Diameter of each rank, micrometres. */
  readonly diametersThickToThin: readonly number[];
  readonly rules: WireInferenceRules;
  readonly cells: WeighedCells;
}

/** Checks a problem, puts it in the terms of the model, and weighs the biases and scatters its readings may have. */
export function preparedInference(problem: WireInferenceProblem): PreparedInference {
  const task = 'the odds of wire sizes';
  const rules = { ...COMMON_WIRE_RULES, ...problem.rules };
  requirePositive(problem.notes.length, 'the number of notes', task);
  requirePositive(problem.diameters.length, 'the number of sizes', task);
  for (const diameter of problem.diameters) requirePositive(diameter, 'the diameter of a size', task);
  requireNotNegative(rules.biasDeviation, 'the deviation of the bias', task);
  requirePositive(rules.scatterMedian, 'the scatter', task);
  requireNotNegative(rules.scatterLogDeviation, 'the deviation of the scatter', task);
  requireWithin(rules.slipShare, 1e-6, 0.5, 'the share of slips', task);
  requirePositive(rules.slipDistance, 'the distance of slips', task);
  requirePositive(rules.minimumRun, 'the minimum run', task);

  const thickToThin = [...new Set(problem.diameters)].sort((a, b) => b - a);
  const order = thickToThin.map((diameter) =>
    problem.diameters.flatMap((other, index) => (other === diameter ? [index] : [])),
  );
  const rankOf = (size: number) => thickToThin.indexOf(problem.diameters[size]!);
  const readings = problem.notes.map((ofNote) =>
    ofNote.map(
      ({ diameter, standardUncertainty = micrometres(0), isUnworn = false }): WireReadingInMicrometres => ({
        diameter: inMicrometres(requirePositive(diameter, 'the diameter of a reading', task) as Metres),
        standardUncertainty: inMicrometres(
          requireNotNegative(standardUncertainty, 'the uncertainty of a reading', task) as Metres,
        ),
        isUnworn,
      }),
    ),
  );
  const model = new ScheduleModel({
    sizes: thickToThin.length,
    notes: problem.notes.length,
    changeChance: chancesWithMinimumRun(rules),
    stamps: (problem.stamps ?? []).map(({ note, size, says }) => ({
      note,
      rank: rankOf(requireWithin(size, 0, problem.diameters.length - 1, 'the size of a stamp', task)),
      says,
    })),
    stampOdds: rules.stampOdds,
  });
  const diametersThickToThin = thickToThin.map(inMicrometres);
  const likelihoodOf: PreparedInference['likelihoodOf'] = (some) =>
    new WireReadingLikelihood(some, diametersThickToThin, {
      slipShare: rules.slipShare,
      slipDistance: inMicrometres(rules.slipDistance),
      zeroUncertainty: inMicrometres(rules.zeroUncertainty),
    });
  const likelihood = likelihoodOf(readings);
  const readingCount = readings.reduce((sum, ofNote) => sum + ofNote.length, 0);
  const cells = weighedCells({
    grid: biasScatterGrid({
      biasMean: inMicrometres(rules.biasMean),
      biasDeviation: inMicrometres(rules.biasDeviation),
      scatterMedian: inMicrometres(rules.scatterMedian),
      scatterLogDeviation: rules.scatterLogDeviation,
      readingCount,
    }),
    logEvidence: (bias, scatter) => model.logEvidence(likelihood.fill(bias, scatter)),
  });
  return { likelihood, readings, likelihoodOf, model, order, diametersThickToThin, rules, cells };
}

/** No change before the minimum run is full; from there on as the rules say. */
function chancesWithMinimumRun({ changeChance, minimumRun }: WireInferenceRules): number[] {
  const length = Math.max(changeChance.length, Math.floor(minimumRun));
  return Array.from({ length }, (_, index) =>
    index + 1 < minimumRun ? 0 : changeChance[Math.min(index, changeChance.length - 1)]!,
  );
}

type WeighedPoint = readonly [value: number, weight: number];

const weighedMean = (points: readonly WeighedPoint[]): number =>
  points.reduce((sum, [value, weight]) => sum + value * weight, 0) /
  points.reduce((sum, [, weight]) => sum + weight, 0);

/** Mean of the main points, and the spread about it and the middle 95 % of all points; weights make 1. Micrometres. */
function inferredQuantity(
  points: readonly WeighedPoint[],
  mainPoints: readonly WeighedPoint[] = points,
): InferredQuantity {
  const sorted = [...points].sort((a, b) => a[0] - b[0]);
  const value = weighedMean(mainPoints);
  const variance = sorted.reduce((sum, [other, weight]) => sum + weight * (other - value) ** 2, 0);
  const quantile = (share: number) => {
    let sum = 0;
    for (const [other, weight] of sorted) {
      sum += weight;
      if (sum >= share) return other;
    }
    return sorted[sorted.length - 1]![0];
  };
  return {
    value: micrometres(value),
    standardUncertainty: micrometres(Math.sqrt(variance)),
    low: micrometres(Math.min(value, quantile(0.025))),
    high: micrometres(Math.max(value, quantile(0.975))),
  };
}

/** Smallest step between two sizes, micrometres; without an end when there is one size. */
function smallestStep(diameters: readonly Metres[]): number {
  const sorted = [...new Set(diameters)].sort((a, b) => a - b);
  return Math.min(
    ...sorted.slice(1).map((diameter, index) => inMicrometres(metres(diameter - sorted[index]!))),
  );
}

/** A doubt that is worth a sentence: one chance in fifty. */
const REAL_DOUBT = 0.02;

function shiftDoubtOf(others: readonly Cell[]): ShiftDoubt | undefined {
  const probability = others.reduce((sum, cell) => sum + cell.weight, 0);
  if (probability < REAL_DOUBT) return undefined;
  return { probability, bias: micrometres(weighedMean(others.map((cell) => [cell.bias, cell.weight]))) };
}
