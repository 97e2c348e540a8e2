import { requirePositive, requireWithin } from '../units/index.ts';

/** A size written on the piano that says where a run of one size begins or ends. */
export interface ScheduleStamp {
  /** Index of the note, 0 = the first of the run of notes. */
  readonly note: number;
  /** Rank of the size, 0 = the thickest. */
  readonly rank: number;
  readonly says: 'starts here' | 'ends here';
}

export interface ScheduleRules {
  /** Sizes to choose from. */
  readonly sizes: number;
  readonly notes: number;
  /**
   * Chance that the size changes after a run of 1, 2, … notes; the last entry holds for every longer run. Zeros in front
   * make a minimum run.
   */
  readonly changeChance: readonly number[];
  readonly stamps: readonly ScheduleStamp[];
  /** How many times likelier a schedule becomes by agreeing with a stamp. */
  readonly stampOdds: number;
}

/**
 * How a size change goes: mostly to the next size, sometimes over one or more. Two geometric laws, so that a wide step is
 * rare and not impossible: 81 % one rank, 13 % two, 3 % three. Common practice, no source.
 */
const NEAR_STEPS = { first: 0.85 * (1 - 0.12), goesOn: 0.12 } as const;
const FAR_STEPS = { first: 0.15 * (1 - 0.6), goesOn: 0.6 } as const;

/** Chance that a change goes `apart` ranks thinner. */
const stepChance = (apart: number): number =>
  NEAR_STEPS.first * NEAR_STEPS.goesOn ** (apart - 1) + FAR_STEPS.first * FAR_STEPS.goesOn ** (apart - 1);

/**
 * A Markov model of the sizes along a compass: they never grow towards the treble, and come in runs.
 *
 * The state at a note is a rank (0 = thickest) and how long its run has lasted, counted up to the length of
 * `changeChance`. The run of the first note is taken to have begun long before it, and that of the last may go on beyond it,
 * so a minimum run binds neither. The list of sizes is a window on sizes that go on beyond it: the same schedule a rank thinner is
 * as likely beforehand, down to the last rank, so that nothing but the readings and the bias shifts it. Readings come in as a table `likelihood[note · sizes + rank]`, > 0.
 *
 * Method: the forward and backward recursions, scaled at every note so that nothing underflows; a step law that is
 * geometric lets the sum over all thicker sizes be carried along, so a note costs (sizes × run lengths) and not its square.
 *
 * Source: L. R. Rabiner, "A tutorial on hidden Markov models and selected applications in speech recognition", Proc. IEEE
 * 77(2), 1989, equations (18)–(27) and, for the scaling, (90)–(103); from memory.
 */
export class ScheduleModel {
  readonly sizes: number;
  readonly notes: number;
  private readonly runs: number;
  /** Chance that the size changes, and that it stays, by how long its run has lasted. */
  private readonly changeChance: Float64Array;
  private readonly stayChance: Float64Array;
  private readonly startStamp: Int32Array;
  private readonly endStamp: Int32Array;
  private readonly against: number;
  private readonly forwardTable: Float64Array;
  private readonly scales: Float64Array;
  private readonly backward: Float64Array;
  /** ln of the prior probability that a schedule stays within the list. */
  private readonly logPriorOfList: number;

