// IndexedDB as the standard has it, in memory: Node has none of its own.
import 'fake-indexeddb/auto';
import { digestOf, type Entry, foldJob, type Ulid } from '@becket/journal';
import { CursorNotKnown, type JournalStore } from '@becket/store';
import { createMemoryStore } from '@becket/store/memory';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  jobA,
  jobB,
  wireEntries,
  wireEntry,
} from '../../../../packages/store/src/testing/journal-samples.ts';
import { type BrowserStore, openBrowserStore } from './browser-store.ts';
import { type Exchange, startExchange } from './exchange.ts';
import { ServerAway, type ServerLink, ServerRefused } from './server-link.ts';

/** A server over a store in memory, which can be away, and what was asked of it in which order. */
class TestServer {
  store: JournalStore = createMemoryStore();
  isAway = false;
  /** Called once what was sent is kept, before the answer goes out: an error thrown there is an answer that is lost. */
  beforeAnswer: () => void = () => {};
  refused: Ulid | undefined;
  readonly asked: string[] = [];
  onNews: (() => void) | undefined;

  readonly link: ServerLink = {
    jobs: async () => {
      this.#answer('jobs');
      const jobs = await this.store.jobs();
      return jobs.map((listed) => ({ ...listed, title: 'a piano', isSealed: false }));
    },
    send: async (job, entries) => {
      this.#answer(`send ${entries.length}`);
      if (job === this.refused) throw new ServerRefused(409, 'entry-changed', 'Cannot take this entry.');
      // Over the wire nothing stays the same object.
      await this.store.append(JSON.parse(JSON.stringify(entries)) as Entry[]);
      this.beforeAnswer();
    },
    readAfter: async (job, cursor) => {
      this.#answer('read');
      try {
        return await this.store.entries(job, cursor);
      } catch (error) {
        if (!(error instanceof CursorNotKnown)) throw error;
        throw new ServerRefused(409, 'cursor-not-known', error.message);
      }
    },
    listen: (_job, onNews) => {
      this.onNews = onNews;
      return () => {
        this.onNews = undefined;
      };
    },
    missingPhotos: async (digests) => {
      this.#answer('missing photos');
      return this.store.blobs.missing(digests);
    },
    sendPhoto: async (_digest, bytes) => {
      this.#answer('photo');
      await this.store.blobs.put(bytes);
      this.beforeAnswer();
    },
    readPhoto: async (digest) => {
      this.#answer('read photo');
      const bytes = await this.store.blobs.get(digest);
      if (bytes === undefined) throw new ServerRefused(404, 'blob-not-found', 'Cannot read this photo.');
      return bytes;
    },
  };

  async ids(job = jobA): Promise<string[]> {
    return (await this.store.entries(job)).entries.map(({ id }) => id);
  }

  #answer(what: string): void {
    if (this.isAway) throw new ServerAway();
    this.asked.push(what);
  }
}

const photoBytes = (number: number) => Uint8Array.of(0xff, 0xd8, 0xff, number >> 8, number & 255);
const photoEntry = (number: number): Entry => ({
  ...wireEntry(number),
  fact: {
    kind: 'photo',
    v: 1,
    digest: digestOf(photoBytes(number)),
    mediaType: 'image/jpeg',
    bytes: 5,
    width: 2,
    height: 2,
    place: {},
    marks: [],
  },
});
const idsOf = (entries: readonly Entry[]): string[] => entries.map(({ id }) => id);

let places = 0;
const running: { store: BrowserStore; exchange: Exchange }[] = [];
async function device(server: TestServer): Promise<{ store: BrowserStore; exchange: Exchange }> {
  places += 1;
  const store = await openBrowserStore(`device ${places}`);
  const exchange = startExchange({
    store,
    link: server.link,
    now: () => new Date('2026-03-01T10:00:00.000Z'),
  });
  running.push({ store, exchange });
  return { store, exchange };
}

let server: TestServer;
beforeEach(() => {
  // Only rounds that a test asks for: those that begin by themselves wait until the clock is moved.
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  server = new TestServer();
});
afterEach(async () => {
  for (const { store, exchange } of running.splice(0)) {
    exchange.stop();
    await store.close();
  }
  vi.useRealTimers();
});

