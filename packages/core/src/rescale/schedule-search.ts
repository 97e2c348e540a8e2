import { ReachedStates } from './reached-states.ts';
import { SourceList } from './source-list.ts';

/*
 * The exact search over schedules, on bare numbers: one candidate a note, the cheapest path under the rules of runs, breaks
 * and ties. What a candidate is, and where its figures come from, is none of its business.
 */

export const PLAIN = 0;
export const WOUND = 1;

/** One note: its candidates column by column, and what it does to costs. */
export interface SearchStage {
  readonly count: number;
  /** ln T and ln B of each candidate. */
  readonly logTension: Float64Array;
  readonly logInharmonicity: Float64Array;
  /** What choosing it costs by itself. */
  readonly own: Float64Array;
  readonly kind: Uint8Array;
  /** Equal within a kind for one size of wire; larger is thicker. */
  readonly size: Int32Array;
  readonly strings: number;
  readonly beginsSection: boolean;
  readonly bridge: string;
  /** Weights of the bend whose middle note this is; 0 at the ends of the compass. */
  readonly tensionBend: number;
  readonly inharmonicityBend: number;
}

export interface SearchRules {
  /** [PLAIN, WOUND]. */
  readonly minimumRun: readonly [number, number];
  readonly neverGrows: readonly [boolean, boolean];
  readonly sizeChange: number;
  readonly tiedString: number;
}

export interface SearchScope {
  /** The first run may be the rest of a longer one, the last one may go on: for a part of a compass. */
  readonly isStartOpen?: boolean;
  readonly isEndOpen?: boolean;
  /** Only schedules that cost less are sought. */
  readonly below?: number;
  /** The stages stand treble to bass: what may follow what is read the other way round. */
  readonly isMirrored?: boolean;
}

export interface FoundSchedule {
  readonly cost: number;
  /** Candidate of each note. */
  readonly choices: readonly number[];
}

/** The note at which no schedule was left; the count of notes when only its end broke a rule. */
export interface NoSchedule {
  readonly endsAt: number;
}

export const isFound = (result: FoundSchedule | NoSchedule): result is FoundSchedule => 'choices' in result;

const FORBIDDEN = 0;
const SAME_SIZE = 1;
const SIZE_CHANGE = 2;
const BREAK = 3;

/** How candidate b of a note may follow candidate a of the note before. */
export function relationOf(
  before: SearchStage,
  a: number,
  here: SearchStage,
  b: number,
  rules: SearchRules,
): number {
  const [kindBefore, kind] = [before.kind[a]!, here.kind[b]!];
  if (kindBefore !== kind) return kindBefore === WOUND ? BREAK : FORBIDDEN;
  const [sizeBefore, size] = [before.size[a]!, here.size[b]!];
  if (sizeBefore === size) return SAME_SIZE;
  const mayNotGrow = rules.neverGrows[kind as 0 | 1] && (kind === PLAIN || before.bridge === here.bridge);
  return mayNotGrow && size > sizeBefore ? FORBIDDEN : SIZE_CHANGE;
}

/**
 * The search with its table of costs, for those who need more than the cheapest schedule; `cheapestSchedule` is quicker.
 *
 * Dynamic programming over pairs of neighbouring candidates, since a bend ties three notes together; beside the pair a state
 * holds how long the run of one size is, up to the minimum run, and whether its strings within the section are odd. For
 * each pair the states it can come from are tried cheapest first and the trying stops when the next one alone costs as much
 * as the best found with its bend: a bend costs nothing less than nothing, so nothing is lost.
 *
 * Work: n·K² pairs, each with one to K tries, K candidates a note. Exact.
 */
