import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { StoreUnavailable } from '../port.ts';
import { isMissing, writeWhole } from './disk.ts';
import { lockName } from './folder-lock.ts';

const markName = 'becket-store.json';
const format = 'becket journals';
const version = 1;

/** Whether a folder is a store of ours. Nothing in it is touched. Throws: StoreUnavailable when it is something else. */
export async function checkFolder(folder: string): Promise<'ours' | 'empty'> {
  let mark: unknown;
  try {
    mark = JSON.parse(await readFile(join(folder, markName), 'utf8'));
  } catch (error) {
    if (!isMissing(error) && !(error instanceof SyntaxError)) throw error;
    const others = (await readdir(folder)).filter((name) => name !== lockName);
    if (isMissing(error) && others.every((name) => name === `${markName}.half`)) return 'empty';
    throw notAStore(folder);
  }
  const found = mark as { format?: unknown; version?: unknown };
  if (found?.format !== format || typeof found.version !== 'number') throw notAStore(folder);
  if (found.version > version) {
    throw new StoreUnavailable(
      'later version',
      folder,
      `Cannot open the store ${folder}: a later version of Becket has written to it (its files are of version ${found.version}, this one knows ${version}). Use that version or a later one; the folder was left as it is.`,
    );
  }
  return 'ours';
}

/** Makes an empty folder a store. */
export async function markFolder(folder: string): Promise<void> {
  await writeWhole(join(folder, markName), `${JSON.stringify({ format, version })}\n`);
}

function notAStore(folder: string): StoreUnavailable {
  return new StoreUnavailable(
    'not a store',
    folder,
    `Cannot open the store ${folder}: an empty folder or one of Becket's is needed, a folder with other content was found and left as it is. Name another folder.`,
  );
}
