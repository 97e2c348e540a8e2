import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import {
  bringInReadings,
  type CellChange,
  CellsNotReadable,
  type ColumnMapping,
  parseCellChanges,
  parseMapping,
  planImport,
  type ReadTable,
  readJob,
  readTable,
  requireTableSize,
  suggestMapping,
} from '@becket/tasks';
import type { Command } from 'commander';
import { jsonFrom } from '../json-file.ts';
import { WrongUse } from '../refusals.ts';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface BringInOptions extends CommonOptions {
  readonly mapping?: string;
  readonly changes?: string;
  readonly correct: readonly string[];
  readonly leaveOut: readonly string[];
  readonly reason?: string;
  readonly try?: boolean;
  readonly showMapping?: boolean;
}

const collect = (value: string, all: readonly string[]): string[] => [...all, value];

/** `becket bring-in`: brings a CSV of readings into a job, all of it or nothing. */
export function registerBringIn(program: Command): void {
  program
    .command('bring-in')
    .description('bring a CSV of readings into a job, all of it or nothing')
    .argument('<job>', 'id of the job')
    .argument('<file>', 'the CSV')
    .option('--mapping <file>', 'JSON: what each column means; guessed from the column names without it')
    .option('--show-mapping', 'print the mapping that would be used, as JSON, and stop')
    .option('--changes <file>', 'JSON: cells to correct or to leave out, each with its reason')
    .option(
      '--correct <cell>',
      "use another value in a cell: 'row:column=value'; may be given again",
      collect,
      [],
    )
    .option('--leave-out <cell>', "leave a cell out: 'row:column'; may be given again", collect, [])
    .option('--reason <words>', 'why cells are corrected or left out')
    .option('--try', 'say what would be brought in, and store nothing')
    .action(async (job: string, file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<BringInOptions>();
      // A file that is too large is refused before it is read into memory.
      requireTableSize((await stat(file)).size, basename(file));
      const table = readTable(await readFile(file), basename(file));
      for (const notice of table.notices) talk.say(notice);
      const mapping = await mappingFor(table, options.mapping);
      if (options.showMapping) {
        process.stdout.write(`${JSON.stringify(mapping, undefined, 2)}\n`);
        return;
      }
      const changes = await changesFor(table, options);
      await inWorkshop(options, async (context) => {
        const plan = planImport(await readJob(context, job), table, mapping, changes);
        for (const { sentence } of plan.questions) talk.say(`In question: ${sentence}`);
        if (plan.problems.length > 0) {
          // The first is in the sentence that ends the program.
          for (const { sentence } of plan.problems.slice(1)) talk.say(sentence);
          throw new CellsNotReadable(table.fileName, plan.problems);
        }
        if (!options.try) await bringInReadings(context, job, { table, mapping, changes });
        const { counts, questions } = plan;
        const verb = options.try ? 'would be brought in' : 'were brought in';
        talk.result(options, { counts, questions, stored: !options.try }, [
          `${counts.readings} readings of ${counts.notes} notes ${verb}, from ${counts.rows} rows; ${questions.length} cells are in question.`,
        ]);
      });
    });
}

async function mappingFor(table: ReadTable, path: string | undefined): Promise<ColumnMapping> {
  if (path === undefined) return suggestMapping(table);
  return parseMapping(await jsonFrom(path), path);
}

async function changesFor(
  { header }: ReadTable,
  { changes: path, correct, leaveOut, reason }: BringInOptions,
): Promise<CellChange[]> {
  const fromFile = path === undefined ? [] : parseCellChanges(await jsonFrom(path), path);
  if (correct.length + leaveOut.length > 0 && reason === undefined) {
    throw new WrongUse('Cannot correct or leave out a cell without a reason: give it with --reason.');
  }
  return [
    ...fromFile,
    ...correct.map((cell) => changeOf(cell, header, reason!, true)),
    ...leaveOut.map((cell) => changeOf(cell, header, reason!, false)),
  ];
}

/** One change from 'row:column=value'. The column is named, or counted from 1; the longest name that fits is meant. */
function changeOf(text: string, header: readonly string[], reason: string, hasValue: boolean): CellChange {
  const [, row, rest] = /^(\d+):(.+)$/s.exec(text) ?? [];
  const names = header.flatMap((name, column) => [
    { name, column },
    { name: `${column + 1}`, column },
  ]);
  const fitting = names
    .filter(({ name }) => (hasValue ? rest?.startsWith(`${name}=`) : rest === name))
    .sort((a, b) => b.name.length - a.name.length);
  const [found] = fitting;
  if (found === undefined) {
    throw new WrongUse(
      `Cannot find the cell '${text}': ${hasValue ? "'row:column=value'" : "'row:column'"} is needed, with a column of ${header.map((name) => `'${name}'`).join(', ')}, or its number.`,
    );
  }
  const use = hasValue ? rest!.slice(found.name.length + 1) : null;
  return { row: Number(row), column: found.column, use, reason };
}