  constructor(rules: ScheduleRules) {
    const task = 'the odds of wire sizes';
    this.sizes = requirePositive(rules.sizes, 'the number of sizes', task);
    this.notes = requirePositive(rules.notes, 'the number of notes', task);
    requirePositive(rules.changeChance.length, 'the number of chances of a size change', task);
    for (const chance of rules.changeChance) requireWithin(chance, 0, 1, 'the chance of a size change', task);
    // Two lengths at least, so that "a run begins here" is a state of its own.
    const chances = rules.changeChance;
    this.changeChance = Float64Array.from(chances.length === 1 ? [chances[0]!, chances[0]!] : chances);
    this.stayChance = this.changeChance.map((chance) => 1 - chance);
    this.runs = this.changeChance.length;
    this.backward = new Float64Array(this.sizes * this.runs);
    this.against = 1 / requirePositive(rules.stampOdds, 'the odds of a stamp', task);
    this.startStamp = new Int32Array(this.notes).fill(-1);
    this.endStamp = new Int32Array(this.notes).fill(-1);
    this.forwardTable = new Float64Array(this.notes * this.sizes * this.runs);
    this.scales = new Float64Array(this.notes);
    this.logPriorOfList = this.logSum(new Float64Array(this.notes * this.sizes).fill(1));
    for (const { note, rank, says } of rules.stamps) {
      requireWithin(note, 0, this.notes - 1, 'the note of a stamp', task);
      requireWithin(rank, 0, this.sizes - 1, 'the size of a stamp', task);
      (says === 'starts here' ? this.startStamp : this.endStamp)[note] = rank;
    }
  }

  /** What a stamp makes of a state: 1 when there is none or it agrees. */
  private stateFactor(note: number, rank: number, run: number): number {
    const starts = this.startStamp[note]!;
    let factor = 1;
    if (starts >= 0 && !(rank === starts && (run === 0 || note === 0))) factor *= this.against;
    const ends = this.endStamp[note]!;
    if (ends >= 0 && note === this.notes - 1 && rank !== ends) factor *= this.against;
    return factor;
  }

  /** What an "ends here" stamp at a note makes of staying, and of leaving a rank. */
  private stayFactor(note: number): number {
    return this.endStamp[note]! >= 0 ? this.against : 1;
  }
  private leaveFactor(note: number, rank: number): number {
    const ends = this.endStamp[note]!;
    return ends >= 0 && ends !== rank ? this.against : 1;
  }

  /** ln of the probability of the readings, summed over all schedules. Leaves the forward table for `addPosteriors`. */
  logEvidence(likelihood: Float64Array): number {
    return this.logSum(likelihood) - this.logPriorOfList;
  }

  private logSum(likelihood: Float64Array): number {
    const { sizes, notes, runs, forwardTable, stayChance, changeChance } = this;
    const width = sizes * runs;
    forwardTable.fill(0, 0, width);
    for (let rank = 0; rank < sizes; rank += 1) forwardTable[rank * runs + runs - 1] = 1 / sizes;
    let logSum = Math.log(this.weigh(0, likelihood));
    for (let note = 1; note < notes; note += 1) {
      const stayFactor = this.stayFactor(note - 1);
      // What leaves the thicker ranks, carried along under each step law and still looking for a rank to arrive at.
      let nearCarried = 0;
      let farCarried = 0;
      let here = note * width;
      let before = here - width;
      for (let rank = 0; rank < sizes; rank += 1) {
        let mass = forwardTable[before]!;
        let leaving = mass * changeChance[0]!;
        let staying = mass * stayChance[0]! * stayFactor;
        forwardTable[here] = nearCarried + farCarried;
        for (let run = 1; run < runs - 1; run += 1) {
          forwardTable[here + run] = staying;
          mass = forwardTable[before + run]!;
          leaving += mass * changeChance[run]!;
          staying = mass * stayChance[run]! * stayFactor;
        }
        // A run that is as long as is counted keeps what it has, and what grows to that length joins it.
        mass = forwardTable[before + runs - 1]!;
        leaving += mass * changeChance[runs - 1]!;
        forwardTable[here + runs - 1] = staying + mass * stayChance[runs - 1]! * stayFactor;
        if (stayFactor !== 1) leaving *= this.leaveFactor(note - 1, rank);
        nearCarried = nearCarried * NEAR_STEPS.goesOn + leaving * NEAR_STEPS.first;
        farCarried = farCarried * FAR_STEPS.goesOn + leaving * FAR_STEPS.first;
        here += runs;
        before += runs;
      }
      logSum += Math.log(this.weigh(note, likelihood));
    }
    return logSum;
  }

