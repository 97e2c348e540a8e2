import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import {
  bringInReadings,
  type CellChange,
  CellsNotReadable,
  columnMappingSchema,
  LARGEST_FILE_BYTES,
  planImport,
  readJob,
  readTable,
  suggestMapping,
} from '@becket/tasks';
import type { Command } from 'commander';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface BringInOptions extends CommonOptions {
  readonly mapping?: string;
  readonly correct: readonly string[];
  readonly leaveOut: readonly string[];
  readonly reason: string;
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
    .option(
      '--correct <cell>',
      "use another value in a cell: 'row:column name=value'; may be given again",
      collect,
      [],
    )
    .option('--leave-out <cell>', "leave a cell out: 'row:column name'; may be given again", collect, [])
    .option('--reason <words>', 'why cells were corrected or left out', 'corrected on the command line')
    .option('--try', 'say what would be brought in, and store nothing')
    .action(async (job: string, file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<BringInOptions>();
      const { size } = await stat(file);
      // A file that is refused for its size is never read into memory.
      const bytes = size > LARGEST_FILE_BYTES ? new Uint8Array(size) : await readFile(file);
      const table = readTable(bytes, basename(file));
      for (const notice of table.notices) talk.say(notice);
      const mapping =
        options.mapping === undefined
          ? suggestMapping(table)
          : columnMappingSchema.parse(JSON.parse(await readFile(options.mapping, 'utf8')));
      if (options.showMapping) {
        process.stdout.write(`${JSON.stringify(mapping, undefined, 2)}\n`);
        return;
      }
      const changes = [
        ...options.correct.map((cell) => changeOf(cell, table.header, options.reason, true)),
        ...options.leaveOut.map((cell) => changeOf(cell, table.header, options.reason, false)),
      ];
      await inWorkshop(options, async (context) => {
        const plan = options.try
          ? planImport(await readJob(context, job), table, mapping, changes)
          : (await bringInReadings(context, job, { table, mapping, changes })).plan;
        if (options.try && plan.problems.length > 0)
          throw new CellsNotReadable(table.fileName, plan.problems);
        for (const { sentence, suggestion } of plan.questions) {
          talk.say(`Questioned: ${sentence}.${suggestion === undefined ? '' : ` Was ${suggestion} meant?`}`);
        }
        const { counts, questions } = plan;
        const verb = options.try ? 'would be brought in' : 'were brought in';
        talk.result(options, { counts, questions, stored: !options.try }, [
          `${counts.readings} readings of ${counts.notes} notes ${verb}, from ${counts.rows} rows; ${questions.length} cells are questioned.`,
        ]);
      });
    });
}

function changeOf(text: string, header: readonly string[], reason: string, hasValue: boolean): CellChange {
  const parts = (hasValue ? /^(\d+):(.+?)=(.*)$/ : /^(\d+):(.+)$/).exec(text);
  const column = header.indexOf(parts?.[2] ?? '');
  if (parts === null || column < 0) {
    throw new SyntaxError(
      `Cannot find the cell '${text}': ${hasValue ? "'row:column name=value'" : "'row:column name'"} is needed, with a column of ${header.map((name) => `'${name}'`).join(', ')}.`,
    );
  }
  return { row: Number(parts[1]), column, use: hasValue ? (parts[3] ?? '') : null, reason };
}
