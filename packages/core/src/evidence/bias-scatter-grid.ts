/*
 * The two quantities that all readings of a piano share and nobody knows: their common bias and their scatter. They are
 * summed out over a grid; only the part of it that matters is worked out. Micrometres.
 */

/** What is thought of bias and scatter before a reading is seen: a normal and a log-normal law. */
export interface BiasScatterPrior {
  readonly biasMean: number;
  readonly biasDeviation: number;
  readonly scatterMedian: number;
  readonly scatterLogDeviation: number;
  readonly readingCount: number;
}

/** One point of the grid over bias and scatter, micrometres, with its posterior weight. */
export interface Cell {
  readonly bias: number;
  readonly scatter: number;
  readonly weight: number;
}
export interface WeighedCells {
  readonly kept: readonly Cell[];
  readonly best: Cell;
  readonly logEvidence: number;
}

/** A cell less than e⁻⁹ of the best is left out: of a bell over two quantities that is about 1 part in 10 000. */
const LOG_CUT = 9;

/** The part of the grid over bias and scatter that matters, each cell with its posterior weight. */
export function weighedCells({
  grid,
  logEvidence,
}: {
  readonly grid: BiasScatterGrid;
  /** ln of the probability of all readings at a bias and a scatter. */
  readonly logEvidence: (bias: number, scatter: number) => number;
}): WeighedCells {
  const values = new Map<number, number>();
  const width = 2 * grid.scatterReach + 1;
  const nameOf = (i: number, j: number) => (i + grid.biasReach) * width + j + grid.scatterReach;
  const worthOf = (i: number, j: number): number => {
    if (Math.abs(i) > grid.biasReach || Math.abs(j) > grid.scatterReach) return Number.NEGATIVE_INFINITY;
    const name = nameOf(i, j);
    let value = values.get(name);
    if (value === undefined) {
      value = grid.logPrior(i, j) + logEvidence(grid.bias(i), grid.scatter(j));
      values.set(name, value);
    }
    return value;
  };
  // Biases a whole step apart are separate hills. Every second bias at the median scatter finds each of them; from the
  // highest the scatter is climbed to its best, and there the spreading starts, from every hill.
  const seeds = Array.from({ length: grid.biasReach + 1 }, (_, index) => 2 * index - grid.biasReach);
  const isHill = (i: number) => worthOf(i, 0) >= Math.max(worthOf(i - 2, 0), worthOf(i + 2, 0));
  const hills = seeds.filter(isHill);
  const highest = hills.reduce((a, b) => (worthOf(b, 0) > worthOf(a, 0) ? b : a));
  let j = 0;
  while (worthOf(highest, j + 1) > worthOf(highest, j)) j += 1;
  while (worthOf(highest, j - 1) > worthOf(highest, j)) j -= 1;
  const open: [i: number, j: number, value: number][] = hills.map((i) => [i, j, worthOf(i, j)]);
  const seen = new Set(open.map(([i]) => nameOf(i, j)));
  let best = Math.max(...open.map(([, , value]) => value));
  for (;;) {
    let next = -1;
    for (let index = 0; index < open.length; index += 1)
      if (open[index]![2] > (next < 0 ? best - LOG_CUT : open[next]![2])) next = index;
    if (next < 0) break;
    const [[fromI, fromJ]] = open.splice(next, 1) as [[number, number, number]];
    for (const [i, k] of [
      [fromI - 1, fromJ],
      [fromI + 1, fromJ],
      [fromI, fromJ - 1],
      [fromI, fromJ + 1],
    ] as const) {
      const value = worthOf(i, k);
      if (value === Number.NEGATIVE_INFINITY || seen.has(nameOf(i, k))) continue;
      seen.add(nameOf(i, k));
      open.push([i, k, value]);
      if (value > best) best = value;
    }
  }
  let sum = 0;
  for (const value of values.values()) sum += Math.exp(value - best);
  const cells = [...values].flatMap(([name, value]): Cell[] => {
    if (value < best - LOG_CUT) return [];
    const i = Math.floor(name / width) - grid.biasReach;
    const k = (name % width) - grid.scatterReach;
    return [{ bias: grid.bias(i), scatter: grid.scatter(k), weight: Math.exp(value - best) }];
  });
  const kept = cells.reduce((total, cell) => total + cell.weight, 0);
  const normal = cells.map((cell) => ({ ...cell, weight: cell.weight / kept }));
  return {
    kept: normal,
    best: normal.reduce((a, b) => (b.weight > a.weight ? b : a)),
    logEvidence: best + Math.log(sum),
  };
}

export interface BiasScatterGrid {
  readonly biasReach: number;
  readonly scatterReach: number;
  readonly bias: (i: number) => number;
  readonly scatter: (j: number) => number;
  /** ln of the prior of a cell; all cells together make 1. */
  readonly logPrior: (i: number, j: number) => number;
}

/**
 * The grid follows what the readings can tell: n of them fix the bias to about σ/√n and the scatter to 1/√(2n) of itself,
 * and steps of twice that size still integrate a bell to about 1 %.
 */
export function biasScatterGrid({
  biasMean,
  biasDeviation,
  scatterMedian,
  scatterLogDeviation,
  readingCount,
}: BiasScatterPrior): BiasScatterGrid {
  const root = Math.sqrt(Math.max(1, readingCount));
  const biasStep = Math.min(biasDeviation / 2, Math.max(1, (1.8 * scatterMedian) / root));
  const logStep = Math.min(scatterLogDeviation, Math.max(0.12, 1.4 / root));
  const biasReach = biasDeviation === 0 ? 0 : Math.ceil((4 * biasDeviation) / biasStep);
  const scatterReach = scatterLogDeviation === 0 ? 0 : Math.ceil((3 * scatterLogDeviation) / logStep);
  const biasTerm = (i: number) => (biasDeviation === 0 ? 0 : -0.5 * ((i * biasStep) / biasDeviation) ** 2);
  const scatterTerm = (j: number) =>
    scatterLogDeviation === 0 ? 0 : -0.5 * ((j * logStep) / scatterLogDeviation) ** 2;
  const total = (reach: number, term: (k: number) => number) => {
    let sum = 0;
    for (let k = -reach; k <= reach; k += 1) sum += Math.exp(term(k));
    return Math.log(sum);
  };
  const normaliser = total(biasReach, biasTerm) + total(scatterReach, scatterTerm);
  return {
    biasReach,
    scatterReach,
    bias: (i) => biasMean + i * biasStep,
    scatter: (j) => scatterMedian * Math.exp(j * logStep),
    logPrior: (i, j) => biasTerm(i) + scatterTerm(j) - normaliser,
  };
}
