import { digestOf } from '@becket/journal';
import type { Kysely } from 'kysely';
import { type BlobStore, requireBlobSize, verifiedBlob } from '../blobs.ts';
import type { Tables } from './schema.ts';

/** Blobs in the table of that name. `guarded` waits for other writers, and makes the error for what fails. */
export function blobsInTable(
  db: Kysely<Tables>,
  { file, guarded }: { file: string; guarded: <Result>(work: () => Promise<Result>) => Promise<Result> },
): BlobStore {
  return {
    async put(bytes) {
      requireBlobSize(bytes);
      const copy = Buffer.from(bytes);
      const digest = digestOf(copy);
      await guarded(() =>
        db
          .insertInto('blobs')
          .values({ digest, bytes: copy })
          .onConflict((conflict) => conflict.column('digest').doUpdateSet({ bytes: copy }))
          .execute(),
      );
      return digest;
    },
    async get(digest) {
      const row = await guarded(() =>
        db.selectFrom('blobs').select('bytes').where('digest', '=', digest).executeTakeFirst(),
      );
      return row && verifiedBlob(new Uint8Array(row.bytes), digest, file);
    },
    async missing(digests) {
      const absent = new Set(digests);
      const asked = [...absent];
      // A statement has room for a limited number of values.
      for (let start = 0; start < asked.length; start += 1000) {
        const rows = await guarded(() =>
          db
            .selectFrom('blobs')
            .select('digest')
            .where('digest', 'in', asked.slice(start, start + 1000))
            .execute(),
        );
        for (const { digest } of rows) absent.delete(digest);
      }
      return [...absent];
    },
  };
}
