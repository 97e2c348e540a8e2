import { LoadRooms, type SearchLoad } from './load-rooms.ts';
import { ScheduleSearch, type SearchRules, type SearchStage } from './schedule-search.ts';

/** A schedule from one note to the last. */
interface Label {
  readonly state: number;
  /** Cost of everything after this note, without the price of loads. */
  readonly cost: number;
  /** What the notes up to this one may still weigh: see `LoadRooms`. */
  readonly room: Float64Array;
  readonly next: Label | undefined;
}

/** Partial schedules by their state, the cheapest first, none needless beside another. */
type Labels = Map<number, Label[]>;

/** A step to a label's state from one of the note before. */
interface Step {
  readonly from: number;
  readonly cost: number;
  /** Least that everything up to this note can cost by this step, with the price of loads. */
  readonly least: number;
}

export interface WalkLimits {
  /** Steps from one partial schedule to the next and comparisons of two, after which the walk is given up. */
  readonly mostSteps?: number;
  /** So many of the most promising partial schedules at each note, and no others: quick, and proves nothing. */
  readonly width?: number;
}

/**
 * Every schedule within loads that is cheap enough, from the last note to the first.
 *
 * The search forward, with the price of loads in its costs, leaves a table of the least that any state can cost. Walking back
 * from the last note, that table bounds each partial schedule from below: what the notes before it cost at least with their
 * loads paid for, less the price of the room that is left to them. What is dearer than wanted is dropped, as is what is too
 * heavy, and what costs no less and leaves no more room than another one in the same state.
 */
export class WalkBack {
  /** Knows the steps and their costs without prices. */
  private readonly search: ScheduleSearch;
  /** [note][state] least cost up to there, with prices. */
  private readonly costs: Float64Array[] = [];
  private readonly rooms: LoadRooms;
  private readonly prices: readonly Float64Array[];

  /**
   * @param stages  without the price of loads
   * @param priced  the same with it
   */
  constructor(
    private readonly stages: readonly SearchStage[],
    priced: readonly SearchStage[],
    rules: SearchRules,
    loads: readonly SearchLoad[],
    prices: readonly number[],
  ) {
    new ScheduleSearch(priced, rules, {}).cheapest(this.costs);
    this.search = new ScheduleSearch(stages, rules, {});
    this.rooms = new LoadRooms(loads, stages.length);
    this.prices = this.rooms.pricesOf(prices);
  }

  /** The cheapest schedule that costs less than `below`; undefined when there is none. */
  cheapestBelow(
    below: number,
    { mostSteps = Number.POSITIVE_INFINITY, width = Number.POSITIVE_INFINITY }: WalkLimits,
  ): { choices: readonly number[] | undefined; isComplete: boolean } {
    const { search, costs, rooms } = this;
    const last = this.stages.length - 1;
    let labels: Labels = new Map();
    for (let state = 0; state < costs[last]!.length; state += 1) {
      const cost = search.endCost(state);
      if (Number.isFinite(costs[last]![state]!) && Number.isFinite(cost))
        labels.set(state, [{ state, cost, room: rooms.full(), next: undefined }]);
    }
    let effort = 0;
    for (let note = last; note > 0; note -= 1) {
      const told = rooms.toldApart(note - 1);
      const earlier: Labels = new Map();
      for (const [state, group] of labels) {
        const candidate = search.candidateOf(state, note);
        const open = group.flatMap((label) => {
          const room = rooms.before(note, label.room, candidate);
          return room === undefined ? [] : [{ label, room, base: label.cost - this.worth(note - 1, room) }];
        });
        if (open.length === 0) continue;
        const most =
          below - ROUNDING - open.reduce((least, { base }) => Math.min(least, base), open[0]!.base);
        const steps = this.stepsTo(note, state, most);
        effort += steps.length;
        for (const { label, room, base } of open) {
          for (const { from, cost, least } of steps) {
            if (base + least >= below - ROUNDING) break;
            effort += 1 + keep(earlier, { state: from, cost: label.cost + cost, room, next: label }, told);
          }
        }
        if (effort > mostSteps) return { choices: undefined, isComplete: false };
      }
      labels = Number.isFinite(width) ? this.mostPromising(earlier, note - 1, width) : earlier;
    }
    return { choices: this.cheapestOf(labels, below), isComplete: !Number.isFinite(width) };
  }

  /** Steps to a state that leave less than `most`, the cheapest first. */
  private stepsTo(note: number, state: number, most: number): Step[] {
    const before = this.costs[note - 1]!;
    const steps: Step[] = [];
    this.search.eachStepTo(note, state, before, most, (from, cost) => {
      const least = before[from]! + cost;
      if (least < most) steps.push({ from, cost, least });
    });
    return steps.sort((a, b) => a.least - b.least);
  }

  /** What room is worth at its prices: the table counts its loads, and no schedule has to pay for them. */
  private worth(note: number, room: Float64Array): number {
    const prices = this.prices[note]!;
    let worth = 0;
    for (let which = 0; which < room.length; which += 1) worth += prices[which]! * room[which]!;
    return worth;
  }

  private mostPromising(labels: Labels, note: number, width: number): Labels {
    const costs = this.costs[note]!;
    const bound = ({ state, cost, room }: Label): number => costs[state]! + cost - this.worth(note, room);
    const inOrder = [...labels.values()]
      .flat()
      .map((label) => ({ label, least: bound(label) }))
      .sort((a, b) => a.least - b.least);
    const kept: Labels = new Map();
    for (const { label } of inOrder.slice(0, width))
      kept.set(label.state, [...(kept.get(label.state) ?? []), label]);
    return kept;
  }

  /** Labels of the first note are whole schedules but for that note's own cost. */
  private cheapestOf(labels: Labels, below: number): number[] | undefined {
    let best: Label | undefined;
    let bestCost = below;
    for (const label of [...labels.values()].flat()) {
      const candidate = this.search.candidateOf(label.state, 0);
      const cost = label.cost + this.stages[0]!.own[candidate]!;
      if (cost < bestCost && this.rooms.before(0, label.room, candidate) !== undefined) {
        best = label;
        bestCost = cost;
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

/** Keeps a partial schedule unless it is needless, and drops those that it makes needless. Gives back how many it was compared with. */
function keep(labels: Labels, label: Label, told: readonly number[]): number {
  const there = labels.get(label.state);
  if (there === undefined) {
    labels.set(label.state, [label]);
    return 0;
  }
  let at = 0;
  for (; at < there.length && there[at]!.cost <= label.cost; at += 1)
    if (hasRoomOf(there[at]!, label, told)) return at + 1;
  const dearer = there.splice(at).filter((one) => !hasRoomOf(label, one, told));
  there.push(label, ...dearer);
  return there.length;
}

const hasRoomOf = (one: Label, other: Label, told: readonly number[]): boolean =>
  told.every((which) => one.room[which]! >= other.room[which]!);
