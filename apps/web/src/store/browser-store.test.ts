// IndexedDB as the standard has it, in memory: Node has none of its own.
import 'fake-indexeddb/auto';
import { digestOf, type Entry, foldJob } from '@becket/journal';
import { EntryChanged, StoreUnavailable } from '@becket/store';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { describeBlobs } from '../../../../packages/store/src/testing/blob-suite.ts';
import {
  jobA,
  jobB,
  wireEntries,
  wireEntry,
} from '../../../../packages/store/src/testing/journal-samples.ts';
import { describeStore } from '../../../../packages/store/src/testing/store-suite.ts';
import { type BrowserStore, openBrowserStore } from './browser-store.ts';

let places = 0;
const newPlace = (): string => {
  places += 1;
  return `place ${places}`;
};

const browser = {
  newPlace,
  open: openBrowserStore,
  outlivesItself: true,
  // Several tabs.
  isShared: true,
  overwrite: async (place: string, digest: string, bytes: Uint8Array) => {
    const database = await openDB(place);
    await database.put('blobs', { digest, bytes });
    database.close();
  },
};

describeStore('browser', browser);
describeBlobs('browser', browser);

const opened: BrowserStore[] = [];
async function open(place: string): Promise<BrowserStore> {
  const store = await openBrowserStore(place);
  opened.push(store);
  return store;
}
afterEach(async () => {
  vi.restoreAllMocks();
  for (const store of opened.splice(0)) await store.close();
});

const photoBytes = Uint8Array.of(0xff, 0xd8, 0xff, 1);
const photoEntry: Entry = {
  ...wireEntry(50),
  fact: {
    kind: 'photo',
    v: 1,
    digest: digestOf(photoBytes),
    mediaType: 'image/jpeg',
    bytes: photoBytes.length,
    width: 2,
    height: 2,
    place: {},
    marks: [],
  },
};

/** What a device has that last ran the program when it knew of no photos: the first shape of the database. */
async function deviceOfVersionOne(place: string, entries: readonly Entry[], sent: ReadonlySet<string>) {
  const database = await openDB(place, 1, {
    upgrade(db) {
      const kept = db.createObjectStore('entries', { keyPath: ['job', 'arrival'] });
      kept.createIndex('by-id', 'id', { unique: true });
      kept.createIndex('unsent', 'unsentOf');
      db.createObjectStore('heads', { keyPath: 'job' });
      db.createObjectStore('links', { keyPath: 'job' });
    },
  });
  for (const [index, entry] of entries.entries()) {
    const { id, job } = entry;
    const unsentOf = sent.has(id) ? {} : { unsentOf: job };
    await database.put('entries', { job, arrival: index + 1, id, entry, ...unsentOf });
  }
  const { id, step, at } = entries.at(-1)!;
  await database.put('heads', {
    job: jobA,
    arrivals: entries.length,
    lastArrival: id,
    last: { step, id, at },
  });
  await database.put('links', { job: jobA, cursor: `2.${entries[1]!.id}` });
  database.close();
}

