import { english, type Language } from '@becket/core';
import type { Job, Ulid } from '@becket/journal';
import { addFacts, RecordIsSealed, readJob, type TaskContext } from '../context.ts';
import type { CellChange } from './cell-changes.ts';
import type { CellProblem } from './cell-report.ts';
import type { ColumnMapping } from './column-mapping.ts';
import { type ImportPlan, planImport } from './plan-import.ts';
import type { ReadTable } from './read-table.ts';

/** Cells of the table cannot be read; nothing was brought in. */
export class CellsNotReadable extends Error {
  override readonly name = 'CellsNotReadable';
  readonly problems: readonly CellProblem[];
  constructor(fileName: string, problems: readonly CellProblem[], { say }: Language = english) {
    super(
      [
        say('Cannot bring in {file}: {problem}', { file: fileName, problem: problems[0]?.sentence ?? '' }),
        ...(problems.length > 1
          ? [say('{count} more cells cannot be read either.', { count: problems.length - 1 })]
          : []),
        say('Nothing was brought in; correct each cell, or leave it out with a reason.'),
      ].join(' '),
    );
    this.problems = problems;
  }
}

/**
 * Brings a table of readings into a job: all of it in one transaction, or nothing.
 *
 * Throws: CellsNotReadable while a cell cannot be read; RecordIsSealed after the seal, since a table carries no reason;
 * RangeError when the same file was brought in before, since every reading would then stand twice.
 */
export async function bringInReadings(
  context: TaskContext,
  job: Ulid,
  {
    table,
    mapping,
    changes = [],
  }: { readonly table: ReadTable; readonly mapping: ColumnMapping; readonly changes?: readonly CellChange[] },
): Promise<{ job: Job; plan: ImportPlan }> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  if (state.seal !== undefined) throw new RecordIsSealed(state.seal.at, language);
  const earlier = state.imports.find(({ digest }) => digest === table.digest);
  if (earlier !== undefined) {
    throw new RangeError(
      language.say(
        'Cannot bring in {file} again: the same file was brought in on {at} by {by}. To replace its readings, withdraw them first; to add readings, bring in a file that holds only the new ones.',
        { file: table.fileName, at: language.moment(earlier.at), by: earlier.by },
      ),
    );
  }
  const plan = planImport(state, table, mapping, changes, language);
  if (plan.problems.length > 0) throw new CellsNotReadable(table.fileName, plan.problems, language);
  const { job: changed } = await addFacts(context, job, plan.facts);
  return { job: changed, plan };
}
