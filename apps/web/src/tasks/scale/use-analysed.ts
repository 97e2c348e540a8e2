import { strengthTableNamed } from '@becket/core';
import type { Job, WhichScale } from '@becket/journal';
import { type AnalysedScale, analysedScale } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { analyseAway, type ScaleAnswer } from '../../worker/scale-away.ts';

/** A scale of the job: the figures at once, with their uncertainties as soon as the worker has them. */
export function useAnalysed(job: Job, which: WhichScale, strengthTable?: string): AnalysedScale {
  const quick = useFigures(job, which, strengthTable);
  const [answered, setAnswered] = useState<{ of: AnalysedScale; answer: ScaleAnswer }>();
  useEffect(
    () => analyseAway(quick.notes, (answer) => setAnswered({ of: quick, answer }), strengthTable),
    [quick, strengthTable],
  );
  const analysis = answered?.of === quick ? answered.answer.analysis : undefined;
  return useMemo(() => (analysis === undefined ? quick : { ...quick, analysis }), [quick, analysis]);
}

/** A scale of the job, its figures alone. */
export function useFigures(job: Job, which: WhichScale, strengthTable?: string): AnalysedScale {
  return useMemo(
    () =>
      analysedScale(job, which, {
        uncertainties: 'left out',
        strengthTable: strengthTable === undefined ? undefined : strengthTableNamed(strengthTable),
      }),
    [job, which, strengthTable],
  );
}
