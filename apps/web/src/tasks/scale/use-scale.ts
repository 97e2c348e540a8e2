import type { ScaleAnalysis } from '@becket/core';
import type { AsFoundRecord, Job } from '@becket/journal';
import { type ScaleAsFound, scaleAsFound } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { analyseAway } from '../../worker/scale-away.ts';

/** The scale as found: the figures at once, and with their uncertainties as soon as the worker has them. */
export function useScaleAsFound(
  job: Job,
  record: AsFoundRecord,
): ScaleAsFound & { readonly isFinished: boolean } {
  const quick = useMemo(() => scaleAsFound(job, { uncertainties: 'left out' }), [job]);
  const [full, setFull] = useState<{ of: AsFoundRecord; analysis: ScaleAnalysis }>();
  useEffect(() => analyseAway(record.scaleNotes, (analysis) => setFull({ of: record, analysis })), [record]);
  const isFinished = full?.of === record;
  return { ...quick, analysis: isFinished ? full.analysis : quick.analysis, isFinished };
}
