import type { Job } from '@becket/journal';
import type { JobState } from './jobs.ts';

/** A job's state as JSON has it: maps become lists of their values, sets become lists, what is undefined is left out. */
export function jobStateAsJson(job: Job): JobState {
  const state: Record<string, unknown> = {};
  for (const [field, value] of Object.entries(job)) {
    if (value instanceof Map || value instanceof Set) state[field] = [...value.values()];
    else if (value !== undefined) state[field] = value;
  }
  return state as JobState;
}