export class ScheduleSearch {
  private readonly longest: number;
  /** Run states of a pair by its upper note: run 1 … longest, and odd or even where plain strings may be tied. */
  private readonly statesAt: readonly number[];
  private readonly isOddKept: boolean;
  /** [note] least that the notes after it can cost by themselves. */
  private readonly restOwn: Float64Array;
  private lists: SourceList[] = [];
  constructor(
    private readonly stages: readonly SearchStage[],
    private readonly rules: SearchRules,
    private readonly scope: SearchScope,
  ) {
    this.longest = Math.max(...rules.minimumRun);
    this.isOddKept = rules.tiedString > 0;
    this.statesAt = stages.map(({ kind }) =>
      kind.includes(PLAIN) ? this.longest * (this.isOddKept ? 2 : 1) : rules.minimumRun[WOUND],
    );
    this.restOwn = new Float64Array(stages.length);
    for (let note = stages.length - 2; note >= 0; note -= 1) {
      const { own } = stages[note + 1]!;
      this.restOwn[note] =
        this.restOwn[note + 1]! + own.reduce((low, cost) => Math.min(low, cost), Number.POSITIVE_INFINITY);
    }
  }

  /** `costs`, where given, is filled with the least cost of every state, note by note. */
  cheapest(costs?: Float64Array[]): FoundSchedule | NoSchedule {
    const { stages, statesAt, scope } = this;
    const below = scope.below ?? Number.POSITIVE_INFINITY;
    const first = stages[0]!;
    const layers = [new ReachedStates(first.count)];
    for (let b = 0; b < first.count; b += 1) {
      const run = scope.isStartOpen ? this.runOf(first, b) : 1;
      layers[0]!.add(b, 0, this.state(run, this.isOdd(first, b, 0)), first.own[b]!, -1);
    }
    if (first.count === 0) return { endsAt: 0 };
    for (let note = 1; note < stages.length; note += 1) {
      const next = this.step(note, layers[note - 1]!, below - this.restOwn[note]!);
      if (next.length === 0) return { endsAt: note };
      layers.push(next);
    }
    if (costs !== undefined) {
      layers.forEach((layer, note) => {
        const countBefore = note === 0 ? 1 : stages[note - 1]!.count;
        costs.push(layer.everyCost(stages[note]!.count, countBefore, statesAt[note]!));
      });
    }
    return this.trace(layers, below);
  }

  private relation(before: SearchStage, a: number, here: SearchStage, b: number): number {
    return this.scope.isMirrored
      ? relationOf(here, b, before, a, this.rules)
      : relationOf(before, a, here, b, this.rules);
  }

  private runOf(stage: SearchStage, candidate: number): number {
    return this.rules.minimumRun[stage.kind[candidate]! as 0 | 1];
  }

  private state(run: number, odd: number): number {
    return run - 1 + (this.isOddKept ? odd * this.longest : 0);
  }

  /** Whether the looped strings of a run are odd when this note joins `before` of them. */
  private isOdd(stage: SearchStage, candidate: number, before: number): number {
    return stage.kind[candidate] === PLAIN ? (before + stage.strings) % 2 : 0;
  }

