import { inMicrometres } from '../units/index.ts';
import { type PreparedInference, preparedInference, type WireInferenceProblem } from './wire-inference.ts';
import { normalNodes } from './wire-reading-likelihood.ts';

/** What one further reading would be worth. */
export interface NextWireReading {
  /** Index of the note to read, 0 = first. */
  readonly note: number;
  /** Where on the wire: anywhere along it, or where nothing could wear it (at the coil, under the felt). */
  readonly at: 'anywhere' | 'unworn';
  /** Notes expected wrong now, and on average once this reading is known. */
  readonly expectedWrongNow: number;
  readonly expectedWrongAfter: number;
  /** Why this note: the two most probable sizes there, index into `diameters`, with their probabilities. */
  readonly sizes: readonly { readonly size: number; readonly odds: number }[];
  readonly hasReading: boolean;
}

export interface NextWireReadingOptions {
  /** Whether a reading of unworn wire can be had; it costs a look under the felt or at the coil. */
  readonly canReadUnworn?: boolean;
  /** How many notes, the most doubtful first, are weighed as candidates. */
  readonly candidates?: number;
}

/**
 * Which string to measure next: the reading that leaves the fewest notes wrong, on average over what it may show.
 *
 *     E[wrong after] = Σ_y P(y) · Σ_j (1 − max_l P(size_j = l | readings, y))
 *
 * P(y) is the mixture over the sizes the note may have and over bias and scatter as far as they are known; y is summed
 * over seven values a size. A reading where nothing wore the wire also tells wear from a thinner size, and where sizes
 * could all be shifted by a step it is worth most.
 *
 * Each note counts once, whether it has been read or not. "Wrong" here takes each note by itself at its most probable size.
 *
 * @returns candidates, the most useful first; empty when no note is in doubt by more than 1 in 1000
 *
 * Throws: as `inferWireSizes`.
 * Source: expected value of sample information, H. Raiffa, R. Schlaifer, *Applied Statistical Decision Theory*, 1961; from
 * memory.
 */
export function nextWireReadings(
  problem: WireInferenceProblem,
  { canReadUnworn = true, candidates = 8 }: NextWireReadingOptions = {},
): NextWireReading[] {
  const parts = preparedInference(problem);
  const worlds = worldsOf(parts);
  const { notes, sizes } = parts.model;
  const posterior = new Float64Array(notes * sizes);
  for (const { marginals, weight } of worlds)
    for (let index = 0; index < posterior.length; index += 1) posterior[index]! += weight * marginals[index]!;
  const wrongAt = (note: number) => 1 - Math.max(...posterior.subarray(note * sizes, (note + 1) * sizes));
  const doubtful = Array.from({ length: notes }, (_, note) => note)
    .filter((note) => wrongAt(note) > 0.001)
    .sort((a, b) => wrongAt(b) - wrongAt(a) || a - b)
    .slice(0, candidates);
  const expectedWrongNow = Array.from({ length: notes }, (_, note) => wrongAt(note)).reduce(
    (a, b) => a + b,
    0,
  );

  const ways = canReadUnworn ? (['anywhere', 'unworn'] as const) : (['anywhere'] as const);
  const answers = doubtful.flatMap((note) => {
    const joint = jointWith(note, parts, worlds, posterior);
    const likely = [...joint.ranks]
      .map((rank) => ({ size: parts.order[rank]![0]!, odds: posterior[note * sizes + rank]! }))
      .sort((a, b) => b.odds - a.odds)
      .slice(0, 2);
    return ways.map(
      (at): NextWireReading => ({
        note,
        at,
        expectedWrongNow,
        expectedWrongAfter: expectedWrongAfter(joint, parts, at),
        sizes: likely,
        hasReading: problem.notes[note]!.length > 0,
      }),
    );
  });
  // Of two that help alike, to a twentieth of a note, the one that is easier to reach.
  const worth = (reading: NextWireReading) => Math.round(reading.expectedWrongAfter * 20);
  return answers.sort(
    (a, b) =>
      worth(a) - worth(b) ||
      Number(a.at === 'unworn') - Number(b.at === 'unworn') ||
      a.expectedWrongAfter - b.expectedWrongAfter,
  );
}

/**
 * The advice as one sentence.
 *
 * @param names.note  the name of a note by its index: 'C#4'
 * @param names.size  the name of a size by its index into `diameters`: '15½'
 */
export function nextWireReadingSentence(
  reading: NextWireReading,
  names: { readonly note: (note: number) => string; readonly size: (size: number) => string },
): string {
  const { note, at, sizes, hasReading, expectedWrongNow, expectedWrongAfter } = reading;
  const where = at === 'unworn' ? ' where nothing wore the wire (at the coil or under the felt)' : '';
  const why = hasReading ? 'its readings leave a doubt' : 'it has no reading';
  const fits = sizes
    .map(({ size, odds }) => `${names.size(size)} (${Math.round(100 * odds)} %)`)
    .join(' or ');
  return `Measure ${names.note(note)} next${where}: ${why}, ${fits} fits; of ${expectedWrongNow.toFixed(1)} notes expected wrong about ${expectedWrongAfter.toFixed(1)} will be left.`;
}

