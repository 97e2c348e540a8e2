import { digestOf } from '@becket/journal';
import { type BlobStore, requireBlobSize, verifiedBlob } from '../blobs.ts';

/** Blobs that live as long as the program. Copies go in and out, so that nobody can change what is kept. */
export function createMemoryBlobs(): BlobStore {
  const kept = new Map<string, Uint8Array>();
  return {
    put: async (bytes) => {
      requireBlobSize(bytes);
      const digest = digestOf(bytes);
      kept.set(digest, bytes.slice());
      return digest;
    },
    get: async (digest) => {
      const bytes = kept.get(digest);
      return bytes && verifiedBlob(bytes.slice(), digest, 'memory');
    },
    missing: async (digests) => [...new Set(digests)].filter((digest) => !kept.has(digest)),
  };
}
