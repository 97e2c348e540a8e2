import { digestOf } from '@becket/journal';
import { type BlobStore, requireBlobSize, verifiedBlob } from '@becket/store';

/** The one object store that photos need, whatever database it is in. */
export interface BlobTable {
  get(digest: string): Promise<{ readonly digest: string; readonly bytes: Uint8Array } | undefined>;
  put(kept: { readonly digest: string; readonly bytes: Uint8Array }): Promise<unknown>;
  has(digest: string): Promise<boolean>;
}

/** Photos in the browser's own database, each under the SHA-256 of its bytes. */
export function browserBlobs(table: BlobTable, path: string): BlobStore {
  return {
    async put(bytes) {
      requireBlobSize(bytes);
      const digest = digestOf(bytes);
      // A copy: a part of a larger piece of memory would be kept with all of it.
      await table.put({ digest, bytes: bytes.slice() });
      return digest;
    },
    async get(digest) {
      const kept = await table.get(digest);
      return kept && verifiedBlob(kept.bytes, digest, path);
    },
    async missing(digests) {
      const missing: string[] = [];
      for (const digest of new Set(digests)) if (!(await table.has(digest))) missing.push(digest);
      return missing;
    },
  };
}
