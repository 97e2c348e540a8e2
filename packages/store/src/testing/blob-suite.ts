import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { largestBlob_bytes } from '../blobs.ts';
import { type JournalStore, StoreUnavailable } from '../port.ts';
import { jobA, wireEntries } from './journal-samples.ts';
import type { StoreUnderTest } from './store-suite.ts';

export interface BlobsUnderTest extends StoreUnderTest {
  /** Writes other bytes where a closed store keeps that blob; left out where nothing is kept outside the program. */
  readonly overwrite?: (place: string, digest: string, bytes: Uint8Array) => void | Promise<void>;
}

/** What every store behind the port must do with photos. */
export function describeBlobs(name: string, { newPlace, open, outlivesItself, overwrite }: BlobsUnderTest) {
  describe(`blobs of the ${name} store`, () => {
    let place: string;
    let store: JournalStore;
    beforeEach(async () => {
      place = newPlace();
      store = await open(place);
    });
    afterEach(() => store.close());
    const reopen = async () => {
      if (!outlivesItself) return;
      await store.close();
      store = await open(place);
    };
    /** Node's own SHA-256: not the code that names the blobs. */
    const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

    it('come back byte for byte under the SHA-256 of their bytes, also when it is opened again', async () => {
      await fc.assert(
        fc.asyncProperty(fc.uint8Array({ minLength: 1, maxLength: 5000 }), async (bytes) => {
          const digest = await store.blobs.put(bytes);
          expect(digest).toBe(sha256(bytes));
          expect(await store.blobs.get(digest)).toEqual(new Uint8Array(bytes));
        }),
        { numRuns: 25 },
      );
      const large = Uint8Array.from({ length: 3_000_000 }, (_, index) => (index * 7919) >> 3);
      const digest = await store.blobs.put(large);
      await reopen();
      // Compared as a whole: a million single comparisons would take their time.
      expect(Buffer.compare((await store.blobs.get(digest))!, large)).toBe(0);
    });

    it('are kept once, however often and at once they are put', async () => {
      const bytes = new Uint8Array([1, 2, 3]);
      const digests = await Promise.all(Array.from({ length: 20 }, () => store.blobs.put(bytes)));
      expect(new Set(digests)).toEqual(new Set([sha256(bytes)]));
      await reopen();
      expect(await store.blobs.put(bytes)).toBe(digests[0]);
      expect(await store.blobs.get(digests[0]!)).toEqual(bytes);
    });

    it('that are not there are undefined, and named as missing, each once and in order', async () => {
      const here = await store.blobs.put(new Uint8Array([1]));
      const absent = [sha256(new Uint8Array([2])), sha256(new Uint8Array([3]))];
      expect(await store.blobs.get(absent[0]!)).toBeUndefined();
      expect(await store.blobs.missing([absent[1]!, here, absent[0]!, absent[1]!])).toEqual([
        absent[1],
        absent[0],
      ]);
      expect(await store.blobs.missing([])).toEqual([]);
      const many = Array.from({ length: 2500 }, (_, index) => sha256(new Uint8Array([4, index >> 8, index])));
      expect(await store.blobs.missing([...many, here])).toEqual(many);
    });

    it.each(['', '../becket-store.json', 'A'.repeat(64)])('of the name %j are not there', async (digest) => {
      expect(await store.blobs.get(digest)).toBeUndefined();
      expect(await store.blobs.missing([digest])).toEqual([digest]);
    });

    it('are kept from nothing up to the limit, and refused above it', async () => {
      const largest = new Uint8Array(largestBlob_bytes).fill(7);
      expect(await store.blobs.missing([await store.blobs.put(largest)])).toEqual([]);
      const larger = new Uint8Array(largestBlob_bytes + 1);
      await expect(store.blobs.put(larger)).rejects.toThrow(/^Cannot keep this photo: .*8\.39 MB are taken/);
      await expect(store.blobs.put(new Uint8Array())).rejects.toThrow(RangeError);
      expect(await store.blobs.missing([sha256(larger)])).toEqual([sha256(larger)]);
    });

    it('are kept as they were given, whatever is done to the bytes afterwards', async () => {
      const bytes = new Uint8Array([1, 2, 3]);
      const putting = store.blobs.put(bytes);
      bytes.fill(9);
      const digest = await putting;
      (await store.blobs.get(digest))!.fill(8);
      expect(await store.blobs.get(digest)).toEqual(new Uint8Array([1, 2, 3]));
    });

    it('leave the journals alone', async () => {
      await store.append(wireEntries(3));
      await store.blobs.put(new Uint8Array([1]));
      await reopen();
      expect((await store.entries(jobA)).entries).toEqual(wireEntries(3));
      expect(await store.jobs()).toHaveLength(1);
    });

    if (overwrite !== undefined) {
      it.each([
        ['cut off', new Uint8Array([1, 2])],
        ['empty', new Uint8Array()],
        ['changed in one bit', new Uint8Array([1, 2, 3, 5])],
      ])(
        'that were %s on the disk are found out in one sentence, and mended by putting again',
        async (_, bad) => {
          const bytes = new Uint8Array([1, 2, 3, 4]);
          const digest = await store.blobs.put(bytes);
          await store.close();
          await overwrite(place, digest, bad);
          store = await open(place);
          const failure = await store.blobs.get(digest).catch((error: unknown) => error);
          expect(failure).toBeInstanceOf(StoreUnavailable);
          const { problem, message } = failure as StoreUnavailable;
          expect(problem).toBe('damaged');
          expect(message).toMatch(/^Cannot read the photo [0-9a-f]{12}… in .*damaged or cut off/);
          expect(message.split('\n')).toHaveLength(1);
          await store.blobs.put(bytes);
          expect(await store.blobs.get(digest)).toEqual(bytes);
        },
      );
    }
  });
}
