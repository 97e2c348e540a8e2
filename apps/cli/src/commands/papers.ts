import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import {
  languageFor,
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
  readonly language: string;
  readonly to: string;
}

/** `becket papers`: makes the papers of a job. */
export function registerPapers(program: Command): void {
  program
    .command('papers')
    .description('make the papers of a job, as PDF and as CSV')
    .argument('<job>', 'id of the job')
    .addOption(new Option('--paper <name>', 'only this one').choices(paperNames))
    .addOption(new Option('--format <format>', 'only this format').choices(paperFormats))
    .addOption(new Option('--size <size>', 'paper size').choices(paperSizes).default('A4'))
    .addOption(
      new Option('--units <unit>', 'unit of length that stands first').choices(['mm', 'in']).default('mm'),
    )
    .option('--language <tag>', 'en or de, with a country where its marks matter: de-AT', 'en')
    .option('--to <folder>', 'where the files are put', '.')
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<PapersOptions>();
      const language = await languageFor(options.language);
      await mkdir(options.to, { recursive: true });
      const files: string[] = [];
      await inWorkshop(options, async (context) => {
        for (const paper of options.paper === undefined ? paperNames : [options.paper]) {
          for (const format of options.format === undefined ? paperFormats : [options.format]) {
            talk.say(`Making ${paper}, ${format} …`);
            const made = await makePaper({ ...context, language }, job, {
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
