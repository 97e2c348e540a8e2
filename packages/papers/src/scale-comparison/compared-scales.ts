import { analyseScale, hertz, type ScaleAnalysis } from '@becket/core';
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
  readonly before: ScaleAnalysis;
  readonly after: ScaleAnalysis;
  readonly comparison: ScaleComparison;
  readonly unevenness: { readonly before: number | undefined; readonly after: number | undefined };
}

/** Undefined while there is no proposal, or nothing of the scale as found can be computed. */
export function comparedScales(job: Job): ComparedScales | undefined {
  const chosen = chosenScaleOf(job);
  const isThere = job.proposals.some(({ entry }) => entry === chosen?.which);
  const which = chosen !== undefined && isThere ? chosen.which : job.proposals.at(-1)?.entry;
  if (which === undefined) return undefined;
  const [found, other] = [scaleNotesOf(job, 'as found'), scaleNotesOf(job, which)];
  if (found.notes.length === 0) return undefined;
  const [before, after] = [analyseScale(found.notes), analyseScale(other.notes)];
  return {
    name: other.name,
    chosen,
    before,
    after,
    comparison: scaleComparison(before, after, hertz(job.piano?.referencePitch_hz ?? 440)),
    unevenness: { before: tensionUnevenness(before), after: tensionUnevenness(after) },
  };
}
