import { cheapestSchedule, scheduleCost } from './cheapest-schedule.ts';
import type { SearchLoad } from './load-rooms.ts';
import {
  type FoundSchedule,
  isFound,
  type NoSchedule,
  type SearchRules,
  type SearchStage,
} from './schedule-search.ts';
import { WalkBack } from './walk-back.ts';

/** The cheapest schedule within loads, and how far that is proved. */
export interface ScheduleWithinLoads extends FoundSchedule {
  /** No schedule within the loads costs less than this. */
  readonly lowerBound: number;
  /** Whether nothing better exists; else the gap to `lowerBound` is what may be left. */
  readonly isProven: boolean;
}

/** No schedule keeps one of the loads: even the lightest is above it. */
export interface LoadTooLow {
  readonly limit: number;
  readonly lightest: number;
}

/** Each load can be kept, yet no schedule keeps all together: proved, or only that none was found. */
export interface LoadsClash {
  /** Proved: these clash by themselves, and of no one of them is it proved that the others clash without it. Else all there are. */
  readonly clashing: readonly number[];
  readonly isProven: boolean;
}

/** Steps back from one partial schedule to the next before the proof is given up: some seconds. */
export const MOST_STEPS_BACK = 8_000_000;
/** Steps of one multiplier; each at least doubles it or crosses two lines, and some 10 are usual. */
const MOST_STEPS = 40;
const MOST_ROUNDS = 12;
/** Schedules found before that bound the next one: the prices move little from one to the next. */
const MOST_KNOWN = 4;
/** Steps of all multipliers together, and the gap that is small enough for the walk back. */
const MOST_EVENING_STEPS = 12;
const SMALL_GAP = 0.002;
/** How far above the bound, as a share, the first walk back looks; each further one twice as far, at last without end. */
const FIRST_GAP = 0.0025;
const LAST_GAP = 0.2;
/** Partial schedules kept at each note where all of them are too many. */
const NARROW = 400;

/**
 * The cheapest schedule whose loads stay below their limits.
 *
 *     L(λ) = min over schedules of [cost + Σ λ·(load − highest)]  ≤  optimum,  λ ≥ 0
 *
 * A load ties all notes together, so it cannot be looked at note by note. Each λ makes it a price, the search stays as it
 * is, and L(λ) is a lower bound. λ is raised limit by limit to where the two cheapest schedules beside it, one too heavy and
 * one not, cost alike. What is left between the best schedule found and the bound is closed by walking back from the last
 * note over partial schedules, each bounded from below by the table of the search itself; one that costs no less and leaves
 * no more room below the limits than another in the same state is dropped. Exact when the walk ends; else the gap is told.
 *
 * Limits are of all, of bridges and of sections, a bridge made of whole sections: two of them lie one within the other or
 * apart. `LoadRooms` makes use of that; the answer is as exact where it is otherwise, and the walk longer.
 *
 * Source: H. Everett, Operations Research 11 (1963) 399, for the multipliers; G. Handler and I. Zang, Networks 10 (1980) 293,
 * for the lines that cross (both from memory).
 */
export function scheduleWithinLoads(
  stages: readonly SearchStage[],
  rules: SearchRules,
  loads: readonly SearchLoad[],
  mostStepsBack = MOST_STEPS_BACK,
  known: readonly (readonly number[])[] = [],
): ScheduleWithinLoads | NoSchedule | LoadTooLow | LoadsClash {
  const within = withinAll(stages, rules, loads, mostStepsBack, known);
  if (within !== 'none' && within !== 'none found') return within;
  let clashing = loads.map((_, limit) => limit);
  if (within === 'none found') return { clashing, isProven: false };
  for (const limit of [...clashing]) {
    const others = clashing.filter((other) => other !== limit);
    const these = others.map((other) => loads[other]!);
    if (withinAll(stages, rules, these, mostStepsBack, []) === 'none') clashing = others;
  }
  return { clashing, isProven: true };
}

/** 'none' where it is proved that nothing keeps all loads, 'none found' where the walk was given up without any. */
function withinAll(
  stages: readonly SearchStage[],
  rules: SearchRules,
  loads: readonly SearchLoad[],
  mostStepsBack: number,
  known: readonly (readonly number[])[],
): ScheduleWithinLoads | NoSchedule | LoadTooLow | 'none' | 'none found' {
  const pricing = new Pricing(stages, rules, loads, mostStepsBack, known);
  const free = pricing.solve();
  if (!isFound(free)) return free;
  if (pricing.isWithin(free)) return { ...free, lowerBound: free.cost, isProven: true };
  const tooLow = pricing.limitBelowLightest();
  if (tooLow !== undefined) return tooLow;
  for (let round = 0; round < MOST_ROUNDS && pricing.raiseWorst(); round += 1);
  if (loads.length > 1) pricing.evenOut();
  // Prices that make cost count for less and less; a schedule that keeps all loads may still lie between them.
  for (let turn = 0; turn < MOST_ROUNDS && pricing.best === undefined; turn += 1) pricing.raiseAll();
  return pricing.closeGap();
}