  /** From pairs (a, b) ending at the note before to pairs (b, c) ending at `note`. */
  private step(note: number, reached: ReachedStates, below: number): ReachedStates {
    const { stages, longest, rules } = this;
    const [statesIn, statesOut] = [this.statesAt[note - 1]!, this.statesAt[note]!];
    const before = stages[note - 2];
    const middle = stages[note - 1]!;
    const here = stages[note]!;
    const { tensionBend, inharmonicityBend } = before === undefined ? NO_BEND : middle;
    const tensionA = before?.logTension ?? ZERO;
    const inharmonicityA = before?.logInharmonicity ?? ZERO;
    // One list of sources for each run state that the same size may lead to, and one for a change.
    const changing = Math.max(statesIn, statesOut);
    const { starts, order, largest } = reached.byCandidate(middle.count);
    const lists = this.sourceLists(changing + 1, largest);
    const relations = new Uint8Array(here.count);
    let [kindOfRelations, sizeOfRelations] = [-1, -1];
    const next = new ReachedStates(reached.length);

    for (let b = 0; b < middle.count; b += 1) {
      if (starts[b] === starts[b + 1]) continue;
      const run = this.runOf(middle, b);
      const isPlain = middle.kind[b] === PLAIN;
      for (const list of lists) list.clear();
      for (let place = starts[b]!; place < starts[b + 1]!; place += 1) {
        const source = order[place]!;
        const sum = reached.cost[source]!;
        const a = reached.before[source]!;
        const state = reached.state[source]!;
        const runSoFar = (state % longest) + 1;
        const odd = state >= longest ? 1 : 0;
        const tie = isPlain ? odd * rules.tiedString : 0;
        if (runSoFar >= run) lists[changing]!.add(source, a, sum + tie);
        const goesOnOdd = isPlain ? ((here.beginsSection ? 0 : odd) + here.strings) % 2 : 0;
        const goesOn = this.state(Math.min(runSoFar + 1, run), goesOnOdd);
        lists[goesOn]!.add(source, a, sum + (here.beginsSection ? tie : 0));
      }
      for (const list of lists) list.sort();

      // Strings of one kind and size stand together and have the same relations to the next note.
      if (middle.kind[b] !== kindOfRelations || middle.size[b] !== sizeOfRelations) {
        for (let c = 0; c < here.count; c += 1) relations[c] = this.relation(middle, b, here, c);
        kindOfRelations = middle.kind[b]!;
        sizeOfRelations = middle.size[b]!;
      }

      const doubleTension = 2 * middle.logTension[b]!;
      const doubleInharmonicity = 2 * middle.logInharmonicity[b]!;
      for (let c = 0; c < here.count; c += 1) {
        const relation = relations[c]!;
        if (relation === FORBIDDEN) continue;
        const own = here.own[c]! + (relation === SIZE_CHANGE ? rules.sizeChange : 0);
        const evenTension = doubleTension - here.logTension[c]!;
        const evenInharmonicity = doubleInharmonicity - here.logInharmonicity[c]!;
        const firstList = relation === SAME_SIZE ? 0 : changing;
        const lastList = relation === SAME_SIZE ? statesOut - 1 : changing;
        for (let which = firstList; which <= lastList; which += 1) {
          const { length, sums, candidates, sources } = lists[which]!;
          let best = below - own;
          let bestSource = -1;
          for (let index = 0; index < length; index += 1) {
            const sum = sums[index]!;
            if (sum >= best) break;
            const a = candidates[index]!;
            const bendT = tensionA[a]! - evenTension;
            const bendB = inharmonicityA[a]! - evenInharmonicity;
            const total = sum + tensionBend * bendT * bendT + inharmonicityBend * bendB * bendB;
            if (total < best) {
              best = total;
              bestSource = sources[index]!;
            }
          }
          if (bestSource < 0) continue;
          const state = relation === SAME_SIZE ? which : this.state(1, this.isOdd(here, c, 0));
          next.add(c, b, state, best + own, bestSource);
        }
      }
    }
    return next;
  }

  /** Lists to use, made anew only where they are too small: they are the same for every note. */
  private sourceLists(count: number, capacity: number): SourceList[] {
    if (this.lists.length < count || this.lists[0]!.capacity < capacity)
      this.lists = Array.from({ length: count }, () => new SourceList(2 * capacity));
    return this.lists.slice(0, count);
  }

  private trace(layers: readonly ReachedStates[], below: number): FoundSchedule | NoSchedule {
    const last = layers.length - 1;
    const { length, candidate, state, cost } = layers[last]!;
    let best = below;
    let place = -1;
    for (let index = 0; index < length; index += 1) {
      const total = cost[index]! + this.endCostOf(candidate[index]!, state[index]!);
      if (total < best) {
        best = total;
        place = index;
      }
    }
    if (place < 0) return { endsAt: layers.length };
    const choices = new Array<number>(layers.length);
    for (let note = last; note >= 0; note -= 1) {
      choices[note] = layers[note]!.candidate[place]!;
      place = layers[note]!.from[place]!;
    }
    return { cost: best, choices };
  }

