import { addToGroup } from '@becket/core';
import type { Job } from '@becket/journal';
import {
  type LabourStep,
  type LabourUnit,
  pianoCounts,
  STARTING_LABOUR_STEPS,
  unitsOf,
} from './labour-steps.ts';

/** What a step of labour really took in this shop. */
export interface LearnedHours {
  /** Id of the labour line. */
  readonly step: string;
  /** What the times are told of: a whole job, a string or a note. */
  readonly per: LabourUnit;
  /** Minutes a unit: the middle one, the least and the most. */
  readonly median_minutes: number;
  readonly low_minutes: number;
  readonly high_minutes: number;
  /** Jobs in which the step is finished and its time could be told by the unit. */
  readonly jobs: number;
  /** Jobs in which it is finished but the stringing is not all described, so that its time a string is not known. */
  readonly leftOut: number;
}

/**
 * Time that each step of labour took, from the jobs in which it is finished. All time noted of a step counts, whoever noted
 * it; a step of which nobody said that it is finished is not learned from.
 *
 * @param jobs   the shop's jobs, finished or not
 * @param steps  what each step's time grows with; a step that is not among them is told by the job
 * @returns one for each step with a finished job, in the order of the steps, others after them by name
 */
export function learnedHours(
  jobs: readonly Job[],
  steps: readonly LabourStep[] = STARTING_LABOUR_STEPS,
): LearnedHours[] {
  const perOf = (id: string): LabourUnit => steps.find((step) => step.id === id)?.per ?? 'job';
  const times = new Map<string, number[]>();
  const leftOut = new Map<string, number>();
  for (const job of jobs) {
    const counts = pianoCounts(job);
    for (const [step, minutes] of finishedSteps(job)) {
      const per = perOf(step);
      if (per !== 'job' && counts.assumed.length > 0) {
        leftOut.set(step, (leftOut.get(step) ?? 0) + 1);
        continue;
      }
      addToGroup(times, step, minutes / unitsOf({ per }, counts));
    }
  }
  const place = (id: string) => {
    const index = steps.findIndex((step) => step.id === id);
    return index === -1 ? steps.length : index;
  };
  return [...times]
    .sort(([a], [b]) => place(a) - place(b) || (a < b ? -1 : 1))
    .map(([step, own]) => {
      const sorted = [...own].sort((a, b) => a - b);
      return {
        step,
        per: perOf(step),
        median_minutes: median(sorted),
        low_minutes: sorted[0]!,
        high_minutes: sorted.at(-1)!,
        jobs: sorted.length,
        leftOut: leftOut.get(step) ?? 0,
      };
    });
}

/** Minutes of each step of a job that somebody said is finished. */
function finishedSteps({ hoursWorked }: Job): Map<string, number> {
  const finished = new Set(
    hoursWorked.filter(({ isFinished }) => isFinished).map(({ labourStep }) => labourStep),
  );
  const minutes = new Map<string, number>();
  for (const { labourStep: step, minutes: own } of hoursWorked)
    if (finished.has(step)) minutes.set(step, (minutes.get(step) ?? 0) + own);
  return minutes;
}

/** The middle one, or half-way between the two in the middle. */
function median(sorted: readonly number[]): number {
  const middle = (sorted.length - 1) / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2;
}