describe('a round of the exchange', () => {
  test('sends what is only here, oldest first, in parts, and each photo before the entry that names it', async () => {
    const { store, exchange } = await device(server);
    const entries = [...wireEntries(900), photoEntry(901)];
    await store.blobs.put(photoBytes(901));
    await store.append(entries);
    await exchange.round();
    expect(server.asked.filter((what) => /^send|^photo/.test(what))).toEqual([
      'photo',
      'send 400',
      'send 400',
      'send 101',
    ]);
    expect(await server.ids()).toEqual(idsOf(entries));
    expect(exchange.state.get()).toMatchObject({
      server: 'here',
      unsent: 0,
      problem: undefined,
      lastAt: '2026-03-01T10:00:00.000Z',
    });
  });

  test('asks for the list alone once both sides are alike', async () => {
    const { store, exchange } = await device(server);
    await store.append(wireEntries(3));
    await exchange.round();
    server.asked.length = 0;
    await exchange.round();
    expect(server.asked).toEqual(['jobs']);
  });

  test('that finds no server keeps everything, and says how much is only here', async () => {
    server.isAway = true;
    const { store, exchange } = await device(server);
    await store.append([...wireEntries(3), wireEntry(7, { job: jobB })]);
    await exchange.round();
    expect(exchange.state.get()).toMatchObject({
      server: 'away',
      unsent: 4,
      unsentByJob: new Map([
        [jobA, 3],
        [jobB, 1],
      ]),
      lastAt: undefined,
      problem: undefined,
    });
    expect(await store.unsent(jobA, 10)).toEqual(wireEntries(3));
  });

  test('all is never said to be sent beside an entry that was kept just now', async () => {
    const { store, exchange } = await device(server);
    await store.append(wireEntries(2));
    expect(exchange.state.get()).toMatchObject({ unsent: 2, unsentByJob: new Map([[jobA, 2]]) });
    await exchange.round();
    expect(exchange.state.get().unsent).toBe(0);
    await store.append([wireEntry(2)]);
    expect(exchange.state.get().unsent).toBe(1);
    await exchange.round();
    // What the server has sent is not waiting to be sent.
    await store.takeIn(jobA, [wireEntry(9)], 'its cursor');
    expect(exchange.state.get().unsent).toBe(0);
  });

  test('nor by a count that began before it was kept', async () => {
    const { store, exchange } = await device(server);
    server.isAway = true;
    await exchange.round();
    const count = store.unsentCounts.bind(store);
    let release = () => {};
    const held = new Promise<void>((done) => {
      release = done;
    });
    const counted = new Promise<void>((done) => {
      vi.spyOn(store, 'unsentCounts').mockImplementationOnce(async () => {
        const found = await count();
        done();
        await held;
        return found;
      });
    });
    const round = exchange.round();
    await counted;
    await store.append(wireEntries(1));
    const seen: number[] = [exchange.state.get().unsent];
    exchange.state.subscribe(() => seen.push(exchange.state.get().unsent));
    release();
    await round;
    expect(new Set(seen)).toEqual(new Set([1]));
  });

  test('that is cut off between two parts goes on with the rest, in order', async () => {
    const { store, exchange } = await device(server);
    await store.append(wireEntries(900));
    server.beforeAnswer = () => {
      if (server.asked.filter((what) => what.startsWith('send')).length === 1) return;
      // The second part is kept, but nobody here ever hears of it.
      server.isAway = true;
      throw new ServerAway();
    };
    await exchange.round();
    expect(exchange.state.get()).toMatchObject({ server: 'away', unsent: 500 });
    expect(await server.ids()).toHaveLength(800);

    server.isAway = false;
    server.beforeAnswer = () => {};
    await exchange.round();
    expect(exchange.state.get()).toMatchObject({ server: 'here', unsent: 0 });
    expect(await server.ids()).toEqual(idsOf(wireEntries(900)));
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(900));
  });

  test('that is cut off between two photos sends no entry yet, and no photo twice', async () => {
    const { store, exchange } = await device(server);
    for (const number of [0, 1, 2]) await store.blobs.put(photoBytes(number));
    await store.append([0, 1, 2].map(photoEntry));
    server.beforeAnswer = () => {
      server.isAway = true;
    };
    await exchange.round();
    expect(await server.ids()).toEqual([]);
    expect(exchange.state.get()).toMatchObject({ server: 'away', unsent: 3 });
    server.isAway = false;
    server.beforeAnswer = () => {};
    await exchange.round();
    expect(server.asked.filter((what) => what === 'photo')).toHaveLength(3);
    expect(await server.ids()).toHaveLength(3);
    expect(exchange.state.get().unsent).toBe(0);
  });

  test('whose answer was lost is repeated, and the server has each entry once', async () => {
    const { store, exchange } = await device(server);
    await store.append(wireEntries(5));
    server.beforeAnswer = () => {
      throw new ServerAway();
    };
    for (let time = 0; time < 3; time += 1) await exchange.round();
    expect(exchange.state.get().unsent).toBe(5);
    server.beforeAnswer = () => {};
    await exchange.round();
    expect(await server.ids()).toEqual(idsOf(wireEntries(5)));
    expect(exchange.state.get().unsent).toBe(0);
  });

  test('sends everything again to a server that was put back to an older copy', async () => {
    const { store, exchange } = await device(server);
    const other = await device(server);
    await store.append([...wireEntries(4), photoEntry(20)]);
    await store.blobs.put(photoBytes(20));
    await exchange.round();
    await other.exchange.bring(jobA);
    server.store = createMemoryStore();
    await server.store.append(wireEntries(2));
    await other.store.append([wireEntry(30)]);
    await other.exchange.round();
    await exchange.round();
    expect(new Set(await server.ids())).toEqual(
      new Set(idsOf([...wireEntries(4), photoEntry(20), wireEntry(30)])),
    );
    expect(await server.store.blobs.missing([digestOf(photoBytes(20))])).toEqual([]);
    expect((await store.entries(jobA)).entries).toHaveLength(6);
  });

  test('goes on with the other jobs when the server refuses one, and says why in its words', async () => {
    const { store, exchange } = await device(server);
    server.refused = jobA;
    await store.append([...wireEntries(2), wireEntry(7, { job: jobB })]);
    await exchange.round();
    expect(await server.ids(jobB)).toEqual([wireEntry(7).id]);
    expect(exchange.state.get()).toMatchObject({
      server: 'here',
      unsent: 2,
      problem: 'Cannot take this entry.',
    });
  });

  test('goes on with the other jobs when what came of one cannot be taken, and keeps nothing of that', async () => {
    const { store, exchange } = await device(server);
    await store.append([wireEntry(1), wireEntry(7, { job: jobB })]);
    // Somebody else's entry under an id that is known here with other content.
    await server.store.append([{ ...wireEntry(1), by: 'Bo' }, wireEntry(2)]);
    server.link.send = async (job, entries) => {
      if (job === jobB) await server.store.append(entries);
    };
    await exchange.round();
    expect(await server.ids(jobB)).toEqual([wireEntry(7).id]);
    expect((await store.entries(jobA)).entries).toEqual([wireEntry(1)]);
    expect(exchange.state.get().problem).toMatch(/^Cannot add entry .* with other content/);
  });
});

