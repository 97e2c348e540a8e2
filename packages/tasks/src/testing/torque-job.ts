import type { FactOf, Job, Ulid } from '@becket/journal';
import type { TaskContext } from '../context.ts';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { type ReadingToRecord, recordReadings } from '../record-reading.ts';
import { memoryContext } from './memory-context.ts';

type Condition = NonNullable<FactOf<'reading'>['condition']>;

/** A torque reading in N·m, string on and turned sharp unless said otherwise. */
export function torqueReading(
  key: number,
  string: number | undefined,
  value: number,
  more: Partial<ReadingToRecord> & { readonly condition?: Condition } = {},
): ReadingToRecord {
  return {
    quantity: 'pin-torque',
    place: { key, ...(string === undefined ? {} : { string }) },
    value,
    unit: 'N·m',
    condition: { strings: 'on', turning: 'sharp' },
    ...more,
  };
}

export const turned = (turning: 'sharp' | 'flat'): { readonly condition: Condition } => ({
  condition: { strings: 'on', turning },
});
export const slack: { readonly condition: Condition } = { condition: { strings: 'let down' } };

/** The invented grand with these readings taken on it. */
export async function torqueJob(
  readings: readonly ReadingToRecord[],
): Promise<{ readonly context: TaskContext; readonly id: Ulid; readonly job: Job }> {
  const context = memoryContext();
  const { id } = await openDemoJob(context);
  const { job } = await recordReadings(context, id, readings);
  return { context, id, job };
}
