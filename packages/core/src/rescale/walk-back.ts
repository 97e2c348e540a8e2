import { ScheduleSearch, type SearchRules, type SearchStage } from './schedule-search.ts';

/** A highest sum of loads over some of the notes. */
export interface SearchLoad {
  readonly highest: number;
  /** [note][candidate] what it adds; undefined for notes that the limit is not about. */
  readonly adds: readonly (Float64Array | undefined)[];
}

/** Partial schedules of one state that a new one is compared with: comparing with fewer drops fewer, and loses nothing. */
const MOST_COMPARED = 48;
/** A schedule from one note to the last. */
interface Label {
  readonly state: number;
  /** Cost of everything after this note, with the price of loads. */
  readonly priced: number;
  /** The same without prices. */
  readonly cost: number;
  /** Loads of this note and those after it. */
  readonly loads: readonly number[];
  readonly next: Label | undefined;
}

/** Partial schedules by their state. */
type Labels = Map<number, Label[]>;

export interface WalkLimits {
  /** Steps from one partial schedule to the next, after which the walk is given up. */
  readonly mostSteps?: number;
  /** So many of the most promising partial schedules at each note, and no others: quick, and proves nothing. */
  readonly width?: number;
}

/**
 * Every schedule within loads that is cheap enough, from the last note to the first.
 *
 * The search forward, with the price of loads in its costs, leaves a table of the least that any state can cost. Walking back
 * from the last note, that table bounds each partial schedule from below exactly: what is dearer than wanted is dropped, as is
 * what is too heavy even with the lightest notes before it, and what costs no less and weighs no less than another one in the
 * same state.
 *
 * A limit of a section or a bridge is settled once its lowest note is reached: what is kept is kept. From there on its load
 * makes no schedule better or worse than another, and what is left below the limit is no longer paid for, so that the bound
 * is the higher for it.
 */
export class WalkBack {
  private readonly search: ScheduleSearch;
  private readonly costs: Float64Array[] = [];
  /** What the limits themselves are worth at these prices: no schedule has to pay for it. */
  private readonly free: number;
  /** [limit][note] lightest that the notes before one can be, by themselves. */
  private readonly lightestBefore: readonly (readonly number[])[];
  /** [note] limits that notes before it add to: the only ones that still tell schedules apart. */
  private readonly openAt: readonly (readonly number[])[];

  /** @param stages  with the price of loads in their own costs */
  constructor(
    private readonly stages: readonly SearchStage[],
    rules: SearchRules,
    private readonly loads: readonly SearchLoad[],
    private readonly prices: readonly number[],
  ) {
    this.search = new ScheduleSearch(stages, rules, {});
    this.search.cheapest(this.costs);
    this.free = prices.reduce((sum, price, index) => sum + price * loads[index]!.highest, 0);
    this.lightestBefore = loads.map(({ adds }) => {
      let sum = 0;
      return adds.map((column) => {
        const before = sum;
        if (column !== undefined)
          sum += column.reduce((low, add) => Math.min(low, add), Number.POSITIVE_INFINITY);
        return before;
      });
    });
    this.openAt = stages.map((_, note) =>
      loads.flatMap(({ adds }, limit) =>
        adds.slice(0, note).some((column) => column !== undefined) ? [limit] : [],
      ),
    );
  }

  /** The cheapest schedule that costs less than `below`, prices not counted; undefined when there is none. */
  cheapestBelow(
    below: number,
    { mostSteps = Number.POSITIVE_INFINITY, width = Number.POSITIVE_INFINITY }: WalkLimits,
  ): { choices: readonly number[] | undefined; isComplete: boolean } {
    const { search, costs } = this;
    const last = this.stages.length - 1;
    let labels: Labels = new Map();
    for (let state = 0; state < costs[last]!.length; state += 1) {
      const end = search.endCost(state);
      if (!Number.isFinite(costs[last]![state]!) || !Number.isFinite(end)) continue;
      const none = this.loads.map(() => 0);
      const loads = this.withNote(none, last, search.candidateOf(state, last));
      this.keep(labels, last, { state, priced: end, cost: end, loads, next: undefined });
    }
    let steps = 0;
    for (let note = last; note > 0; note -= 1) {
      const earlier: Labels = new Map();
      for (const group of labels.values()) {
        for (const label of group) {
          const most = below - label.priced + this.free - this.unspent(note, label.loads);
          search.eachStepTo(note, label.state, costs[note - 1]!, most, (source, step) => {
            steps += 1;
            const priced = label.priced + step;
            const loads = this.withNote(label.loads, note - 1, search.candidateOf(source, note - 1));
            const bound = costs[note - 1]![source]! + priced - this.free + this.unspent(note - 1, loads);
            if (!(bound < below - ROUNDING)) return;
            this.keep(earlier, note - 1, {
              state: source,
              priced,
              cost: this.withoutPrices(priced, label.loads),
              loads,
              next: label,
            });
          });
          if (steps > mostSteps) return { choices: undefined, isComplete: false };
        }
      }
      labels = Number.isFinite(width) ? this.mostPromising(earlier, note - 1, width) : earlier;
    }
    return { choices: this.cheapestOf(labels, below), isComplete: !Number.isFinite(width) };
  }

