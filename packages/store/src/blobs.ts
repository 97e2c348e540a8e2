import { digestOf } from '@becket/journal';
import { StoreUnavailable } from './port.ts';

/**
 * Where the bytes of photos are kept, each under the SHA-256 of its bytes (hexadecimal, FIPS 180-4), so that a photo can
 * be neither changed nor kept twice, and whatever was damaged shows when it is read.
 */
export interface BlobStore {
  /**
   * Keeps the bytes and gives back their digest; when it resolves they are on the disk. Putting the same bytes again
   * changes nothing, but mends a copy that was damaged.
   * Throws: RangeError when there are no bytes or more than `largestBlob_bytes`; StoreUnavailable when the store cannot write.
   */
  put(bytes: Uint8Array): Promise<string>;
  /**
   * The bytes of that digest; undefined when the store does not have them.
   * Throws: StoreUnavailable with the problem 'damaged' when what is kept does not have that digest.
   */
  get(digest: string): Promise<Uint8Array | undefined>;
  /** Those of the digests that the store does not have, in the order given, each once. */
  missing(digests: readonly string[]): Promise<readonly string[]>;
}

/** The largest blob a store takes: a re-encoded photo is about a tenth of it. */
export const largestBlob_bytes = 8 * 1024 * 1024;

/** What a digest looks like. */
export const digestPattern = /^[0-9a-f]{64}$/;

/** Throws RangeError when a blob is empty or too large. */
export function requireBlobSize(bytes: Uint8Array): void {
  if (bytes.length > 0 && bytes.length <= largestBlob_bytes) return;
  const found = bytes.length === 0 ? 'no byte' : `${(bytes.length / 1e6).toPrecision(3)} MB`;
  throw new RangeError(
    `Cannot keep this photo: 1 byte to ${(largestBlob_bytes / 1e6).toPrecision(3)} MB are taken, ${found} came. Take it again, or make it smaller.`,
  );
}

/** The bytes, once their digest was found to be the one they are kept under. Throws StoreUnavailable. */
export function verifiedBlob(bytes: Uint8Array, digest: string, path: string): Uint8Array {
  if (digestOf(bytes) === digest) return bytes;
  throw new StoreUnavailable(
    'damaged',
    path,
    `Cannot read the photo ${digest.slice(0, 12)}… in ${path}: its bytes are damaged or cut off, nothing was changed. Bring it in again from a saved job file, or from a device that has it.`,
  );
}