  /** Multiplies what has arrived at a note by its readings and stamps, scales it to the sum 1, and returns the sum. */
  private weigh(note: number, likelihood: Float64Array): number {
    const { sizes, runs, forwardTable } = this;
    const here = note * sizes * runs;
    const end = here + sizes * runs;
    const hasStamp = this.hasStateStamp(note);
    let sum = 0;
    let state = here;
    for (let rank = 0; rank < sizes; rank += 1) {
      const seen = likelihood[note * sizes + rank]!;
      for (let run = 0; run < runs; run += 1, state += 1) {
        let mass = forwardTable[state]! * seen;
        if (hasStamp) mass *= this.stateFactor(note, rank, run);
        forwardTable[state] = mass;
        sum += mass;
      }
    }
    const scale = 1 / sum;
    this.scales[note] = scale;
    for (state = here; state < end; state += 1) {
      const mass = forwardTable[state]! * scale;
      // Numbers below the normal range of a double are slow, and this far down they say nothing.
      forwardTable[state] = mass < 1e-250 ? 0 : mass;
    }
    return sum;
  }

  private hasStateStamp(note: number): boolean {
    return this.startStamp[note]! >= 0 || (note === this.notes - 1 && this.endStamp[note]! >= 0);
  }

  /**
   * Adds `weight` times the posterior chance of each rank at each note to `posterior[note · sizes + rank]`. Needs
   * `logEvidence` to have run on the same table just before.
   */
  addPosteriors(likelihood: Float64Array, weight: number, posterior: Float64Array): void {
    const { sizes, notes, runs, forwardTable, backward } = this;
    backward.fill(1);
    for (let note = notes - 1; note >= 0; note -= 1) {
      if (note < notes - 1) this.stepBack(note, likelihood);
      const row = note * sizes * runs;
      for (let rank = 0; rank < sizes; rank += 1) {
        let mass = 0;
        for (let state = rank * runs; state < (rank + 1) * runs; state += 1)
          mass += forwardTable[row + state]! * backward[state]!;
        posterior[note * sizes + rank]! += weight * mass;
      }
    }
  }

  /** Takes the backward variable from the note after `note` to `note`, in place. */
  private stepBack(note: number, likelihood: Float64Array): void {
    const { sizes, runs, backward, stayChance, changeChance } = this;
    const hasStamp = this.hasStateStamp(note + 1);
    const stayFactor = this.stayFactor(note);
    let nearCarried = 0;
    let farCarried = 0;
    for (let rank = sizes - 1; rank >= 0; rank -= 1) {
      const from = rank * runs;
      const seen = this.scales[note + 1]! * likelihood[(note + 1) * sizes + rank]!;
      for (let run = 0; run < runs; run += 1)
        backward[from + run]! *= seen * (hasStamp ? this.stateFactor(note + 1, rank, run) : 1);
      const changed =
        (nearCarried * NEAR_STEPS.first + farCarried * FAR_STEPS.first) * this.leaveFactor(note, rank);
      const arrived = backward[from]!;
      for (let run = 0; run < runs; run += 1) {
        const longer = backward[from + (run + 1 < runs ? run + 1 : run)]!;
        const worth = stayChance[run]! * stayFactor * longer + changeChance[run]! * changed;
        backward[from + run] = worth < 1e-250 ? 0 : worth;
      }
      nearCarried = nearCarried * NEAR_STEPS.goesOn + arrived;
      farCarried = farCarried * FAR_STEPS.goesOn + arrived;
    }
  }

