import { message } from '@becket/core';
import type { Entry, Ulid } from '@becket/journal';
import {
  type Cursor,
  CursorNotKnown,
  EntryChanged,
  type JobListing,
  type JournalStore,
  readCursor,
  StoreUnavailable,
  splitBatch,
  writeCursor,
} from '@becket/store';
import { type DBSchema, type IDBPDatabase, openDB, unwrap } from 'idb';
import { type BlobTable, browserBlobs } from './browser-blobs.ts';
import { writeAtOnce } from './write-at-once.ts';

/** One entry as this device keeps it. */
interface KeptEntry {
  readonly job: Ulid;
  /** Number of its arrival on this device within its job, counted from 1. */
  readonly arrival: number;
  readonly id: Ulid;
  readonly entry: Entry;
  /** Its job, as long as no server is known to have it; left out afterwards, which takes it out of the index. */
  readonly unsentOf?: Ulid;
}

interface Head {
  readonly job: Ulid;
  readonly arrivals: number;
  readonly lastArrival: Ulid;
  readonly last: { readonly step: number; readonly id: Ulid; readonly at: string };
}

interface Schema extends DBSchema {
  entries: {
    key: [Ulid, number];
    value: KeptEntry;
    indexes: { 'by-id': Ulid; unsent: Ulid };
  };
  heads: { key: Ulid; value: Head };
  /** How far this device has read each job on the server. */
  links: { key: Ulid; value: { readonly job: Ulid; readonly cursor: Cursor } };
  /** Photos, each under the digest of its bytes. */
  blobs: { key: string; value: { readonly digest: string; readonly bytes: Uint8Array } };
}

/** Told of a job to which entries were added, and of how many of them this tab has made: no server has those yet. */
export type ArrivalListener = (job: Ulid, made: number) => void;

/** The journals on this device, and what the exchange with a server needs to know of them. */
export interface BrowserStore extends JournalStore {
  /**
   * The same store, read out of this tab's memory without asking the database. What another tab wrote comes a moment
   * later here, when it has been told: as what another device wrote does.
   */
  readonly inMemory: Pick<JournalStore, 'entries' | 'append'>;
  /** Keeps what a server sent: it counts as being there. The server's cursor is kept in the same transaction. */
  takeIn(job: Ulid, entries: readonly Entry[], cursor: Cursor): Promise<{ readonly added: number }>;
  /** Entries that no server is known to have, oldest first. */
  unsent(job: Ulid, limit: number): Promise<readonly Entry[]>;
  unsentCounts(): Promise<ReadonlyMap<Ulid, number>>;
  markSent(job: Ulid, ids: readonly Ulid[]): Promise<void>;
  serverCursor(job: Ulid): Promise<Cursor | undefined>;
  /** The server does not know where we were: read from the beginning, and send again what is not there. */
  forgetServer(job: Ulid): Promise<void>;
  /** Calls back with the job whenever entries were added, here or in another tab. Gives back the way to stop. */
  onArrival(listener: ArrivalListener): () => void;
}

const databaseName = 'becket';
/** 1: journals; 2: photos beside them. What an older version kept stays as it is. */
const databaseVersion = 2;

/**
 * Journals in the browser's own database, behind the same port as on a server.
 *
 * Several tabs may write at once: each append is one transaction over the job's head, and the others are told.
 * What was read stays in memory, and only what arrived since is read again, so that an edit costs one small read.
 * Throws: StoreUnavailable when the browser does not let anything be kept.
 */
