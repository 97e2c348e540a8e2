import { type FileHandle, open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Works on an open file and closes it whatever happens. */
export async function withFile<Result>(
  file: string,
  flags: string,
  work: (handle: FileHandle) => Promise<Result>,
): Promise<Result> {
  const handle = await open(file, flags);
  try {
    return await work(handle);
  } finally {
    await handle.close();
  }
}

/** Makes sure that the names in a folder are on the disk: a new file, a removed one. */
export async function syncFolder(folder: string): Promise<void> {
  // Windows has no such call, and writes names through by itself.
  if (process.platform === 'win32') return;
  await withFile(folder, 'r', (handle) => handle.sync());
}

/** Writes a whole file so that it is there completely or not at all, and on the disk when this resolves. */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  const half = `${file}.half`;
  await withFile(half, 'w', async (handle) => {
    await handle.writeFile(content);
    await handle.sync();
  });
  await rename(half, file);
  await syncFolder(dirname(file));
}

/** Removes a file, also from the disk's list of names. */
export async function removeForGood(file: string): Promise<void> {
  await rm(file, { force: true });
  await syncFolder(dirname(file));
}

/** Cuts a file back to its first `length` bytes, on the disk when this resolves. */
export async function cutBack(file: string, length: number): Promise<void> {
  await withFile(file, 'r+', async (handle) => {
    await handle.truncate(length);
    await handle.sync();
  });
}

/** Adds text at the end of a file, on the disk when this resolves. The file's folder is the caller's to sync. */
export async function addAtEnd(file: string, text: string): Promise<void> {
  await withFile(file, 'a', async (handle) => {
    await handle.appendFile(text);
    await handle.sync();
  });
}

export const isMissing = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'ENOENT';
