import type { FactOf } from '../facts/index.ts';
import type { Job, Standing } from '../fold/job.ts';

export type MadeEstimate = Standing<FactOf<'estimate-made'>>;
export type EstimateAnswer = Standing<FactOf<'estimate-answered'>>;

/** Where the estimate of a job stands. */
export interface EstimateStanding {
  /** The last version; undefined while none was made. */
  readonly latest: MadeEstimate | undefined;
  /** What the customer said to the last version, the latest answer if they changed their mind. */
  readonly answer: EstimateAnswer | undefined;
  /** The highest version whose latest answer is an acceptance: what may be worked to. */
  readonly accepted: { readonly estimate: MadeEstimate; readonly answer: EstimateAnswer } | undefined;
}

/** Where the estimate of a job stands: its last version, the answer to that, and the version that was accepted. */
export function estimateStanding(job: Job): EstimateStanding {
  const latest = job.estimates.at(-1);
  const accepted = job.estimates
    .map((estimate) => ({ estimate, answer: answerTo(job, estimate) }))
    .findLast(({ answer }) => answer?.answer === 'accepted');
  return {
    latest,
    answer: latest === undefined ? undefined : answerTo(job, latest),
    accepted: accepted?.answer === undefined ? undefined : { ...accepted, answer: accepted.answer },
  };
}

/** The latest answer to one version; undefined while there is none. */
export function answerTo(job: Job, { entry }: MadeEstimate): EstimateAnswer | undefined {
  return job.estimateAnswers.findLast(({ estimate }) => estimate === entry);
}
