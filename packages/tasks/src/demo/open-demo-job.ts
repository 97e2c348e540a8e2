import type { FactOf, Job } from '@becket/journal';
import { addFacts, type TaskContext } from '../context.ts';
import { bringInReadings } from '../import/bring-in-readings.ts';
import { columnMappingSchema } from '../import/column-mapping.ts';
import type { CellChange } from '../import/plan-import.ts';
import { readTable } from '../import/read-table.ts';
import { openJob } from '../open-job.ts';

type Described<Kind extends 'piano-described' | 'section-described' | 'unisons-described' | 'observation'> =
  Omit<FactOf<Kind>, 'kind' | 'v'>;

/** The files of `examples/grand` in one module, made by `examples/make-examples.ts`. */
interface InventedPiano {
  readonly job: {
    readonly title: string;
    readonly customer: string;
    readonly piano: Described<'piano-described'>;
    readonly sections: readonly Described<'section-described'>[];
    readonly unisons: readonly Described<'unisons-described'>[];
    readonly observations: readonly Described<'observation'>[];
  };
  readonly fileName: string;
  readonly readings: string;
  readonly mapping: unknown;
  readonly corrections: readonly CellChange[];
}

/**
 * Opens a job of an invented grand to try things on: described, with its messy table of readings brought in.
 *
 * The two wrong cells of the table are put right with their reasons, which stand in the record; its gaps are left open, so
 * that the strip check has something to say.
 */
export async function openDemoJob(context: TaskContext): Promise<Job> {
  // Only now, so that a page which opens no demo never loads the data.
  const { default: data } = await import('./invented-grand.json', { with: { type: 'json' } });
  const { job: described, fileName, readings, mapping, corrections } = data as InventedPiano;
  const { title, customer, piano, sections, unisons, observations } = described;
  const { id } = await openJob(context, { title, customer, piano });
  await addFacts(context, id, [
    ...sections.map((section) => ({ kind: 'section-described' as const, v: 1 as const, ...section })),
    ...unisons.map((run) => ({ kind: 'unisons-described' as const, v: 1 as const, ...run })),
    ...observations.map((seen) => ({ kind: 'observation' as const, v: 1 as const, ...seen })),
  ]);
  const table = readTable(new TextEncoder().encode(readings), fileName);
  const { job } = await bringInReadings(context, id, {
    table,
    mapping: columnMappingSchema.parse(mapping),
    changes: corrections,
  });
  return job;
}
