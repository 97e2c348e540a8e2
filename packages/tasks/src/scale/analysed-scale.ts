import { analyseScale, english, hertz, type Language, type ScaleAnalysis } from '@becket/core';
import {
  type Job,
  type ScaleComparison,
  type ScaleNotes,
  scaleComparison,
  scaleNotesOf,
  type WhichScale,
} from '@becket/journal';

/** A scale with what it does. */
export interface AnalysedScale extends ScaleNotes {
  readonly analysis: ScaleAnalysis;
}

/** The same analysis for a proposal, or for the strings as they were put on, as `scaleAsFound` gives for what was found. */
export function analysedScale(
  job: Job,
  which: WhichScale,
  options: Parameters<typeof analyseScale>[1] = {},
  language: Language = english,
): AnalysedScale {
  const scale = scaleNotesOf(job, which, language);
  return { ...scale, analysis: analyseScale(scale.notes, options) };
}

/** Two scales of a job side by side; A4 as the piano is described, 440 Hz before it is. */
export function comparedScales(job: Job, before: AnalysedScale, after: AnalysedScale): ScaleComparison {
  return scaleComparison(before.analysis, after.analysis, hertz(job.piano?.referencePitch_hz ?? 440));
}

/** Whether anything has been measured on new strings yet. */
export const isAnythingStrung = (job: Job): boolean =>
  job.readings.some(
    ({ stage, quantity }) =>
      stage === 'as strung' &&
      ['wire-diameter', 'core-diameter', 'over-all-diameter', 'speaking-length'].includes(quantity),
  );
