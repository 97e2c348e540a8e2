import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { readJournalLines } from '@becket/journal';
import { addAtEnd, cutBack, isMissing, writeWhole } from './disk.ts';

/**
 * Puts what stands after the first `length` bytes of a file aside, in a file of its own beside it, and cuts the file
 * back. Gives back the name of the file it was put into; undefined when nothing stood there.
 *
 * The part is on the disk before the file is cut: ended in between, the next start does the same again.
 */
export async function putAside(file: string, length: number): Promise<string | undefined> {
  const content = await readFile(file).catch((error: unknown) => {
    if (isMissing(error)) return Buffer.alloc(0);
    throw error;
  });
  if (content.length <= length) return undefined;
  const part = content.subarray(length);
  const aside = await freeName(`${file}.cut-${length}`, part);
  await writeWhole(aside, part);
  await cutBack(file, length);
  return basename(aside);
}

/**
 * Mends a journal file whose last line was cut (power gone, card pulled out). A last entry that lacks only its line end
 * gets it; a piece of an entry is put aside. Gives back a sentence for the user, or undefined when nothing was amiss.
 */
export async function mendLastLine(file: string): Promise<string | undefined> {
  const content = await readFile(file);
  const lastLineStart = content.lastIndexOf('\n') + 1;
  if (lastLineStart === content.length) return undefined;
  const { entries, unread } = readJournalLines(content.toString('utf8', lastLineStart));
  if (entries.length === 1 && unread.length === 0) {
    await addAtEnd(file, '\n');
    return undefined;
  }
  const aside = await putAside(file, lastLineStart);
  return `The journal file ${basename(file)} ended in the middle of an entry; the piece was put aside in ${aside}, every whole entry before it was kept. Look at the end of that job and enter again what is missing.`;
}

/** A name that no other part was put aside under. */
async function freeName(wanted: string, part: Uint8Array): Promise<string> {
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? wanted : `${wanted}-${number}`;
    const there = await readFile(name).catch((error: unknown) => {
      if (isMissing(error)) return undefined;
      throw error;
    });
    if (there === undefined || there.equals(part)) return name;
  }
}
