/*
 * The wire inference by enumeration: every schedule there is, one after the other. Slow, plain, and written from the
 * statement of the model without any of its recursions.
 */

export interface EnumeratedModel {
  /** Thick to thin, micrometres. */
  readonly diameters: readonly number[];
  /** Readings of each note, micrometres. */
  readonly readings: readonly (readonly number[])[];
  /** Chance that the size changes after a run of 1, 2, … notes. */
  readonly changeChance: readonly number[];
  readonly slipShare: number;
  readonly slipDistance: number;
  readonly stamps?: readonly { note: number; rank: number; says: 'starts here' | 'ends here' }[];
  readonly stampOdds?: number;
}

export interface EnumeratedAnswer {
  readonly logEvidence: number;
  /** [note][rank] */
  readonly odds: readonly (readonly number[])[];
  /** Probability of the most probable schedule, and of any. */
  readonly most: number;
  readonly probabilityOf: (schedule: readonly number[]) => number;
  /** The greatest sum of `odds` along a possible schedule. */
  readonly sumOfOdds: number;
}

/** Every sequence of ranks that never falls (diameters that never grow). */
function* everySchedule(notes: number, sizes: number, from = 0): Generator<number[]> {
  if (notes === 0) {
    yield [];
    return;
  }
  for (let rank = from; rank < sizes; rank += 1)
    for (const rest of everySchedule(notes - 1, sizes, rank)) yield [rank, ...rest];
}

/** Chance that a change goes so many ranks thinner: 85 % geometric with 0.12, 15 % with 0.6. */
const stepChance = (apart: number) => 0.85 * 0.88 * 0.12 ** (apart - 1) + 0.15 * 0.4 * 0.6 ** (apart - 1);

/** Prior of a schedule before it is known to stay in the list; its first run has lasted long already. */
function scheduleChance(schedule: readonly number[], { diameters, changeChance }: EnumeratedModel): number {
  let chance = 1 / diameters.length;
  let run = Number.POSITIVE_INFINITY;
  for (let note = 1; note < schedule.length; note += 1) {
    const [from, to] = [schedule[note - 1]!, schedule[note]!];
    const change = changeChance[Math.min(run, changeChance.length) - 1]!;
    chance *= from === to ? 1 - change : change * stepChance(to - from);
    run = from === to ? run + 1 : 1;
  }
  return chance;
}

const normal = (distance: number, deviation: number) =>
  Math.exp(-0.5 * (distance / deviation) ** 2) / (deviation * Math.sqrt(2 * Math.PI));

/**
 * Probability of the readings of one note, its own wear summed out where there are several: to 16 deviations, since three
 * readings that agree far from a size put the wear as far out as 8.
 */
function noteChance(
  readings: readonly number[],
  diameter: number,
  bias: number,
  scatter: number,
  model: EnumeratedModel,
) {
  const { slipShare, slipDistance } = model;
  const slip = (y: number) =>
    slipShare / (Math.PI * slipDistance * (1 + ((y - diameter) / slipDistance) ** 2));
  if (readings.length === 0) return 1;
  if (readings.length === 1)
    return (1 - slipShare) * normal(readings[0]! - diameter - bias, scatter) + slip(readings[0]!);
  const own = scatter * Math.SQRT1_2;
  let sum = 0;
  const [reach, steps] = [16, 641];
  for (let step = 0; step < steps; step += 1) {
    const wear = (-reach + (2 * reach * step) / (steps - 1)) * own;
    const product = readings.reduce(
      (chance, y) => chance * ((1 - slipShare) * normal(y - diameter - bias - wear, own) + slip(y)),
      1,
    );
    sum += normal(wear, own) * product * own * ((2 * reach) / (steps - 1));
  }
  return sum;
}

/** Everything about one bias and scatter. */
export function enumeratedInference(model: EnumeratedModel, bias: number, scatter: number): EnumeratedAnswer {
  const { readings, diameters, stamps = [], stampOdds = 1 } = model;
  const notes = readings.length;
  const seen = readings.map((ofNote) =>
    diameters.map((diameter) => noteChance(ofNote, diameter, bias, scatter, model)),
  );
  const sums = readings.map(() => diameters.map(() => 0));
  let prior = 0;
  let all = 0;
  let most = Number.NEGATIVE_INFINITY;
  const chances = new Map<string, number>();
  const possible: number[][] = [];
  for (const schedule of everySchedule(notes, diameters.length)) {
    let chance = scheduleChance(schedule, model);
    prior += chance;
    if (chance > 0) possible.push(schedule);
    schedule.forEach((rank, note) => {
      chance *= seen[note]![rank]!;
    });
    for (const { note, rank, says } of stamps) {
      const neighbour = says === 'starts here' ? schedule[note - 1] : schedule[note + 1];
      if (!(schedule[note] === rank && neighbour !== rank)) chance /= stampOdds;
    }
    all += chance;
    schedule.forEach((rank, note) => {
      sums[note]![rank]! += chance;
    });
    chances.set(schedule.join(), chance);
    most = Math.max(most, chance);
  }
  const odds = sums.map((ofNote) => ofNote.map((sum) => sum / all));
  const worthOf = (schedule: readonly number[]) =>
    schedule.reduce((sum, rank, note) => sum + odds[note]![rank]!, 0);
  const sumOfOdds = Math.max(...possible.map(worthOf));
  return {
    logEvidence: Math.log(all / prior),
    odds,
    most: most / all,
    probabilityOf: (schedule) => chances.get(schedule.join())! / all,
    sumOfOdds,
  };
}