describe('when rounds begin', () => {
  const rounds = () => server.asked.filter((what) => what === 'jobs').length;
  /** Moves the clock, and lets what began thereby come to its end. */
  async function pass(milliseconds: number): Promise<void> {
    await vi.advanceTimersByTimeAsync(milliseconds);
    for (let turn = 0; turn < 50; turn += 1) await new Promise((done) => setImmediate(done));
  }

  test('waits grow from 2 s to 60 s while the server is away, and a sign of life starts one at once', async () => {
    server.isAway = true;
    let tried = 0;
    const jobs = server.link.jobs;
    server.link.jobs = () => {
      tried += 1;
      return jobs();
    };
    const { exchange } = await device(server);
    exchange.wake();
    await pass(0);
    expect(tried).toBe(1);
    for (const seconds of [2, 4, 8, 16, 32, 60, 60]) {
      const before = tried;
      await pass(seconds * 1000 - 1);
      expect(tried).toBe(before);
      await pass(1);
      expect(tried).toBe(before + 1);
    }
    server.isAway = false;
    exchange.wake();
    await pass(0);
    expect(exchange.state.get().server).toBe('here');
    expect(rounds()).toBe(1);
    await pass(30_000);
    expect(rounds()).toBe(2);
  });

  test('one begins soon after an entry is kept, and many wishes make one', async () => {
    const { store, exchange } = await device(server);
    for (const entry of wireEntries(5)) await store.append([entry]);
    for (let wish = 0; wish < 5; wish += 1) exchange.wake();
    await pass(100);
    expect(rounds()).toBe(1);
    expect(await server.ids()).toHaveLength(5);
  });

  test('one begins soon for an entry that is kept while another round is at its end', async () => {
    const { store, exchange } = await device(server);
    const [first, second] = wireEntries(2);
    await store.append([first!]);
    const { readAfter } = server.link;
    // The job was sent already when this one is kept.
    server.link.readAfter = async (job, cursor) => {
      server.link.readAfter = readAfter;
      await store.append([second!]);
      return readAfter(job, cursor);
    };
    exchange.wake();
    await pass(0);
    expect(await server.ids()).toEqual([first!.id]);
    await pass(100);
    expect(await server.ids()).toEqual([first!.id, second!.id]);
    expect(exchange.state.get().unsent).toBe(0);
  });

  test('news of the job that is watched starts one; of another, no more', async () => {
    const { exchange } = await device(server);
    exchange.watch(jobA);
    await server.store.append(wireEntries(2));
    server.onNews?.();
    await pass(0);
    expect(rounds()).toBe(1);
    exchange.watch(undefined);
    expect(server.onNews).toBeUndefined();
  });

  test('none begins once it is stopped', async () => {
    const { store, exchange } = await device(server);
    exchange.wake();
    exchange.stop();
    await store.append([wireEntry(1)]);
    await pass(200_000);
    expect(server.asked).toEqual([]);
  });
});