interface Priced {
  readonly choices: readonly number[];
  /** Cost without the price of loads. */
  readonly cost: number;
  readonly loads: readonly number[];
}

class Pricing {
  /** Price of a newton over each limit. */
  private readonly prices: number[];
  best: FoundSchedule | undefined;
  lowerBound = Number.NEGATIVE_INFINITY;
  private bestPrices: readonly number[] = [];

  constructor(
    private readonly stages: readonly SearchStage[],
    private readonly rules: SearchRules,
    private readonly loads: readonly SearchLoad[],
    private readonly mostStepsBack: number,
    private known: readonly (readonly number[])[],
  ) {
    this.prices = loads.map(() => 0);
  }

  loadOf(load: SearchLoad, choices: readonly number[]): number {
    return load.adds.reduce((sum, adds, note) => sum + (adds?.[choices[note]!] ?? 0), 0);
  }

  isWithin({ choices }: FoundSchedule): boolean {
    return this.loads.every((load) => this.loadOf(load, choices) <= load.highest);
  }

  /** The first limit that even the lightest schedule under the other rules is above. */
  limitBelowLightest(): LoadTooLow | undefined {
    // One schedule that is light everywhere shows for most limits at once that they can be kept.
    const light = this.lightest(this.loads);
    if (light === undefined) return undefined;
    for (const [limit, load] of this.loads.entries()) {
      if (this.loadOf(load, light) <= load.highest) continue;
      const lightest = this.loadOf(load, this.lightest([load])!);
      if (lightest > load.highest) return { limit, lightest };
    }
    return undefined;
  }

  /** The schedule under the other rules with the least sum of these loads, each as a share of its limit. */
  private lightest(loads: readonly SearchLoad[]): readonly number[] | undefined {
    const stages = this.stages.map((stage, note) => ({
      ...stage,
      own: stage.own.map((_, candidate) =>
        loads.reduce((sum, { adds, highest }) => sum + (adds[note]?.[candidate] ?? 0) / highest, 0),
      ),
      tensionBend: 0,
      inharmonicityBend: 0,
    }));
    const found = cheapestSchedule(stages, { ...this.rules, sizeChange: 0, tiedString: 0 });
    return isFound(found) ? found.choices : undefined;
  }

  private priced(prices: readonly number[]): SearchStage[] {
    return this.stages.map((stage, note) => ({
      ...stage,
      own: stage.own.map((own, candidate) =>
        this.loads.reduce(
          (sum, { adds }, index) => sum + prices[index]! * (adds[note]?.[candidate] ?? 0),
          own,
        ),
      ),
    }));
  }

  /** The cheapest schedule at the present prices; keeps the best bound and the best schedule within the loads. */
  solve(): FoundSchedule | NoSchedule {
    const found = cheapestSchedule(this.priced(this.prices), this.rules, this.known);
    if (!isFound(found)) return found;
    this.known = [...this.known.slice(-MOST_KNOWN), found.choices];
    const bound =
      found.cost - this.prices.reduce((sum, price, index) => sum + price * this.loads[index]!.highest, 0);
    if (bound > this.lowerBound) {
      this.lowerBound = bound;
      this.bestPrices = [...this.prices];
    }
    const { cost } = this.pricedOf(found.choices);
    if (this.isWithin(found) && cost < (this.best?.cost ?? Number.POSITIVE_INFINITY))
      this.best = { cost, choices: found.choices };
    return found;
  }

  private pricedOf(choices: readonly number[], cost = this.costOf(choices)): Priced {
    return { choices, cost, loads: this.loads.map((load) => this.loadOf(load, choices)) };
  }

  /** Cost of a schedule without prices. */
  private costOf(choices: readonly number[]): number {
    return scheduleCost(this.stages, this.rules, choices);
  }

