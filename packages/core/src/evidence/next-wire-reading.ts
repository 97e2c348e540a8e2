import { english, type Language } from '../words/index.ts';
import { type PreparedInference, preparedInference, type WireInferenceProblem } from './wire-inference.ts';

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
 * P(y) is the mixture over the sizes the note may have and over bias and scatter as far as they are known, given what has
 * been read of the note already: a second reading of the same wire shares its wear, and says less. y is summed in steps of
 * 2.5 µm. A reading where nothing wore the wire also tells wear from a thinner size, and where sizes
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
        expectedWrongAfter: expectedWrongAfter(joint, parts, { at, wrongNow: expectedWrongNow, posterior }),
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
 * @param language    of the sentence
 */
export function nextWireReadingSentence(
  reading: NextWireReading,
  names: { readonly note: (note: number) => string; readonly size: (size: number) => string },
  { say, fixed, list }: Language = english,
): string {
  const { note, at, sizes, hasReading, expectedWrongNow, expectedWrongAfter } = reading;
  const fits = sizes.map(({ size, odds }) => `${names.size(size)} (${Math.round(100 * odds)} %)`);
  return say(
    'Measure {note} next{at, select, unworn { where nothing wore the wire (at the coil or under the felt)} other {}}: {why, select, doubt {its readings leave a doubt} other {it has no reading}}, {fits} fits; of {now} notes expected wrong about {after} will be left.',
    {
      note: names.note(note),
      at,
      why: hasReading ? 'doubt' : 'none',
      fits: list(fits, 'or'),
      now: fixed(expectedWrongNow, 1),
      after: fixed(expectedWrongAfter, 1),
    },
  );
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
  readonly note: number;
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
  return { note, ranks, branches: branches.map((branch) => ({ ...branch, weight: branch.weight / sum })) };
}

/** Readings are imagined this many micrometres apart, and this many standard deviations beyond the sizes in question. */
const SHOWN_STEP = 2.5;
const SHOWN_REACH = 4;

/**
 * Expected number of wrong notes once the note of `joint` has been read: the chance of each y with the odds that it would
 * leave, summed over y. What is missing of all chances is a slip further off, which would tell nothing.
 */
function expectedWrongAfter(
  { note, ranks, branches }: Joint,
  { model, readings, likelihoodOf, diametersThickToThin }: PreparedInference,
  {
    at,
    wrongNow,
    posterior,
  }: {
    readonly at: NextWireReading['at'];
    readonly wrongNow: number;
    readonly posterior: Float64Array;
  },
): number {
  const { notes, sizes } = model;
  const isUnworn = at === 'unworn';
  const biases = branches.map(({ world }) => (isUnworn ? 0 : world.bias));
  const reach = SHOWN_REACH * Math.max(...branches.map(({ world }) => world.scatter));
  const thickest = diametersThickToThin[Math.min(...ranks)]! + Math.max(...biases) + reach;
  const thinnest = diametersThickToThin[Math.max(...ranks)]! + Math.min(...biases) - reach;
  const own = readings[note]!;
  const before = likelihoodOf([own]);
  const seenBefore = branches.map(({ world, rank }) => before.fill(world.bias, world.scatter)[rank]!);
  // Only the sizes that a note may have at all, as places in a table of note · sizes + rank.
  const places = Array.from(posterior.keys()).filter((place) => posterior[place]! > 1e-3);
  const mixed = new Float64Array(notes * sizes);
  let chanceOfAll = 0;
  let right = 0;
  for (let y = thinnest; y <= thickest; y += SHOWN_STEP) {
    const after = likelihoodOf([[...own, { diameter: y, standardUncertainty: 0, isUnworn }]]);
    mixed.fill(0);
    branches.forEach(({ world, rank, weight, marginals }, index) => {
      const density = after.fill(world.bias, world.scatter)[rank]! / seenBefore[index]!;
      const joint = weight * density * SHOWN_STEP;
      chanceOfAll += joint;
      for (const place of places) mixed[place]! += joint * marginals[place]!;
    });
    const most = new Float64Array(notes);
    for (const place of places) {
      const other = Math.floor(place / sizes);
      most[other] = Math.max(most[other]!, mixed[place]!);
    }
    right += most.reduce((sum, chance) => sum + chance, 0);
  }
  return chanceOfAll * notes - right + Math.max(0, 1 - chanceOfAll) * wrongNow;
}
