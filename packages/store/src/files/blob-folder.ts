import { mkdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { digestOf } from '@becket/journal';
import { type BlobStore, digestPattern, requireBlobSize, verifiedBlob } from '../blobs.ts';
import { isMissing, syncFolder, writeWhole } from './disk.ts';

/**
 * Blobs in the folder `blobs` of a store, one file each, named by its digest. A blob is written beside its place and
 * then renamed: a program that ends in the middle leaves a `.half` file, which counts for nothing and is written over.
 *
 * `cannotWrite` makes the error for a write that failed.
 */
export function blobsInFolder(folder: string, cannotWrite: (cause: unknown) => Error): BlobStore {
  const blobs = join(folder, 'blobs');
  const fileOf = (digest: string) => join(blobs, digest);
  /** One after another, so that two writers of the same blob do not meet in its `.half` file. */
  let lastWrite: Promise<unknown> = Promise.resolve();

  async function write(bytes: Uint8Array): Promise<string> {
    const digest = digestOf(bytes);
    try {
      const made = await mkdir(blobs, { recursive: true });
      if (made !== undefined) await syncFolder(folder);
      await writeWhole(fileOf(digest), bytes);
    } catch (error) {
      throw cannotWrite(error);
    }
    return digest;
  }

  return {
    async put(bytes) {
      requireBlobSize(bytes);
      const copy = bytes.slice();
      const written = lastWrite.then(() => write(copy));
      lastWrite = written.catch(() => undefined);
      return written;
    },
    async get(digest) {
      if (!digestPattern.test(digest)) return undefined;
      try {
        return verifiedBlob(new Uint8Array(await readFile(fileOf(digest))), digest, fileOf(digest));
      } catch (error) {
        if (isMissing(error)) return undefined;
        throw error;
      }
    },
    async missing(digests) {
      const absent: string[] = [];
      for (const digest of new Set(digests)) {
        const isThere = digestPattern.test(digest) && (await isFile(fileOf(digest)));
        if (!isThere) absent.push(digest);
      }
      return absent;
    },
  };
}

async function isFile(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isFile();
  } catch (error) {
    if (isMissing(error)) return false;
    throw error;
  }
}
