import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Language } from '@becket/core';
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
export function registerBringIn(program: Command, language: Language): void {
  const { say, plain } = language;
  program
    .command('bring-in')
    .description(say('bring a CSV of readings into a job, all of it or nothing'))
    .argument('<job>', say('id of the job'))
    .argument('<file>', say('the CSV'))
    .option('--mapping <file>', say('JSON: what each column means; guessed from the column names without it'))
    .option('--show-mapping', say('print the mapping that would be used, as JSON, and stop'))
    .option('--changes <file>', say('JSON: cells to correct or to leave out, each with its reason'))
    .option(
      '--correct <cell>',
      say("use another value in a cell: 'row:column=value'; may be given again"),
      collect,
      [],
    )
    .option('--leave-out <cell>', say("leave a cell out: 'row:column'; may be given again"), collect, [])
    .option('--reason <words>', say('why cells are corrected or left out'))
    .option('--try', say('say what would be brought in, and store nothing'))
    .action(async (job: string, file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<BringInOptions>();
      // A file that is too large is refused before it is read into memory.
      requireTableSize((await stat(file)).size, basename(file), language);
      const table = readTable(await readFile(file), basename(file), language);
      for (const notice of table.notices) talk.tell(notice);
      const mapping = await mappingFor(table, options.mapping, language);
      if (options.showMapping) {
        process.stdout.write(`${JSON.stringify(mapping, undefined, 2)}\n`);
        return;
      }
      const changes = await changesFor(table, options, language);
      await inWorkshop(options, language, async (context) => {
        const plan = planImport(await readJob(context, job), table, mapping, changes, language);
        for (const { sentence } of plan.questions) talk.tell(say('In question: {sentence}', { sentence }));
        if (plan.problems.length > 0) {
          // The first is in the sentence that ends the program.
          for (const { sentence } of plan.problems.slice(1)) talk.tell(sentence);
          throw new CellsNotReadable(table.fileName, plan.problems, language);
        }
        if (!options.try) await bringInReadings(context, job, { table, mapping, changes });
        const { counts, questions } = plan;
        talk.result(options, { counts, questions, stored: !options.try }, [
          say(
            '{readings} readings of {notes} notes {was, select, tried {would be} other {were}} brought in, from {rows} rows; {questions} cells are in question.',
            {
              readings: plain(counts.readings),
              notes: plain(counts.notes),
              was: options.try ? 'tried' : 'done',
              rows: plain(counts.rows),
              questions: plain(questions.length),
            },
          ),
        ]);
      });
    });
}

async function mappingFor(
  table: ReadTable,
  path: string | undefined,
  language: Language,
): Promise<ColumnMapping> {
  if (path === undefined) return suggestMapping(table);
  return parseMapping(await jsonFrom(path, language), path, language);
}

async function changesFor(
  { header }: ReadTable,
  { changes: path, correct, leaveOut, reason }: BringInOptions,
  language: Language,
): Promise<CellChange[]> {
  const fromFile = path === undefined ? [] : parseCellChanges(await jsonFrom(path, language), path, language);
  if (correct.length + leaveOut.length > 0 && reason === undefined) {
    throw new WrongUse(
      language.say('Cannot correct or leave out a cell without a reason: give it with --reason.'),
    );
  }
  return [
    ...fromFile,
    ...correct.map((cell) => changeOf(cell, { header, reason: reason!, hasValue: true, language })),
    ...leaveOut.map((cell) => changeOf(cell, { header, reason: reason!, hasValue: false, language })),
  ];
}

/** One change from 'row:column=value'. The column is named, or counted from 1; the longest name that fits is meant. */
function changeOf(
  text: string,
  {
    header,
    reason,
    hasValue,
    language: { say },
  }: {
    readonly header: readonly string[];
    readonly reason: string;
    readonly hasValue: boolean;
    readonly language: Language;
  },
): CellChange {
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
      say(
        "Cannot find the cell '{text}': {form, select, value {'row:column=value'} other {'row:column'}} is needed, with a column of {columns}, or its number.",
        { text, form: hasValue ? 'value' : 'cell', columns: header.map((name) => `'${name}'`).join(', ') },
      ),
    );
  }
  const use = hasValue ? rest!.slice(found.name.length + 1) : null;
  return { row: Number(row), column: found.column, use, reason };
}
