import type { Ulid } from '@becket/journal';
import { appraiseDemoJob, openDemoJob, type TaskContext } from '@becket/tasks';

/** Opens a demo job of an invented piano on this device. Loaded when it is asked for, with the table reader it needs. */
export async function openDemo(context: TaskContext): Promise<Ulid> {
  const { id } = await openDemoJob(context);
  await appraiseDemoJob(context, id);
  return id;
}
