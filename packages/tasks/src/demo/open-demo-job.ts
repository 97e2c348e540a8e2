import type { Job } from '@becket/journal';
import type { TaskContext } from '../context.ts';
import { describeJob } from '../describe-job.ts';
import { bringInReadings } from '../import/bring-in-readings.ts';
import { columnMappingSchema } from '../import/column-mapping.ts';
import { readTable } from '../import/read-table.ts';
import { openJob } from '../open-job.ts';

/**
 * Opens a job of an invented grand to try things on: described, with its messy table of readings brought in.
 *
 * The two wrong cells of the table are put right with their reasons, which stand in the record; its gaps are left open, so
 * that the strip check has something to say.
 */
export async function openDemoJob(context: TaskContext): Promise<Job> {
  // The files of `examples/grand` in one module. Only now, so that a page which opens no demo never loads it.
  const { default: data } = await import('./invented-grand.json', { with: { type: 'json' } });
  const { job: described, fileName, readings, mapping, corrections } = data;
  const { id } = await openJob(context, { title: described.title, customer: described.customer });
  await describeJob(context, id, described);
  const table = readTable(new TextEncoder().encode(readings), fileName);
  const { job } = await bringInReadings(context, id, {
    table,
    mapping: columnMappingSchema.parse(mapping),
    changes: corrections,
  });
  return job;
}
