import { digestOf, type Entry } from '@becket/journal';
import { StoreUnavailable } from '@becket/store';
import { createMemoryStore } from '@becket/store/memory';
import { beforeEach, describe, expect, test } from 'vitest';
import { photoExchange } from './photo-exchange.ts';
import { type PhotoLink, ServerRefused } from './server-link.ts';

const bytesOf = (number: number) => Uint8Array.of(0xff, 0xd8, 0xff, number);
const entryFor = (number: number): Entry => ({
  id: `01J${String(number).padStart(23, '0')}`,
  job: '01J0000000000000000000000A',
  step: number + 1,
  at: '2026-03-01T10:00:00.000Z',
  by: 'Ada',
  device: 'bench tablet',
  fact: {
    kind: 'photo',
    v: 1,
    digest: digestOf(bytesOf(number)),
    mediaType: 'image/jpeg',
    bytes: 4,
    width: 2,
    height: 2,
    place: {},
    marks: [],
  },
});
const entries = [0, 1, 2].map(entryFor);
const digests = [0, 1, 2].map((number) => digestOf(bytesOf(number)));

/** A server's photos, and what was asked of it. */
function serverWith(...numbers: number[]) {
  const kept = new Map<string, Uint8Array>(
    numbers.map((number) => [digestOf(bytesOf(number)), bytesOf(number)]),
  );
  const asked: string[] = [];
  const link: PhotoLink = {
    missingPhotos: async (wanted) => {
      asked.push('missing');
      return wanted.filter((digest) => !kept.has(digest));
    },
    sendPhoto: async (digest, bytes) => {
      asked.push(`send ${digests.indexOf(digest)}`);
      kept.set(digest, bytes);
    },
    readPhoto: async (digest) => kept.get(digest) ?? Promise.reject(new ServerRefused(404, 'x', 'not there')),
  };
  return { link, kept, asked };
}

describe('photoExchange()', () => {
  let store = createMemoryStore();
  beforeEach(() => {
    store = createMemoryStore();
  });

  test('sends what is here and not there, once, and asks no more', async () => {
    const { link, kept, asked } = serverWith(1);
    const exchange = photoExchange(store, link);
    await store.blobs.put(bytesOf(0));
    await store.blobs.put(bytesOf(1));
    expect(await exchange.send(entries)).toEqual({ held: new Set() });
    expect(asked).toEqual(['missing', 'send 0']);
    expect([...kept.keys()].sort()).toEqual(digests.slice(0, 2).sort());
    await exchange.send(entries);
    expect(asked).toHaveLength(2);
    // Put back to an older copy, it is asked again.
    kept.clear();
    exchange.forgetServer();
    await exchange.send(entries);
    expect(kept.size).toBe(2);
  });

  test('brings what is there and not here, and leaves alone what is nowhere', async () => {
    const { link } = serverWith(0, 2);
    const exchange = photoExchange(store, link);
    expect(await exchange.bring(entries)).toBeUndefined();
    expect(await store.blobs.missing(digests)).toEqual([digests[1]]);
    expect(await store.blobs.get(digests[2]!)).toEqual(bytesOf(2));
  });

  test('does not keep bytes that were changed on the way', async () => {
    const { link } = serverWith(0);
    const exchange = photoExchange(store, { ...link, readPhoto: async () => bytesOf(7) });
    await exchange.bring([entryFor(0)]);
    expect(await store.blobs.missing([digests[0]!, digestOf(bytesOf(7))])).toHaveLength(2);
  });

  test('a photo the server refuses holds back its own entry and no other photo', async () => {
    const { link, kept } = serverWith();
    const exchange = photoExchange(store, {
      ...link,
      sendPhoto: async (digest, bytes) => {
        if (digest === digests[0]) throw new ServerRefused(413, 'too-large', 'Cannot take this photo.');
        kept.set(digest, bytes);
      },
    });
    for (const number of [0, 1]) await store.blobs.put(bytesOf(number));
    expect(await exchange.send(entries)).toEqual({
      held: new Set([digests[0]]),
      problem: 'Cannot take this photo.',
    });
    expect([...kept.keys()]).toEqual([digests[1]]);
  });

  test('says so when the device is full, and loses nothing', async () => {
    const { link } = serverWith(0);
    const full = new StoreUnavailable('full', 'here', 'Cannot keep this on the device: its storage is full.');
    const fullStore = { ...store, blobs: { ...store.blobs, put: () => Promise.reject(full) } };
    expect(await photoExchange(fullStore, link).bring(entries)).toBe(full.message);
  });
});