/** One bias and scatter that may be true. */
interface World {
  readonly bias: number;
  readonly scatter: number;
  readonly weight: number;
  /** Chance of each size at each note, note · sizes + rank. */
  readonly marginals: Float64Array;
}

/** Worlds of less than one in fifty of the best are left out: this is advice, not a figure. */
const LEAST_WORLD = 0.02;

function worldsOf({ cells, likelihood, model }: PreparedInference): World[] {
  const kept = cells.kept.filter((cell) => cell.weight >= LEAST_WORLD * cells.best.weight);
  const sum = kept.reduce((total, cell) => total + cell.weight, 0);
  return kept.map(({ bias, scatter, weight }) => {
    const marginals = new Float64Array(model.notes * model.sizes);
    const table = likelihood.fill(bias, scatter);
    model.logEvidence(table);
    model.addPosteriors(table, 1, marginals);
    return { bias, scatter, weight: weight / sum, marginals };
  });
}

/** For each world and each size that a note may have: the chance of it, and the odds of all notes if it were so. */
interface Joint {
  readonly ranks: readonly number[];
  readonly branches: readonly {
    readonly world: World;
    readonly rank: number;
    readonly weight: number;
    readonly marginals: Float64Array;
  }[];
}

function jointWith(
  note: number,
  { likelihood, model, order }: PreparedInference,
  worlds: readonly World[],
  posterior: Float64Array,
): Joint {
  const { sizes } = model;
  const ranks = order.map((_, rank) => rank).filter((rank) => posterior[note * sizes + rank]! > 0.01);
  const branches = worlds.flatMap((world) =>
    ranks.flatMap((rank) => {
      const chance = world.marginals[note * sizes + rank]!;
      if (chance < 1e-4) return [];
      const table = likelihood.fill(world.bias, world.scatter);
      // Clamp the note to this size: what the others are, if it were so.
      const own = table.slice(note * sizes, (note + 1) * sizes);
      for (let other = 0; other < sizes; other += 1) if (other !== rank) table[note * sizes + other] = 0;
      const marginals = new Float64Array(model.notes * sizes);
      model.logEvidence(table);
      model.addPosteriors(table, 1, marginals);
      table.set(own, note * sizes);
      return [{ world, rank, weight: world.weight * chance, marginals }];
    }),
  );
  const sum = branches.reduce((total, branch) => total + branch.weight, 0);
  return { ranks, branches: branches.map((branch) => ({ ...branch, weight: branch.weight / sum })) };
}

/** What a reading may show, a standard deviation apart. */
const SHOWN_NODES = normalNodes(1);

function expectedWrongAfter(
  { ranks, branches }: Joint,
  { model, rules, diametersThickToThin }: PreparedInference,
  at: NextWireReading['at'],
): number {
  const { notes, sizes } = model;
  const isUnworn = at === 'unworn';
  const lawOf = ({ bias, scatter }: World, rank: number) => ({
    mean: diametersThickToThin[rank]! + (isUnworn ? 0 : bias),
    // An unworn reading has only the hand and the zero in it; half of the variance of the others is wear.
    deviation: isUnworn ? Math.hypot(scatter * Math.SQRT1_2, inMicrometres(rules.zeroUncertainty)) : scatter,
  });
  const slip = rules.slipShare;
  const densityOf = (y: number, world: World, rank: number) => {
    const { mean, deviation } = lawOf(world, rank);
    const distance = (y - mean) / deviation;
    const apart = (y - diametersThickToThin[rank]!) / inMicrometres(rules.slipDistance);
    const wide = slip / (Math.PI * inMicrometres(rules.slipDistance) * (1 + apart * apart));
    return ((1 - slip) * Math.exp(-0.5 * distance * distance)) / (deviation * Math.sqrt(2 * Math.PI)) + wide;
  };
  const mixed = new Float64Array(notes * sizes);
  let expected = 0;
  for (const rank of ranks) {
    const ofRank = branches.filter((branch) => branch.rank === rank);
    const chance = ofRank.reduce((sum, branch) => sum + branch.weight, 0);
    if (chance === 0) continue;
    // One law for what this size would show, over all worlds.
    const mean =
      ofRank.reduce((sum, { world, weight }) => sum + weight * lawOf(world, rank).mean, 0) / chance;
    const variance =
      ofRank.reduce((sum, { world, weight }) => {
        const law = lawOf(world, rank);
        return sum + weight * (law.deviation ** 2 + (law.mean - mean) ** 2);
      }, 0) / chance;
    for (const [node, share] of SHOWN_NODES) {
      const y = mean + node * Math.sqrt(variance);
      mixed.fill(0);
      let total = 0;
      for (const { world, rank: other, weight, marginals } of branches) {
        const joint = weight * densityOf(y, world, other);
        total += joint;
        for (let index = 0; index < mixed.length; index += 1) mixed[index]! += joint * marginals[index]!;
      }
      let right = 0;
      for (let note = 0; note < notes; note += 1) {
        let most = 0;
        for (let other = 0; other < sizes; other += 1) most = Math.max(most, mixed[note * sizes + other]!);
        right += most / total;
      }
      expected += chance * share * (notes - right);
    }
  }
  return expected;
}
