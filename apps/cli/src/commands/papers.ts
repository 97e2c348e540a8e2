import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { firstUnitOf, type Language, paperSizeOf } from '@becket/core';
import {
  makePaper,
  type PaperFormat,
  type PaperName,
  paperFormats,
  paperNames,
  paperSizes,
} from '@becket/tasks';
import { type Command, Option } from 'commander';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface PapersOptions extends CommonOptions {
  readonly paper?: PaperName;
  readonly format?: PaperFormat;
  readonly size: (typeof paperSizes)[number];
  readonly units: 'mm' | 'in';
  readonly to: string;
}

/** `becket papers`: makes the papers of a job. */
export function registerPapers(program: Command, language: Language): void {
  const { say } = language;
  program
    .command('papers')
    .description(say('make the papers of a job, as PDF and as CSV'))
    .argument('<job>', say('id of the job'))
    .addOption(new Option('--paper <name>', say('only this one')).choices(paperNames))
    .addOption(new Option('--format <format>', say('only this format')).choices(paperFormats))
    .addOption(
      new Option('--size <size>', say('paper size'))
        .choices(paperSizes)
        .default(paperSizeOf(language.locale)),
    )
    .addOption(
      new Option('--units <unit>', say('unit of length that stands first'))
        .choices(['mm', 'in'])
        .default(firstUnitOf(language.locale)),
    )
    .option('--to <folder>', say('where the files are put'), '.')
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<PapersOptions>();
      await mkdir(options.to, { recursive: true });
      const files: string[] = [];
      await inWorkshop(options, language, async (context) => {
        for (const paper of options.paper === undefined ? paperNames : [options.paper]) {
          for (const format of options.format === undefined ? paperFormats : [options.format]) {
            talk.tell(say('Making {paper}, {format} …', { paper, format }));
            const made = await makePaper(context, job, {
              paper,
              format,
              size: options.size,
              units: options.units,
            });
            const path = join(options.to, made.fileName);
            await writeFile(path, made.bytes);
            files.push(path);
          }
        }
      });
      talk.result(options, files, files);
    });
}
