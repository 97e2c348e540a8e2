import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { isMissing, removeForGood, writeWhole } from './disk.ts';

const noteName = 'adding.json';

/** Length in bytes of each journal file before a batch was added to it. */
export type LengthsBefore = ReadonlyMap<string, number>;

/**
 * Notes on the disk how long the files are before a batch of several entries is added. As long as the note is there,
 * the batch counts as not added; taking the note away is what makes it so.
 */
export async function noteBatch(folder: string, before: LengthsBefore): Promise<void> {
  await writeWhole(join(folder, noteName), JSON.stringify(Object.fromEntries(before)));
}

export async function batchIsDone(folder: string): Promise<void> {
  await removeForGood(join(folder, noteName));
}

/** The lengths to go back to when the program ended in the middle of a batch; undefined when it did not. */
export async function unfinishedBatch(folder: string): Promise<LengthsBefore | undefined> {
  try {
    const noted: unknown = JSON.parse(await readFile(join(folder, noteName), 'utf8'));
    return new Map(Object.entries(noted as Record<string, number>));
  } catch (error) {
    if (isMissing(error)) return undefined;
    throw error;
  }
}

/** Length of a file in bytes; 0 when it is not there yet. */
export async function lengthOf(file: string): Promise<number> {
  try {
    return (await stat(file)).size;
  } catch (error) {
    if (isMissing(error)) return 0;
    throw error;
  }
}