  private withNote(sums: readonly number[], note: number, candidate: number): number[] {
    return sums.map((sum, index) => sum + (this.loads[index]!.adds[note]?.[candidate] ?? 0));
  }

  /** What settled limits leave, at their prices: it was set against the cost, and no schedule gets it. */
  private unspent(note: number, sums: readonly number[]): number {
    const open = this.openAt[note]!;
    let unspent = 0;
    for (let limit = 0; limit < sums.length; limit += 1)
      if (!open.includes(limit)) unspent += this.prices[limit]! * (this.loads[limit]!.highest - sums[limit]!);
    return unspent;
  }

  private withoutPrices(priced: number, sums: readonly number[]): number {
    return sums.reduce((cost, load, limit) => cost - this.prices[limit]! * load, priced);
  }

  private keep(labels: Labels, note: number, label: Label): void {
    const { loads, lightestBefore } = this;
    if (label.loads.some((sum, index) => sum + lightestBefore[index]![note]! > loads[index]!.highest)) return;
    const there = labels.get(label.state);
    if (there === undefined) {
      labels.set(label.state, [label]);
      return;
    }
    // The cheapest stand first: they are the ones that make others needless.
    let [low, at] = [0, there.length];
    while (low < at) {
      const middle = (low + at) >> 1;
      if (there[middle]!.cost <= label.cost) low = middle + 1;
      else at = middle;
    }
    const open = this.openAt[note]!;
    if (open.length === 0) {
      if (at === 0) there[0] = label;
      return;
    }
    if (open.length === 1) {
      // One load: those that are kept grow lighter as they grow dearer, so the one before tells, and those after give way.
      const [limit] = open;
      const load = label.loads[limit!]!;
      if (at > 0 && there[at - 1]!.loads[limit!]! <= load) return;
      let end = at;
      while (end < there.length && there[end]!.loads[limit!]! >= load) end += 1;
      there.splice(at, end - at, label);
      return;
    }
    for (let index = 0; index < Math.min(at, MOST_COMPARED); index += 1) {
      if (isNoWorse(there[index]!, label, open)) return;
    }
    there.splice(at, 0, label);
  }

  private mostPromising(labels: Labels, note: number, width: number): Labels {
    const costs = this.costs[note]!;
    const inOrder = [...labels.values()]
      .flat()
      .sort((a, b) => a.priced + costs[a.state]! - (b.priced + costs[b.state]!));
    const kept: Labels = new Map();
    for (const label of inOrder.slice(0, width)) {
      const there = kept.get(label.state);
      if (there === undefined) kept.set(label.state, [label]);
      else there.push(label);
    }
    return kept;
  }

  /** Labels of the first note are whole schedules but for that note's own cost. */
  private cheapestOf(labels: Labels, below: number): number[] | undefined {
    let best: Label | undefined;
    let bestCost = below;
    for (const group of labels.values()) {
      for (const label of group) {
        if (label.loads.some((load, index) => load > this.loads[index]!.highest)) continue;
        const priced = this.costs[0]![label.state]! + label.priced;
        const cost = label.loads.reduce((sum, load, index) => sum - this.prices[index]! * load, priced);
        if (cost < bestCost) {
          best = label;
          bestCost = cost;
        }
      }
    }
    if (best === undefined) return undefined;
    const choices: number[] = [];
    for (let label: Label | undefined = best; label !== undefined; label = label.next)
      choices.push(this.search.candidateOf(label.state, choices.length));
    return choices;
  }
}

const ROUNDING = 1e-12;

const isNoWorse = (one: Label, other: Label, open: readonly number[]): boolean =>
  one.cost <= other.cost && open.every((limit) => one.loads[limit]! <= other.loads[limit]!);