export async function openBrowserStore(name = databaseName): Promise<BrowserStore> {
  let database: IDBPDatabase<Schema>;
  try {
    database = await openDB<Schema>(name, databaseVersion, {
      upgrade(db, found) {
        if (found < 1) {
          const entries = db.createObjectStore('entries', { keyPath: ['job', 'arrival'] });
          entries.createIndex('by-id', 'id', { unique: true });
          entries.createIndex('unsent', 'unsentOf');
          db.createObjectStore('heads', { keyPath: 'job' });
          db.createObjectStore('links', { keyPath: 'job' });
        }
        if (found < 2) db.createObjectStore('blobs', { keyPath: 'digest' });
      },
      // A newer version of the program in another tab needs the database: let it have it.
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    });
  } catch (cause) {
    const isLater = cause instanceof DOMException && cause.name === 'VersionError';
    throw isLater
      ? new StoreUnavailable(
          'later version',
          name,
          message(
            'Cannot open the journals on this device: a later version of Becket wrote them. Load this page again to get that version.',
          ),
          { cause },
        )
      : new StoreUnavailable(
          'cannot be opened',
          name,
          message(
            'Cannot keep anything on this device: the browser does not let this page store data. Leave private browsing, or allow site data for this address, and load again.',
          ),
          { cause },
        );
  }

  const channel =
    typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(`${name}-arrivals`);
  const listeners = new Set<ArrivalListener>();
  const tell = (job: Ulid, made: number) => {
    for (const listener of listeners) listener(job, made);
  };
  if (channel)
    channel.onmessage = ({ data }) => {
      isBehind.set(data as Ulid, {});
      tell(data as Ulid, 0);
    };

  /** Always the same objects, by which a fold knows what it has folded already; nobody can change them. */
  const inMemory = new Map<Ulid, readonly Entry[]>();
  /** The head that belongs to what is in memory. */
  const headsInMemory = new Map<Ulid, Head>();
  /** Jobs of which entries may have been added that are not in memory yet, each with a mark of its own every time. */
  const isBehind = new Map<Ulid, object>();

  async function allEntries(job: Ulid): Promise<{ entries: readonly Entry[]; head: Head | undefined }> {
    const mark = isBehind.get(job);
    const transaction = database.transaction(['heads', 'entries']);
    const head = await transaction.objectStore('heads').get(job);
    if (head === undefined) return { entries: [], head };
    let held = inMemory.get(job) ?? [];
    if (held.length < head.arrivals) {
      const range = IDBKeyRange.bound([job, held.length + 1], [job, head.arrivals]);
      const fresh = await transaction.objectStore('entries').getAll(range);
      // Another reader may have been quicker: its objects are the ones to hand out.
      const meanwhile = inMemory.get(job) ?? [];
      const further = fresh.slice(meanwhile.length - held.length).map(({ entry }) => frozen(entry));
      held = meanwhile.length < head.arrivals ? [...meanwhile, ...further] : meanwhile;
      inMemory.set(job, held);
    }
    if (inMemory.get(job)?.length === head.arrivals) headsInMemory.set(job, head);
    // What was told of during this reading may have come too late for it.
    if (isBehind.get(job) === mark) isBehind.delete(job);
    return { entries: held.length === head.arrivals ? held : held.slice(0, head.arrivals), head };
  }

  async function add(
    batch: readonly Entry[],
    { isSent, cursor }: { isSent: boolean; cursor?: { job: Ulid; cursor: Cursor } },
  ): Promise<{ added: number; known: number }> {
    const addedTo = new Map<Ulid, number>();
    let result = { added: 0, known: 0 };
    try {
      const transaction = database.transaction(['entries', 'heads', 'links'], 'readwrite', {
        durability: 'strict',
      });
      try {
        const entries = transaction.objectStore('entries');
        const heads = transaction.objectStore('heads');
        const found = await Promise.all(batch.map(({ id }) => entries.index('by-id').get(id)));
        const keptById = new Map(found.flatMap((kept) => (kept ? [[kept.id, kept] as const] : [])));
        const { fresh, known } = splitBatch(batch, (id) => keptById.get(id)?.entry);
        if (isSent) {
          for (const { unsentOf, ...kept } of keptById.values())
            if (unsentOf !== undefined) await entries.put(kept);
        }
        const newHeads = new Map<Ulid, Head>();
        for (const entry of fresh) {
          const head = headAfter(newHeads.get(entry.job) ?? (await heads.get(entry.job)), entry);
          newHeads.set(entry.job, head);
          asPart(entries.add(keptEntry(entry, head, isSent)));
        }
        for (const head of newHeads.values()) {
          asPart(heads.put(head));
          addedTo.set(head.job, fresh.filter(({ job }) => job === head.job).length);
        }
        if (cursor) asPart(transaction.objectStore('links').put(cursor));
        await transaction.done;
        result = { added: fresh.length, known };
      } catch (error) {
        try {
          transaction.abort();
        } catch {
          // It has ended already: that is what was wanted.
        }
        await transaction.done.catch(() => {});
        throw transaction.error ?? error;
      }
    } catch (cause) {
      if (cause instanceof EntryChanged) throw cause;
      throw cannotWrite(cause, name);
    }
    for (const [job, added] of addedTo) {
      isBehind.set(job, {});
      channel?.postMessage(job);
      tell(job, isSent ? 0 : added);
    }
    return result;
  }

  /**
   * Adds to a job that is in memory without reading anything first: an entry whose number of arrival or id is taken by
   * then, which another tab has been quicker with, is refused by the database itself. Undefined when that was so, or
   * the job is not in memory: nothing is written then, and `add` has to look.
   */
  async function addToHeld(batch: readonly Entry[]): Promise<{ added: number; known: number } | undefined> {
    const job = batch[0]?.job;
    if (job === undefined || isBehind.has(job) || batch.some((entry) => entry.job !== job)) return undefined;
    const held = inMemory.get(job);
    let head = headsInMemory.get(job);
    if (held === undefined || head?.arrivals !== held.length) return undefined;
    const rows: KeptEntry[] = [];
    for (const entry of batch) {
      head = headAfter(head, entry);
      rows.push(keptEntry(entry, head, false));
    }
    const isWritten = await writeAtOnce(unwrap(database), [
      ...rows.map((row) => ({ table: 'entries', row, isNew: true })),
      { table: 'heads', row: head, isNew: false },
    ]).catch((cause: unknown) => {
      throw cannotWrite(cause, name);
    });
    if (!isWritten) return undefined;
    // A reader may have found them in the database meanwhile: its objects are the ones to hand out.
    if (inMemory.get(job) === held) {
      inMemory.set(job, [...held, ...batch.map(frozen)]);
      headsInMemory.set(job, head);
    }
    channel?.postMessage(job);
    tell(job, batch.length);
    return { added: batch.length, known: 0 };
  }

  const append = async (batch: readonly Entry[]) =>
    (await addToHeld(batch)) ?? (await add(batch, { isSent: false }));

  async function entriesAfter(
    after: Cursor | undefined,
    { entries, head }: { entries: readonly Entry[]; head: Head | undefined },
  ) {
    const from = readCursor(after);
    if (from !== undefined && entries[from.arrival - 1]?.id !== from.id)
      throw new CursorNotKnown(after ?? '');
    return {
      entries: from === undefined ? entries : entries.slice(from.arrival),
      cursor: writeCursor(head && { arrival: head.arrivals, id: head.lastArrival }),
    };
  }

  const blobTable: BlobTable = {
    get: (digest) => database.get('blobs', digest),
    put: async (kept) => {
      try {
        const transaction = database.transaction('blobs', 'readwrite', { durability: 'strict' });
        await Promise.all([transaction.store.put(kept), transaction.done]);
      } catch (cause) {
        throw cannotWrite(cause, name);
      }
    },
    has: async (digest) => (await database.getKey('blobs', digest)) !== undefined,
  };

  return {
    blobs: browserBlobs(blobTable, name),

    async jobs(): Promise<JobListing[]> {
      const heads = await database.getAll('heads');
      return heads.map(({ job, arrivals, last }) => ({ job, entries: arrivals, lastAt: last.at }));
    },

    entries: async (job, after) => entriesAfter(after, await allEntries(job)),
    append,
    inMemory: {
      async entries(job, after) {
        const entries = inMemory.get(job);
        const head = headsInMemory.get(job);
        // Without a channel nobody tells what other tabs add.
        const isHeld = channel !== undefined && !isBehind.has(job) && entries?.length === head?.arrivals;
        return entriesAfter(after, isHeld && entries ? { entries, head } : await allEntries(job));
      },
      append,
    },
    takeIn: (job, batch, cursor) => add(batch, { isSent: true, cursor: { job, cursor } }),

    async unsent(job, limit) {
      const kept = await database.getAllFromIndex('entries', 'unsent', job, limit);
      return kept.map(({ entry }) => entry);
    },

    async unsentCounts() {
      const transaction = database.transaction(['heads', 'entries']);
      const index = transaction.objectStore('entries').index('unsent');
      const counts = new Map<Ulid, number>();
      for (const job of await transaction.objectStore('heads').getAllKeys())
        counts.set(job, await index.count(job));
      return counts;
    },

    async markSent(_job, ids) {
      const transaction = database.transaction('entries', 'readwrite');
      await Promise.all(
        ids.map(async (id) => {
          const found = await transaction.store.index('by-id').get(id);
          if (found?.unsentOf === undefined) return;
          const { unsentOf: _, ...sent } = found;
          await transaction.store.put(sent);
        }),
      );
      await transaction.done;
    },

    async serverCursor(job) {
      return (await database.get('links', job))?.cursor;
    },

    async forgetServer(job) {
      const transaction = database.transaction(['entries', 'links'], 'readwrite');
      await transaction.objectStore('links').delete(job);
      const range = IDBKeyRange.bound([job, 1], [job, Number.MAX_SAFE_INTEGER]);
      const all = await transaction.objectStore('entries').getAll(range);
      for (const kept of all) asPart(transaction.objectStore('entries').put({ ...kept, unsentOf: job }));
      await transaction.done;
    },

    onArrival(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },

    async close() {
      channel?.close();
      database.close();
    },
  };
}