describe('the database on the device', () => {
  it('of the first version is carried over: every entry, what was not sent, and how far the server was read', async () => {
    const place = newPlace();
    const entries = [...wireEntries(4), photoEntry];
    const sent = new Set(entries.slice(0, 2).map(({ id }) => id));
    await deviceOfVersionOne(place, entries, sent);

    const store = await open(place);
    expect((await store.entries(jobA)).entries).toEqual(entries);
    expect(await store.unsent(jobA, 10)).toEqual(entries.slice(2));
    expect(await store.unsentCounts()).toEqual(new Map([[jobA, 3]]));
    expect(await store.serverCursor(jobA)).toBe(`2.${entries[1]!.id}`);
    // It takes what the older version could not: photos, beside further entries.
    expect(await store.blobs.missing([digestOf(photoBytes)])).toHaveLength(1);
    await store.blobs.put(photoBytes);
    expect(await store.append([wireEntry(60)])).toEqual({ added: 1, known: 0 });
    await store.close();

    const again = await open(place);
    expect(await again.blobs.get(digestOf(photoBytes))).toEqual(photoBytes);
    expect(await again.unsent(jobA, 10)).toEqual([...entries.slice(2), wireEntry(60)]);
  });

  it('of a later version is left as it is, and one sentence says what to do', async () => {
    const place = newPlace();
    (await openDB(place, 99, { upgrade: (db) => void db.createObjectStore('later') })).close();
    const failure = await openBrowserStore(place).catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(StoreUnavailable);
    expect((failure as StoreUnavailable).problem).toBe('later version');
    expect((failure as StoreUnavailable).message).toMatch(/^Cannot open .* Load this page again/);
    const database = await openDB(place, 99);
    expect([...database.objectStoreNames]).toEqual(['later']);
    database.close();
  });

  it('gives way to a later version that is opened in another tab', async () => {
    const place = newPlace();
    const store = await open(place);
    await store.append(wireEntries(2));
    const later = await openDB(place, 99);
    expect(await later.count('entries')).toBe(2);
    later.close();
    const failure = await store.append([wireEntry(5)]).catch((error: unknown) => error);
    expect((failure as StoreUnavailable).message).toMatch(/^Cannot keep this on the device: .*load the page/);
  });

  it('keeps nothing of a batch that the browser has no room for, and goes on once it has', async () => {
    const store = await open(newPlace());
    await store.append(wireEntries(2));
    const add = IDBObjectStore.prototype.add;
    let left = 3;
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (this: IDBObjectStore, value) {
      left -= 1;
      if (left < 0) throw new DOMException('no room', 'QuotaExceededError');
      return add.call(this, value);
    });
    const batch = wireEntries(5, { first: 2 });
    const failure = await store.append(batch).catch((error: unknown) => error);
    expect((failure as StoreUnavailable).problem).toBe('full');
    expect((failure as StoreUnavailable).message).toMatch(/storage is full\. Nothing was changed/);
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(2));
    expect(await store.jobs()).toMatchObject([{ entries: 2 }]);
    vi.restoreAllMocks();
    expect(await store.append(batch)).toEqual({ added: 5, known: 0 });
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(7));
  });

  it('tells the other tabs of what was added, and nobody of what was there already', async () => {
    const place = newPlace();
    const [here, there] = [await open(place), await open(place)];
    const told: string[] = [];
    here.onArrival((job) => told.push(`here ${job}`));
    const stop = there.onArrival((job) => told.push(`there ${job}`));
    await here.append([wireEntry(1)]);
    await vi.waitFor(() => expect(told).toEqual([`here ${jobA}`, `there ${jobA}`]));
    await here.append([wireEntry(1)]);
    stop();
    await here.append([wireEntry(2, { job: jobB })]);
    await vi.waitFor(() => expect(told).toEqual([`here ${jobA}`, `there ${jobA}`, `here ${jobB}`]));
  });
});

describe('entries that are read again', () => {
  it('are the same objects, so that a fold knows them again, whoever reads at the same time', async () => {
    const store = await open(newPlace());
    await store.append(wireEntries(3));
    const [first, second] = await Promise.all([store.entries(jobA), store.entries(jobA)]);
    const adding = store.append([wireEntry(3)]);
    const [third, fourth] = await Promise.all([store.entries(jobA), adding.then(() => store.entries(jobA))]);
    for (const { entries } of [second, third, fourth])
      for (const [index, entry] of first.entries.entries()) expect(entries[index]).toBe(entry);
    expect(fourth.entries).toEqual(wireEntries(4));
    expect(foldJob(fourth.entries)).toBe(foldJob((await store.entries(jobA)).entries));
  });
});