describe('two devices on one job', () => {
  const moves = fc.array(
    fc.oneof(
      fc.record({ device: fc.nat({ max: 1 }), adds: fc.integer({ min: 1, max: 4 }), photo: fc.boolean() }),
      fc.record({ device: fc.nat({ max: 1 }), exchanges: fc.constant(true) }),
      fc.record({ server: fc.constantFrom('here', 'away', 'answers are lost') }),
    ),
    { maxLength: 14 },
  );

  test('have the same journal and the same photos in the end, and nothing is lost, whatever happens between', async () => {
    await fc.assert(
      fc.asyncProperty(moves, async (happened) => {
        server = new TestServer();
        const devices = [await device(server), await device(server)];
        const written: Entry[] = [wireEntry(0)];
        await devices[0]!.store.append(written);
        let next = 1;
        for (const move of happened) {
          if ('server' in move) {
            server.isAway = move.server === 'away';
            server.beforeAnswer = () => {
              if (move.server === 'answers are lost') throw new ServerAway();
            };
            continue;
          }
          const { store, exchange } = devices[move.device]!;
          if ('exchanges' in move) {
            await exchange.round();
            continue;
          }
          const batch = Array.from({ length: move.adds }, (_, index) =>
            move.photo ? photoEntry(next + index) : wireEntry(next + index),
          );
          if (move.photo)
            for (let index = 0; index < move.adds; index += 1)
              await store.blobs.put(photoBytes(next + index));
          next += move.adds;
          await store.append(batch);
          written.push(...batch);
        }
        server.isAway = false;
        server.beforeAnswer = () => {};
        for (const { exchange } of [...devices, ...devices]) {
          await exchange.round();
          // A device that has never seen the job is told of it, and brings it.
          if (exchange.state.get().serverJobs.some(({ job }) => job === jobA)) await exchange.bring(jobA);
        }
        const photos = written.flatMap(({ fact }) => (fact.kind === 'photo' ? [fact.digest as string] : []));
        const all = new Set(idsOf(written));
        expect(new Set(await server.ids())).toEqual(all);
        const states = [];
        for (const { store, exchange } of devices) {
          const { entries } = await store.entries(jobA);
          expect(entries).toHaveLength(all.size);
          expect(new Set(idsOf(entries))).toEqual(all);
          expect(await store.blobs.missing(photos)).toEqual([]);
          expect(exchange.state.get()).toMatchObject({ unsent: 0, problem: undefined });
          states.push(foldJob(entries));
        }
        expect(states[0]).toEqual(states[1]);
      }),
      { numRuns: 30, seed: 7 },
    );
  });
});
