import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Language } from '@becket/core';
import { bringInJob } from '@becket/tasks';
import type { Command } from 'commander';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

/** `becket bring-in-job`: a job that was saved as a file. */
export function registerBringInJob(program: Command, language: Language): void {
  const { say } = language;
  program
    .command('bring-in-job')
    .description(
      say('bring in a job that was saved as a file, zip or JSON Lines; what is here already stays as it is'),
    )
    .argument('<file>', say('the file'))
    .action(async (file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const bytes = new Uint8Array(await readFile(file));
      const done = await inWorkshop(
        options,
        language,
        (context) => bringInJob(context, { bytes, fileName: basename(file) }),
        { mayBegin: true },
      );
      if (done.notice !== undefined) talk.tell(done.notice);
      talk.result(options, done, [
        say(
          '{job}: {entries, plural, one {# entry} other {# entries}} and {photos, plural, one {# photo} other {# photos}} were not here before',
          { job: done.job, entries: done.added, photos: done.photosAdded },
        ),
      ]);
    });
}
