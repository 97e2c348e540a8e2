import {
  analyseScale,
  hertz,
  type Language,
  PUBLISHED_STRENGTH_TABLES,
  type ScaleAnalysis,
  type WireStrengthTable,
} from '@becket/core';
import {
  type ChosenScale,
  chosenScaleOf,
  type Job,
  type ScaleComparison,
  scaleComparison,
  scaleNotesOf,
  tensionUnevenness,
} from '@becket/journal';

/** What the paper compares: the scale as found with the one that was chosen, or is the latest proposed. */
export interface ComparedScales {
  readonly name: string;
  readonly chosen: ChosenScale | undefined;
  /** What spoke against it when it was computed; undefined where nobody looked. */
  readonly saidAgainst: readonly string[] | undefined;
  /** How far it is proved to be the best: see the entry `scale-proposed`; undefined where nothing was proved. */
  readonly mostBetter: number | undefined;
  readonly before: ScaleAnalysis;
  readonly after: ScaleAnalysis;
  readonly comparison: ScaleComparison;
  readonly unevenness: { readonly before: number | undefined; readonly after: number | undefined };
}

/** Undefined while there is no proposal, or nothing of the scale as found can be computed. */
export function comparedScales(job: Job, language: Language): ComparedScales | undefined {
  const chosen = chosenScaleOf(job, language);
  const isThere = job.proposals.some(({ entry }) => entry === chosen?.which);
  const which = chosen !== undefined && isThere ? chosen.which : job.proposals.at(-1)?.entry;
  if (which === undefined) return undefined;
  const proposal = job.proposals.find(({ entry }) => entry === which);
  const [found, other] = [scaleNotesOf(job, 'as found', language), scaleNotesOf(job, which, language)];
  if (found.notes.length === 0) return undefined;
  const options = { strengthTable: tableOf(proposal?.strengthTable) };
  const [before, after] = [analyseScale(found.notes, options), analyseScale(other.notes, options)];
  return {
    name: other.name,
    chosen,
    saidAgainst: proposal?.saidAgainst,
    mostBetter: proposal?.mostBetter,
    before,
    after,
    comparison: scaleComparison(before, after, hertz(job.piano?.referencePitch_hz ?? 440)),
    unevenness: { before: tensionUnevenness(before), after: tensionUnevenness(after) },
  };
}

/** The table that the proposal was planned with, so that both scales are judged by it; the usual one where it names none. */
const tableOf = (name: string | undefined): WireStrengthTable | undefined =>
  PUBLISHED_STRENGTH_TABLES.find((table) => table.name === name);
