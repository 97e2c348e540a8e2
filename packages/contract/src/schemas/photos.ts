import { z } from 'zod';

/** SHA-256 of a photo's bytes, hexadecimal. */
export const digestSchema = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'needs a SHA-256 digest: 64 hexadecimal digits, small letters')
  .meta({ id: 'Digest' });

export const digestsToFindSchema = z
  .object({ digests: z.array(digestSchema).max(5000) })
  .meta({ id: 'DigestsToFind' });

export const missingBlobsSchema = z
  .object({ missing: z.array(digestSchema).describe('Those the server does not have, each once.') })
  .meta({ id: 'MissingBlobs' });

export const blobKeptSchema = z
  .object({ digest: digestSchema, bytes: z.int().positive() })
  .meta({ id: 'BlobKept' });
