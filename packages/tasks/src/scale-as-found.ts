import { analyseScale, type ScaleAnalysis } from '@becket/core';
import { type AsFoundNote, asFoundRecord, type Job } from '@becket/journal';

/** The scale as it was found: what can be computed, and the notes that cannot be yet, each with what it lacks. */
export interface ScaleAsFound {
  readonly analysis: ScaleAnalysis;
  readonly notComputed: readonly AsFoundNote[];
}

/** Analyses the scale that the readings describe. */
export function scaleAsFound(job: Job, options: Parameters<typeof analyseScale>[1] = {}): ScaleAsFound {
  const record = asFoundRecord(job);
  return {
    analysis: analyseScale(record.scaleNotes, options),
    notComputed: record.notes.filter((note) => note.string === undefined || note.strings === undefined),
  };
}
