import type { Ulid } from '@becket/journal';
import type { TaskContext } from '@becket/tasks';
import type { JobDesk } from './job-desk.ts';

/**
 * Runs a task for a form that says by itself, beside its fields, what went wrong: on a phone the head of the page is out of
 * sight. Throws: RangeError with the sentence when the task failed; the job is as it was.
 */
export async function runHere<Result>(
  desk: JobDesk,
  task: (context: TaskContext, job: Ulid) => Promise<Result>,
): Promise<Result> {
  const done = await desk.run(task);
  if (done !== undefined) return done;
  const sentence = desk.problem.get() ?? 'Cannot keep this: the device did not say why. Try again.';
  desk.problem.set(undefined);
  throw new RangeError(sentence);
}
