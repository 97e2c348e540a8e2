import {
  type Hertz,
  type KilogramsPerCubicMetre,
  type Metres,
  type Newtons,
  newtons,
  type Pascals,
  requireNotNegative,
  requirePositive,
} from '../units/index.ts';

/** One note of a plain compass whose size is to be chosen. */
export interface GaugeNote {
  readonly speakingLength: Metres;
  readonly frequency: Hertz;
  /** Tension that this note should stay near; undefined where none is wanted. */
  readonly targetTension?: Newtons | undefined;
  readonly lowestTension: Newtons;
  readonly highestTension: Newtons;
  /** Share of the break load, 0 to 1. */
  readonly lowestBreakShare: number;
  readonly highestBreakShare: number;
  /** Index into `diameters` of a size that the user has pinned here. */
  readonly pinned?: number | undefined;
}

export interface PlainGaugeProblem {
  /** Bass to treble. */
  readonly notes: readonly GaugeNote[];
  /** The sizes to choose from, in any order. */
  readonly diameters: readonly Metres[];
  readonly strengthAt: (diameter: Metres) => Pascals;
  readonly density: KilogramsPerCubicMetre;
  /** λ: what one size change costs. */
  readonly sizeChangeWeight: number;
  /** μ: weight of the distance from the target tensions. */
  readonly targetWeight: number;
  /** Fewest notes that one size must serve in a row; 1 when it does not matter. */
  readonly minimumRun?: number;
}

export type PlainGaugeAnswer =
  | {
      readonly feasible: true;
      readonly objective: number;
      /** Index into `diameters` for each note, bass to treble. */
      readonly choices: readonly number[];
      readonly tensions: readonly Newtons[];
      readonly sizeChanges: number;
    }
  | {
      readonly feasible: false;
      /** One sentence: which limits clash, at which notes. */
      readonly reason: string;
      /** Index of the first note at which no choice is left. */
      readonly note: number;
    };

/**
 * The best plain sizes of a compass under hard limits, exactly.
 *
 *     minimise  Σ (ln Tᵢ₋₁ − 2 ln Tᵢ + ln Tᵢ₊₁)²  +  λ · (size changes)  +  μ · Σ (ln(Tᵢ / Tᵢ*))²
 *
 * subject to sizes that never grow towards the treble, tension and break share within the limits of each note, and
 * runs of at least `minimumRun` notes. Tᵢ = π·ρ·(d·L·f)².
 *
 * Method: dynamic programming over pairs of neighbouring sizes, since a second difference ties three notes together.
 * A run's length only needs to be kept while the pair is alike, so the states are K·(K−1)/2 unlike pairs and K·r
 * alike ones. Work grows as n·K³/6, K sizes, n notes. Exact: every feasible choice is a path, and every path is weighed.
 *
 * @param problem.notes      bass to treble, at least one
 * @param problem.diameters  K sizes [m], each > 0
 * @returns the optimum, or the clash that leaves none
 *
 * Throws: RangeError when there is no note or no size, or a length, frequency, diameter or density is not > 0.
 * Source: R. Bellman, *Dynamic Programming*, 1957 (the method; from memory). The sum itself is our own.
 * @example  bestPlainGauges({ notes: [400, 380, 360].map((length, index) => ({ speakingLength: millimetres(length), frequency: hertz(440 * 2 ** (index / 12)), lowestTension: newtons(500), highestTension: newtons(900), lowestBreakShare: 0.2, highestBreakShare: 0.7 })), diameters: [0.9, 0.95, 1].map(millimetres), strengthAt: (diameter) => A228_MINIMUM.strengthAt(diameter).strength, density: STEEL_DENSITY, sizeChangeWeight: 0.01, targetWeight: 0 }).choices  // = [2,2,2]
 */