describe('a journal in the memory of a tab', () => {
  it('is read without asking the database, and holds what was added here as the objects that were added', async () => {
    const store = await open(newPlace());
    await store.append(wireEntries(3));
    await store.entries(jobA);
    const reads = vi.spyOn(IDBObjectStore.prototype, 'get');
    const added = wireEntry(3);
    expect(await store.inMemory.append([added])).toEqual({ added: 1, known: 0 });
    const held = await store.inMemory.entries(jobA);
    expect(reads).not.toHaveBeenCalled();
    expect(held.entries).toEqual(wireEntries(4));
    expect(held.entries[3]).toBe(added);
    // The database holds the same, with the same cursor.
    expect(await store.entries(jobA)).toEqual(held);
    expect(await store.unsent(jobA, 10)).toEqual(wireEntries(4));
  });

  it('has what another tab added once that has been told, and never takes the place of it', async () => {
    const place = newPlace();
    const [here, there] = [await open(place), await open(place)];
    await here.append(wireEntries(2));
    for (const store of [here, there]) await store.entries(jobA);
    // Both believe that the third place is free.
    const both = await Promise.all([
      here.inMemory.append([wireEntry(2)]),
      there.inMemory.append([wireEntry(3)]),
    ]);
    expect(both).toEqual([
      { added: 1, known: 0 },
      { added: 1, known: 0 },
    ]);
    for (const store of [here, there])
      await vi.waitFor(async () =>
        expect(new Set((await store.inMemory.entries(jobA)).entries)).toEqual(new Set(wireEntries(4))),
      );
    expect((await here.entries(jobA)).entries).toEqual((await there.entries(jobA)).entries);
  });

  it('takes an entry that stands already for known, and refuses another one of its id', async () => {
    const store = await open(newPlace());
    await store.append(wireEntries(2));
    await store.entries(jobA);
    expect(await store.inMemory.append([wireEntry(1), wireEntry(2)])).toEqual({ added: 1, known: 1 });
    await store.entries(jobA);
    const failure = await store.inMemory
      .append([{ ...wireEntry(1), by: 'somebody else' }])
      .catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(EntryChanged);
    expect((await store.inMemory.entries(jobA)).entries).toEqual(wireEntries(3));
  });

  it('is what the database holds after a write that failed', async () => {
    const store = await open(newPlace());
    await store.append(wireEntries(2));
    await store.entries(jobA);
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    const failure = await store.inMemory.append([wireEntry(2)]).catch((error: unknown) => error);
    expect(failure).toMatchObject({ name: 'StoreUnavailable', problem: 'full' });
    vi.restoreAllMocks();
    expect((await store.inMemory.entries(jobA)).entries).toEqual(wireEntries(2));
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(2));
    expect(await store.inMemory.append([wireEntry(2)])).toEqual({ added: 1, known: 0 });
  });
});

describe('what has not left the device', () => {
  it('is what was added here, until it is marked as sent, or comes back from the server', async () => {
    const store = await open(newPlace());
    await store.append(wireEntries(3));
    await store.takeIn(jobA, [wireEntry(9)], 'its cursor');
    expect(await store.unsent(jobA, 10)).toEqual(wireEntries(3));
    expect(await store.unsent(jobA, 2)).toHaveLength(2);
    await store.markSent(jobA, [wireEntry(0).id]);
    // The answer to a batch was lost, but the server has it.
    await store.takeIn(jobA, [wireEntry(1)], 'its next cursor');
    expect(await store.unsent(jobA, 10)).toEqual([wireEntry(2)]);
    expect(await store.serverCursor(jobA)).toBe('its next cursor');
    expect((await store.entries(jobA)).entries).toHaveLength(4);
  });

  it('is everything again once the server is another one', async () => {
    const store = await open(newPlace());
    await store.takeIn(jobA, wireEntries(3), 'its cursor');
    await store.append([wireEntry(3), wireEntry(4, { job: jobB })]);
    await store.forgetServer(jobA);
    expect(await store.unsent(jobA, 10)).toEqual(wireEntries(4));
    expect(await store.serverCursor(jobA)).toBeUndefined();
    expect(await store.unsentCounts()).toEqual(
      new Map([
        [jobA, 4],
        [jobB, 1],
      ]),
    );
  });

  it('keeps the cursor of the server only with the entries it stands for', async () => {
    const store = await open(newPlace());
    await store.append([wireEntry(1)]);
    const changed = { ...wireEntry(1), by: 'Bo' };
    await expect(store.takeIn(jobA, [wireEntry(2), changed], 'too far')).rejects.toThrow('other content');
    expect(await store.serverCursor(jobA)).toBeUndefined();
    expect((await store.entries(jobA)).entries).toEqual([wireEntry(1)]);
  });
});