/** The head of a job once this entry has arrived after all others. */
function headAfter(before: Head | undefined, { job, id, step, at }: Entry): Head {
  const isLater =
    before === undefined || step > before.last.step || (step === before.last.step && id > before.last.id);
  return {
    job,
    arrivals: (before?.arrivals ?? 0) + 1,
    lastArrival: id,
    last: isLater ? { step, id, at } : before.last,
  };
}

function keptEntry(entry: Entry, { job, arrivals }: Head, isSent: boolean): KeptEntry {
  return { job, arrival: arrivals, id: entry.id, entry, ...(isSent ? {} : { unsentOf: job }) };
}

/** The same value, which nobody can change from now on, nor anything in it. */
function frozen<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null) return value;
  for (const part of Object.values(value)) frozen(part);
  return Object.freeze(value);
}

/** A write whose failure ends its transaction, which is waited for: nobody has to hear of it twice. */
function asPart(write: Promise<unknown>): void {
  write.catch(() => {});
}

function cannotWrite(cause: unknown, name: string): StoreUnavailable {
  const isFull = cause instanceof DOMException && cause.name === 'QuotaExceededError';
  return isFull
    ? new StoreUnavailable(
        'full',
        name,
        message(
          'Cannot keep this on the device: its storage is full. Nothing was changed; free some space, or save the job as a file and remove other data, and try again.',
        ),
        { cause },
      )
    : new StoreUnavailable(
        'cannot be written',
        name,
        message(
          'Cannot keep this on the device: the browser refused to write. Nothing was changed; load the page again and repeat the last step.',
        ),
        { cause },
      );
}