export function bestPlainGauges(problem: PlainGaugeProblem): PlainGaugeAnswer {
  const { notes, diameters, sizeChangeWeight, targetWeight, minimumRun = 1 } = problem;
  const task = 'the best plain sizes';
  requirePositive(notes.length, 'the number of notes', task);
  requirePositive(diameters.length, 'the number of sizes', task);
  requireNotNegative(sizeChangeWeight, 'the weight of a size change', task);
  requireNotNegative(targetWeight, 'the weight of the target', task);
  requirePositive(minimumRun, 'the minimum run', task);

  // Thickest first, so that "never grows towards the treble" reads: the index never falls.
  const order = diameters.map((_, index) => index).sort((a, b) => diameters[b]! - diameters[a]! || a - b);
  const table = tensionTable(problem, order);
  const search = new GaugeSearch(table, { sizeChangeWeight, minimumRun });
  const ranks = search.best();
  if (typeof ranks === 'number') {
    return { feasible: false, note: ranks, reason: clash(problem, table, ranks) };
  }
  const choices = ranks.map((rank) => order[rank]!);
  const tensions = ranks.map((rank, note) => newtons(Math.exp(table.logTension[note]![rank]!)));
  const sizeChanges = ranks.filter((rank, note) => note > 0 && rank !== ranks[note - 1]).length;
  return { feasible: true, objective: gaugeObjective(problem, choices), choices, tensions, sizeChanges };
}

/**
 * The sum that `bestPlainGauges` minimises, for any choice of sizes: to weigh another person's scale by the same rule.
 * Limits are not looked at.
 */
export function gaugeObjective(
  problem: Pick<PlainGaugeProblem, 'notes' | 'diameters' | 'density' | 'sizeChangeWeight' | 'targetWeight'>,
  choices: readonly number[],
): number {
  const logs = choices.map((choice, note) => Math.log(tensionOf(problem, note, choice)));
  let sum = 0;
  for (let note = 1; note + 1 < logs.length; note += 1)
    sum += (logs[note - 1]! - 2 * logs[note]! + logs[note + 1]!) ** 2;
  for (let note = 0; note < logs.length; note += 1) {
    if (note > 0 && problem.diameters[choices[note]!] !== problem.diameters[choices[note - 1]!])
      sum += problem.sizeChangeWeight;
    const { targetTension } = problem.notes[note]!;
    if (targetTension !== undefined)
      sum += problem.targetWeight * (logs[note]! - Math.log(targetTension)) ** 2;
  }
  return sum;
}

interface TensionTable {
  /** [note][rank], rank 0 the thickest size. */
  readonly logTension: readonly Float64Array[];
  /** Cost of the choice by itself; Infinity where a limit forbids it. */
  readonly ownCost: readonly Float64Array[];
}

function tensionOf(
  problem: Pick<PlainGaugeProblem, 'notes' | 'diameters' | 'density'>,
  note: number,
  choice: number,
): number {
  const { speakingLength, frequency } = problem.notes[note]!;
  const diameter = problem.diameters[choice]!;
  return Math.PI * problem.density * (diameter * speakingLength * frequency) ** 2;
}

function tensionTable(problem: PlainGaugeProblem, order: readonly number[]): TensionTable {
  const { notes, diameters, targetWeight } = problem;
  const task = 'the best plain sizes';
  requirePositive(problem.density, 'density', task);
  const breakLoads = order.map((choice) => {
    const diameter = diameters[choice]!;
    requirePositive(diameter, 'diameter', task);
    return (Math.PI / 4) * diameter ** 2 * problem.strengthAt(diameter);
  });
  const logTension: Float64Array[] = [];
  const ownCost: Float64Array[] = [];
  notes.forEach((note, index) => {
    requirePositive(note.speakingLength, `speaking length of note ${index + 1}`, task);
    requirePositive(note.frequency, `frequency of note ${index + 1}`, task);
    const logs = new Float64Array(order.length);
    const costs = new Float64Array(order.length);
    order.forEach((choice, rank) => {
      const tension = tensionOf(problem, index, choice);
      const breakShare = tension / breakLoads[rank]!;
      logs[rank] = Math.log(tension);
      const isAllowed =
        tension >= note.lowestTension &&
        tension <= note.highestTension &&
        breakShare >= note.lowestBreakShare &&
        breakShare <= note.highestBreakShare &&
        (note.pinned === undefined || note.pinned === choice);
      const distance = note.targetTension === undefined ? 0 : logs[rank]! - Math.log(note.targetTension);
      costs[rank] = isAllowed ? targetWeight * distance ** 2 : Number.POSITIVE_INFINITY;
    });
    logTension.push(logs);
    ownCost.push(costs);
  });
  return { logTension, ownCost };
}