  /**
   * The single schedule of greatest posterior probability under one table of readings, with the ln of that probability
   * times the evidence (Viterbi; Rabiner 1989, equations (32)–(35)).
   */
  mostProbable(likelihood: Float64Array): { readonly ranks: number[]; readonly logProbability: number } {
    const { sizes } = this;
    const { ranks, worth } = this.bestPath({
      own: likelihood.map(Math.log),
      stay: this.stayChance.map(Math.log),
      leave: this.changeChance.map(Math.log),
      step: Float64Array.from({ length: sizes }, (_, apart) => Math.log(stepChance(apart))),
      factorWorth: Math.log,
    });
    return { ranks, logProbability: worth - Math.log(sizes) - this.logPriorOfList };
  }

  /** The possible schedule with the most notes expected right: the one with the greatest sum of posterior chances. */
  mostNotesRight(posterior: Float64Array): number[] {
    const possible = (chance: number) => (chance > 0 ? 0 : Number.NEGATIVE_INFINITY);
    return this.bestPath({
      own: posterior,
      stay: this.stayChance.map(possible),
      leave: this.changeChance.map(possible),
      step: new Float64Array(this.sizes),
      factorWorth: () => 0,
    }).ranks;
  }

  /** The path of states with the greatest sum of worths, by dynamic programming. */
  private bestPath({ own, stay, leave, step, factorWorth }: PathWorth): { ranks: number[]; worth: number } {
    const { sizes, notes, runs } = this;
    const width = sizes * runs;
    const cameFrom = new Int32Array(notes * width);
    let best = new Float64Array(width);
    let next = new Float64Array(width);
    for (let note = 0; note < notes; note += 1) {
      if (note > 0) {
        next.fill(Number.NEGATIVE_INFINITY);
        const stayWorth = factorWorth(this.stayFactor(note - 1));
        for (let rank = 0; rank < sizes; rank += 1) {
          const leaveWorth = factorWorth(this.leaveFactor(note - 1, rank));
          for (let run = 0; run < runs; run += 1) {
            const from = rank * runs + run;
            const longer = rank * runs + Math.min(run + 1, runs - 1);
            const stayed = best[from]! + stay[run]! + stayWorth;
            if (stayed > next[longer]!) {
              next[longer] = stayed;
              cameFrom[note * width + longer] = from;
            }
            const left = best[from]! + leave[run]! + leaveWorth;
            if (left === Number.NEGATIVE_INFINITY) continue;
            for (let to = rank + 1; to < sizes; to += 1) {
              const arrived = left + step[to - rank]!;
              if (arrived > next[to * runs]!) {
                next[to * runs] = arrived;
                cameFrom[note * width + to * runs] = from;
              }
            }
          }
        }
        [best, next] = [next, best];
      }
      const hasStamp = this.hasStateStamp(note);
      for (let state = 0; state < width; state += 1) {
        const rank = Math.floor(state / runs);
        // A compass begins with a run that is as long as is counted.
        const isOpen = note > 0 || state % runs === runs - 1;
        best[state] = isOpen ? best[state]! + own[note * sizes + rank]! : Number.NEGATIVE_INFINITY;
        if (hasStamp) best[state]! += factorWorth(this.stateFactor(note, rank, state % runs));
      }
    }
    let state = 0;
    for (let other = 1; other < width; other += 1) if (best[other]! > best[state]!) state = other;
    const worth = best[state]!;
    const ranks = new Array<number>(notes);
    for (let note = notes - 1; note >= 0; note -= 1) {
      ranks[note] = Math.floor(state / runs);
      state = cameFrom[note * width + state]!;
    }
    return { ranks, worth };
  }
}

/** What a path of states is worth, as a sum; −∞ forbids. */
interface PathWorth {
  /** By note and rank. */
  readonly own: Float64Array;
  /** By length of the run: of staying in the rank, and of leaving it. */
  readonly stay: Float64Array;
  readonly leave: Float64Array;
  /** By how many ranks thinner a change goes. */
  readonly step: Float64Array;
  /** What the factor of a stamp is worth. */
  readonly factorWorth: (factor: number) => number;
}
