import {
  type FoundSchedule,
  isFound,
  type NoSchedule,
  ScheduleSearch,
  type SearchRules,
  type SearchStage,
} from './schedule-search.ts';

/** Candidates a note that are left for a first and a second schedule, only to know what the cheapest costs at most. */
const FIRST_LEFT = 32;
const SECOND_LEFT = 64;
/** Pairs of neighbours, over all notes, below which the search as it is takes less time than to prepare a quicker one. */
const FEW_PAIRS = 20_000;
/** More than sums of one schedule differ by when they are added up in another order. */
const ROUNDING = 1e-9;

/**
 * The cheapest schedule.
 *
 * The search of `ScheduleSearch`, kept short in two ways that lose nothing. A schedule that is known, and one that a search
 * over a part of the candidates finds, cost at least what the cheapest costs, so whatever costs more on the way is dropped. And
 * it begins in the treble: there a note has few candidates and most of the cost cannot be helped, so that little is left to
 * spend when it comes to the bass, where a note has hundreds.
 *
 * @param stages    bass to treble
 * @param rules     what a schedule must keep
 * @param known     schedules of the same candidates, cheap under other weights: the nearer, the quicker
 * @param fewPairs  pairs of neighbours over all notes below which nothing is made ready: it would take longer than the search
 *
 * Exact. Of schedules that cost alike to the last digits any may be found.
 */
export function cheapestSchedule(
  stages: readonly SearchStage[],
  rules: SearchRules,
  known: readonly (readonly number[])[] = [],
  fewPairs = FEW_PAIRS,
): FoundSchedule | NoSchedule {
  const pairs = stages.reduce((sum, { count }, note) => sum + count * (stages[note - 1]?.count ?? 1), 0);
  if (pairs >= fewPairs) {
    const mirrored = mirroredStages(stages);
    const most = Math.min(...known.map((choices) => scheduleCost(stages, rules, choices)));
    const below = costOfSome(mirrored, rules, Number.isFinite(most) ? aLittleMore(most) : undefined);
    if (below !== undefined) {
      const found = new ScheduleSearch(mirrored, rules, { isMirrored: true, below }).cheapest();
      if (isFound(found)) return { ...found, choices: [...found.choices].reverse() };
    }
  }
  return new ScheduleSearch(stages, rules, {}).cheapest();
}

/** What one schedule costs, by the search's own steps; Infinity when it breaks a rule. */
export function scheduleCost(
  stages: readonly SearchStage[],
  rules: SearchRules,
  choices: readonly number[],
): number {
  const only = stages.map((stage, note) => withOnly(stage, [choices[note]!]));
  const found = new ScheduleSearch(only, rules, {}).cheapest();
  return isFound(found) ? found.cost : Number.POSITIVE_INFINITY;
}

/** A little more than some schedule costs; undefined when a part of the candidates has none. */
function costOfSome(
  mirrored: readonly SearchStage[],
  rules: SearchRules,
  known: number | undefined,
): number | undefined {
  let below = known;
  for (const left of known === undefined ? [FIRST_LEFT, SECOND_LEFT] : [SECOND_LEFT]) {
    const some = new ScheduleSearch(
      mirrored.map((stage) => withFewer(stage, left)),
      rules,
      { isMirrored: true, ...(below === undefined ? {} : { below }) },
    ).cheapest();
    if (isFound(some)) below = aLittleMore(some.cost);
  }
  return below;
}

const aLittleMore = (cost: number): number => cost + ROUNDING * (Math.abs(cost) + ROUNDING);

/** Treble to bass: a section begins where it ended. */
function mirroredStages(stages: readonly SearchStage[]): SearchStage[] {
  return stages
    .map((stage, note) => ({ ...stage, beginsSection: stages[note + 1]?.beginsSection ?? false }))
    .reverse();
}

/** So many candidates, evenly among all, and the one that costs least by itself. */
function withFewer(stage: SearchStage, left: number): SearchStage {
  if (stage.count <= left) return stage;
  let cheapest = 0;
  for (let candidate = 1; candidate < stage.count; candidate += 1)
    if (stage.own[candidate]! < stage.own[cheapest]!) cheapest = candidate;
  const kept = Array.from({ length: left }, (_, index) => Math.floor(((index + 1) * stage.count) / left) - 1);
  const places = [...new Set([...kept, cheapest])].sort((a, b) => a - b);
  return withOnly(stage, places);
}

function withOnly(stage: SearchStage, places: readonly number[]): SearchStage {
  return {
    ...stage,
    count: places.length,
    logTension: Float64Array.from(places, (place) => stage.logTension[place]!),
    logInharmonicity: Float64Array.from(places, (place) => stage.logInharmonicity[place]!),
    own: Float64Array.from(places, (place) => stage.own[place]!),
    kind: Uint8Array.from(places, (place) => stage.kind[place]!),
    size: Int32Array.from(places, (place) => stage.size[place]!),
  };
}