/** The dynamic programme. A state is the pair (size of the note before, size of this note) and how long the run is. */
class GaugeSearch {
  private readonly sizes: number;
  private readonly runs: number;
  constructor(
    private readonly table: TensionTable,
    private readonly rules: { sizeChangeWeight: number; minimumRun: number },
  ) {
    this.sizes = table.ownCost[0]!.length;
    this.runs = Math.max(1, Math.floor(rules.minimumRun));
  }

  /** State (before, rank, run): run counts up to `runs` and stays there. */
  private state(before: number, rank: number, run: number): number {
    return (before * this.sizes + rank) * this.runs + (run - 1);
  }

  /** Ranks of the best choice; or the index of the first note at which no state is left. */
  best(): number[] | number {
    const { ownCost } = this.table;
    const last = ownCost.length - 1;
    const width = this.sizes * this.sizes * this.runs;
    let cost = new Float64Array(width).fill(Number.POSITIVE_INFINITY);
    const cameFrom: Int32Array[] = [];
    for (let rank = 0; rank < this.sizes; rank += 1) cost[this.state(rank, rank, 1)] = ownCost[0]![rank]!;
    if (!cost.some(Number.isFinite)) return 0;

    for (let note = 1; note <= last; note += 1) {
      const next = new Float64Array(width).fill(Number.POSITIVE_INFINITY);
      const from = new Int32Array(width).fill(-1);
      this.step(note, cost, next, from);
      if (!next.some(Number.isFinite)) return note;
      cameFrom.push(from);
      cost = next;
    }
    return this.trace(cost, cameFrom);
  }

  private step(note: number, cost: Float64Array, next: Float64Array, from: Int32Array): void {
    const { sizes, runs } = this;
    const own = this.table.ownCost[note]!;
    const [logsBefore, logs, logsHere] = [
      this.table.logTension[note - 2],
      this.table.logTension[note - 1]!,
      this.table.logTension[note]!,
    ];
    for (let before = 0; before < sizes; before += 1) {
      for (let rank = before; rank < sizes; rank += 1) {
        for (let run = 1; run <= runs; run += 1) {
          const state = this.state(before, rank, run);
          const sum = cost[state]!;
          if (sum === Number.POSITIVE_INFINITY) continue;
          for (let here = rank; here < sizes; here += 1) {
            const isChange = here !== rank;
            if (own[here] === Number.POSITIVE_INFINITY || (isChange && run < runs)) continue;
            const bend =
              logsBefore === undefined ? 0 : logsBefore[before]! - 2 * logs[rank]! + logsHere[here]!;
            const total = sum + own[here]! + bend * bend + (isChange ? this.rules.sizeChangeWeight : 0);
            const target = this.state(rank, here, isChange ? 1 : Math.min(run + 1, runs));
            if (total < next[target]!) {
              next[target] = total;
              from[target] = state;
            }
          }
        }
      }
    }
  }

  private trace(cost: Float64Array, cameFrom: readonly Int32Array[]): number[] | number {
    let state = -1;
    for (let candidate = 0; candidate < cost.length; candidate += 1) {
      // The last run must be long enough as well.
      const isWholeRun = (candidate % this.runs) + 1 === this.runs;
      if (isWholeRun && cost[candidate]! < (state < 0 ? Number.POSITIVE_INFINITY : cost[state]!))
        state = candidate;
    }
    if (state < 0) return cameFrom.length;
    const ranks: number[] = [];
    for (let note = cameFrom.length; note >= 0; note -= 1) {
      ranks.unshift(Math.floor(state / this.runs) % this.sizes);
      if (note > 0) state = cameFrom[note - 1]![state]!;
    }
    return ranks;
  }
}

function clash(problem: PlainGaugeProblem, table: TensionTable, note: number): string {
  const number = note + 1;
  if (!table.ownCost[note]!.some(Number.isFinite)) {
    return `No size fits note ${number} of the run: its limits of tension and break share${problem.notes[note]!.pinned === undefined ? '' : ' and its pinned size'} leave none. Widen one of them there.`;
  }
  return `No schedule reaches note ${number} of the run: every size that fits there is thicker than what the notes below it need, or would break the minimum run of ${problem.minimumRun ?? 1}. Widen a limit near it, or shorten the minimum run.`;
}
