import { access, open, rename, rm } from 'node:fs/promises';
import { saveJob } from '@becket/tasks';
import type { Command } from 'commander';
import { talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface ExportOptions extends CommonOptions {
  readonly to?: string;
}

/** `becket export`: the whole job as one file, journal and photos. */
export function registerExport(program: Command): void {
  program
    .command('export')
    .description('save a job as one file: a zip with its journal and its photos')
    .argument('<job>', 'id of the job')
    .option('--to <file>', "where to; a file named after the job's title in this folder without it")
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<ExportOptions>();
      const { bytes, fileName, entries, photos, missingPhotos } = await inWorkshop(options, (context) =>
        saveJob(context, job),
      );
      const file = options.to ?? (await freeName(fileName));
      await writeWhole(file, bytes);
      if (missingPhotos.length > 0) {
        talk.say(
          `${missingPhotos.length} photos are not in this store, or are damaged; the file is without them. Export the job from the device that took them.`,
        );
      }
      talk.result(options, { file, bytes: bytes.length, entries, photos, missingPhotos }, [
        `${file}: ${entries} entries, ${photos} photos, ${(bytes.length / 1e6).toFixed(2)} MB`,
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
async function writeWhole(file: string, bytes: Uint8Array): Promise<void> {
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
      `Cannot write ${file}: the system does not allow it (${(error as Error).message}). Name another file with --to, or make room.`,
      { cause: error },
    );
  }
}
