import { access, open, rename, rm } from 'node:fs/promises';
import type { Language } from '@becket/core';
import { saveJob } from '@becket/tasks';
import type { Command } from 'commander';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface ExportOptions extends CommonOptions {
  readonly to?: string;
}

/** `becket export`: the whole job as one file, journal and photos. */
export function registerExport(program: Command, language: Language): void {
  const { say, fixed, plain } = language;
  program
    .command('export')
    .description(say('save a job as one file: a zip with its journal and its photos'))
    .argument('<job>', say('id of the job'))
    .option('--to <file>', say("where to; a file named after the job's title in this folder without it"))
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<ExportOptions>();
      const { bytes, fileName, entries, photos, missingPhotos } = await inWorkshop(
        options,
        language,
        (context) => saveJob(context, job),
      );
      const file = options.to ?? (await freeName(fileName));
      await writeWhole(file, bytes, language);
      if (missingPhotos.length > 0) {
        talk.tell(
          say(
            '{photos, plural, one {# photo is} other {# photos are}} not in this store, or damaged; the file is without them. Export the job from the device that took them.',
            { photos: missingPhotos.length },
          ),
        );
      }
      talk.result(options, { file, bytes: bytes.length, entries, photos, missingPhotos }, [
        say('{file}: {entries} entries, {photos} photos, {size} MB', {
          file,
          entries: plain(entries),
          photos: plain(photos),
          size: fixed(bytes.length / 1e6, 2),
        }),
      ]);
    });
}

/** A name of which there is no file yet: without being asked to, nothing is written over. */
async function freeName(wanted: string): Promise<string> {
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? wanted : wanted.replace(/\.zip$/, `-${number}.zip`);
    const isThere = await access(name).then(
      () => true,
      () => false,
    );
    if (!isThere) return name;
  }
}

/** Written beside its place first: a disk that is full leaves the file that was there before. */
async function writeWhole(file: string, bytes: Uint8Array, { say }: Language): Promise<void> {
  const half = `${file}.half`;
  try {
    const handle = await open(half, 'w');
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(half, file);
  } catch (error) {
    await rm(half, { force: true });
    throw new RangeError(
      say(
        'Cannot write {file}: the system does not allow it ({problem}). Name another file with --to, or make room.',
        { file, problem: (error as Error).message },
      ),
      { cause: error },
    );
  }
}