  /** What ending in a state at the last note adds: a tied string, or Infinity where its run is too short. */
  endCost(index: number): number {
    const last = this.stages.length - 1;
    return this.endCostOf(this.candidateOf(index, last), index % this.statesAt[last]!);
  }

  private endCostOf(candidate: number, state: number): number {
    const { stages, longest, rules } = this;
    const last = stages[stages.length - 1]!;
    if (this.scope.isEndOpen) return 0;
    if ((state % longest) + 1 < this.runOf(last, candidate)) return Number.POSITIVE_INFINITY;
    return state >= longest && last.kind[candidate] === PLAIN ? rules.tiedString : 0;
  }

  /**
   * Every step that leads to a state at `note`, with what it costs, the note's own cost included. Only sources whose place in
   * `costs` is below `most` are looked at.
   */
  eachStepTo(
    note: number,
    to: number,
    costs: Float64Array,
    most: number,
    visit: (source: number, cost: number) => void,
  ): void {
    const { stages, longest, rules } = this;
    const [statesIn, statesOut] = [this.statesAt[note - 1]!, this.statesAt[note]!];
    const [before, middle, here] = [stages[note - 2], stages[note - 1]!, stages[note]!];
    const b = Math.floor(to / statesOut) % middle.count;
    const c = this.candidateOf(to, note);
    const relation = this.relation(middle, b, here, c);
    if (relation === FORBIDDEN) return;
    const target = to % statesOut;
    const isPlain = middle.kind[b] === PLAIN;
    const run = this.runOf(middle, b);
    const own = here.own[c]! + (relation === SIZE_CHANGE ? rules.sizeChange : 0);
    const countA = before?.count ?? 1;
    for (let a = 0; a < countA; a += 1) {
      let bend = -1; // not worked out yet: few sources come so far
      for (let state = 0; state < statesIn; state += 1) {
        const source = (b * countA + a) * statesIn + state;
        if (!(costs[source]! < most)) continue;
        const runSoFar = (state % longest) + 1;
        const odd = state >= longest ? 1 : 0;
        const isTied = isPlain && odd === 1;
        let cost = own;
        if (relation === SAME_SIZE) {
          const goesOnOdd = isPlain ? ((here.beginsSection ? 0 : odd) + here.strings) % 2 : 0;
          if (target !== this.state(Math.min(runSoFar + 1, run), goesOnOdd)) continue;
          if (isTied && here.beginsSection) cost += rules.tiedString;
        } else {
          if (runSoFar < run || target !== this.state(1, this.isOdd(here, c, 0))) continue;
          if (isTied) cost += rules.tiedString;
        }
        if (bend < 0) bend = before === undefined ? 0 : this.bend(before, a, middle, b, here, c);
        visit(source, cost + bend);
      }
    }
  }

  private bend(
    before: SearchStage,
    a: number,
    middle: SearchStage,
    b: number,
    here: SearchStage,
    c: number,
  ): number {
    const bendT = before.logTension[a]! - 2 * middle.logTension[b]! + here.logTension[c]!;
    const bendB = before.logInharmonicity[a]! - 2 * middle.logInharmonicity[b]! + here.logInharmonicity[c]!;
    return middle.tensionBend * bendT * bendT + middle.inharmonicityBend * bendB * bendB;
  }

  /** Candidate of a note in one of its states. */
  candidateOf(index: number, note: number): number {
    return Math.floor(index / (this.statesAt[note]! * (note === 0 ? 1 : this.stages[note - 1]!.count)));
  }
}

const ZERO = new Float64Array(1);
const NO_BEND = { tensionBend: 0, inharmonicityBend: 0 };