  /** Raises the price of the load that is furthest above its limit to where it no longer is. False when none is. */
  raiseWorst(): boolean {
    const found = this.solve();
    if (!isFound(found)) return false;
    const excess = this.loads.map((load) => this.loadOf(load, found.choices) / load.highest - 1);
    const worst = excess.indexOf(Math.max(...excess));
    if (excess[worst]! <= 0) return false;
    const others = (choices: readonly number[]): number =>
      this.costOf(choices) +
      this.loads.reduce(
        (sum, load, index) =>
          index === worst ? sum : sum + this.prices[index]! * this.loadOf(load, choices),
        0,
      );
    const load = this.loads[worst]!;
    let heavy = { cost: others(found.choices), load: this.loadOf(load, found.choices) };
    let light: { cost: number; load: number } | undefined;
    // A first price that moves the cost by about itself when the excess is taken away.
    let price = Math.max(
      this.prices[worst]! * 2,
      (Math.abs(found.cost) + 1e-6) / (heavy.load - load.highest) / 100,
    );
    for (let step = 0; step < MOST_STEPS; step += 1) {
      this.prices[worst] = price;
      const next = this.solve();
      if (!isFound(next)) return false;
      const figures = { cost: others(next.choices), load: this.loadOf(load, next.choices) };
      const value = figures.cost + price * figures.load;
      // Both lines pass here already: λ is the highest point of the bound.
      if (light !== undefined && value >= light.cost + price * light.load - 1e-12 * Math.abs(value)) {
        // A little more, so that of the two that cost alike it is the light one that is found from here on.
        this.prices[worst] = price * (1 + 1e-7);
        return true;
      }
      if (figures.load > load.highest) heavy = figures;
      else light = figures;
      price = light === undefined ? price * 4 : (light.cost - heavy.cost) / (heavy.load - light.load);
    }
    return true;
  }

  /**
   * Moves all prices together up the slope of the bound, which is how far each load is off its limit; the step is what would
   * close the gap if the slope went on (B. Polyak, 1969; from memory). What was raised too far for one limit comes down again.
   */
  evenOut(): void {
    let share = 1;
    let sinceBetter = 0;
    this.bestPrices.forEach((price, index) => {
      this.prices[index] = price;
    });
    for (let step = 0; step < MOST_EVENING_STEPS; step += 1) {
      const before = this.lowerBound;
      const found = this.solve();
      if (!isFound(found)) return;
      const bound =
        found.cost - this.prices.reduce((sum, price, index) => sum + price * this.loads[index]!.highest, 0);
      const target = this.best?.cost ?? this.lowerBound + 0.05 * Math.abs(this.lowerBound);
      if (this.best !== undefined && target - this.lowerBound <= SMALL_GAP * target) return;
      sinceBetter = this.lowerBound > before ? 0 : sinceBetter + 1;
      if (sinceBetter === 3) {
        share /= 2;
        sinceBetter = 0;
      }
      // Relative to the limits, so that a section and the whole piano move alike; a price of nothing cannot fall.
      const slope = this.loads.map((load, index) => {
        const excess = this.loadOf(load, found.choices) / load.highest - 1;
        return excess < 0 && this.prices[index] === 0 ? 0 : excess;
      });
      const steepness = slope.reduce((sum, excess) => sum + excess * excess, 0);
      if (steepness === 0) return;
      const length = (share * Math.max(target - bound, 0)) / steepness;
      slope.forEach((excess, index) => {
        this.prices[index] = Math.max(
          0,
          this.prices[index]! + (length * excess) / this.loads[index]!.highest,
        );
      });
    }
  }

  /** Triples every price; one that is still nothing becomes a third of the largest. */
  raiseAll(): void {
    const most = Math.max(...this.prices);
    this.prices.forEach((price, index) => {
      this.prices[index] = Math.max(3 * price, most / 3);
    });
    this.solve();
  }

  /**
   * Walks back for schedules a little dearer than the bound, and dearer ones only when there are none: whatever the first
   * walk that finds one finds is the optimum, and every walk that ends without raises the bound.
   */
  closeGap(): ScheduleWithinLoads | 'none' | 'none found' {
    const start = this.lowerBound;
    const scale = Math.abs(start) + 1e-9;
    const walk = new WalkBack(
      this.stages,
      this.priced(this.bestPrices),
      this.rules,
      this.loads,
      this.bestPrices,
    );
    const met = (choices: readonly number[] | undefined): FoundSchedule | undefined =>
      choices && { cost: this.costOf(choices), choices };
    for (let gap = FIRST_GAP; ; gap *= 2) {
      const upTo = start + gap * scale;
      const isLast = upTo >= (this.best?.cost ?? Number.POSITIVE_INFINITY) || gap > LAST_GAP;
      const { choices, isComplete } = walk.cheapestBelow(
        isLast ? (this.best?.cost ?? Number.POSITIVE_INFINITY) : upTo,
        { mostSteps: this.mostStepsBack },
      );
      const best = met(choices);
      if (isComplete && best !== undefined) return { ...best, lowerBound: best.cost, isProven: true };
      if (isComplete && isLast) {
        if (this.best === undefined) return 'none';
        return { ...this.best, lowerBound: this.best.cost, isProven: true };
      }
      if (isComplete) this.lowerBound = upTo;
      else {
        const narrowly = walk.cheapestBelow(this.best?.cost ?? Number.POSITIVE_INFINITY, { width: NARROW });
        const narrow = met(narrowly.choices) ?? this.best;
        if (narrow === undefined) return 'none found';
        return { ...narrow, lowerBound: this.lowerBound, isProven: false };
      }
    }
  }
}
