import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { bringInJob } from '@becket/tasks';
import type { Command } from 'commander';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket bring-in-job`: a job that was saved as a file. */
export function registerBringInJob(program: Command): void {
  program
    .command('bring-in-job')
    .description(
      'bring in a job that was saved as a file, zip or JSON Lines; what is here already stays as it is',
    )
    .argument('<file>', 'the file')
    .action(async (file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const bytes = new Uint8Array(await readFile(file));
      const done = await inWorkshop(
        options,
        (context) => bringInJob(context, { bytes, fileName: basename(file) }),
        { mayBegin: true },
      );
      if (done.notice !== undefined) talk.say(done.notice);
      talk.result(options, done, [
        `${done.job}: ${done.added} entries and ${done.photosAdded} photos were not here before`,
      ]);
    });
}
