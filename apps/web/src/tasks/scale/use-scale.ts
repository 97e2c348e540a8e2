import type { AsFoundRecord, Job } from '@becket/journal';
import { type ScaleAsFound, scaleAsFound } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { analyseAway, type ScaleAnswer } from '../../worker/scale-away.ts';

export interface ScaleOnScreen extends ScaleAsFound {
  /** Whether the figures carry their uncertainties yet. */
  readonly uncertainties: 'on the way' | 'there' | 'cannot be had';
}

/** The scale as found: the figures at once, and with their uncertainties as soon as the worker has them. */
export function useScaleAsFound(job: Job, record: AsFoundRecord): ScaleOnScreen {
  const quick = useMemo(() => scaleAsFound(job, { uncertainties: 'left out' }), [job]);
  const [answered, setAnswered] = useState<{ of: AsFoundRecord; answer: ScaleAnswer }>();
  useEffect(() => analyseAway(record.scaleNotes, (answer) => setAnswered({ of: record, answer })), [record]);
  if (answered?.of !== record) return { ...quick, uncertainties: 'on the way' };
  const { analysis } = answered.answer;
  return analysis === undefined
    ? { ...quick, uncertainties: 'cannot be had' }
    : { ...quick, analysis, uncertainties: 'there' };
}
