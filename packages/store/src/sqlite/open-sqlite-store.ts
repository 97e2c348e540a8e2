import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Entry, Ulid } from '@becket/journal';
import Sqlite from 'better-sqlite3';
import { Kysely, Migrator, type Selectable, sql, type Transaction } from 'kysely';
import { readCursor, writeCursor } from '../cursor.ts';
import { CursorNotKnown, type JournalStore, StoreUnavailable } from '../port.ts';
import { splitBatch } from '../split-batch.ts';
import { BecketDialect } from './becket-dialect.ts';
import { applicationId, fileHeader } from './file-header.ts';
import { migrations } from './migrations/index.ts';
import type { Tables } from './schema.ts';
import { blobsInTable } from './sqlite-blobs.ts';
import { cannotOpen, storeUnavailable } from './store-problems.ts';

/** The database file in a data folder: what `npm start` and the command line use. */
export const databaseFileIn = (folder: string): string => join(folder, 'becket.sqlite');

export interface SqliteStoreOptions {
  /** How long to wait for another program that is writing, in milliseconds. */
  readonly patience_ms?: number;
}

/**
 * A store in one SQLite file; the file and its folder are made when they are not there.
 *
 * Several programs may have the same file open at once. What was acknowledged is on the disk: write-ahead log with
 * synchronous = FULL. Throws: StoreUnavailable when the file is not ours, was written by a later version, is locked,
 * damaged, or cannot be written; the file is left as it was then.
 */
export async function openSqliteStore(
  file: string,
  { patience_ms = 5000 }: SqliteStoreOptions = {},
): Promise<JournalStore> {
  const connection = await connect(file, patience_ms);
  const db = new Kysely<Tables>({ dialect: new BecketDialect(connection) });
  const guarded = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    try {
      return await patiently(work, patience_ms);
    } catch (error) {
      throw storeUnavailable(error, file);
    }
  };
  try {
    await guarded(() => migrate(db, connection, file));
  } catch (error) {
    connection.close();
    throw error;
  }
  return {
    blobs: blobsInTable(db, { file, guarded }),
    jobs: () => guarded(() => listJobs(db)),
    entries: (job, after) => guarded(() => readEntries(db, job, after)),
    append: (batch) => guarded(() => db.transaction().execute((within) => appendBatch(within, batch))),
    close: () => db.destroy(),
  };
}

async function connect(file: string, patience_ms: number): Promise<Sqlite.Database> {
  let header: ReturnType<typeof fileHeader>;
  try {
    mkdirSync(dirname(file), { recursive: true });
    header = fileHeader(file);
  } catch (error) {
    throw cannotOpen(file, error);
  }
  if (header === 'another') {
    throw new StoreUnavailable(
      'not a store',
      file,
      `Cannot open the store ${file}: a database of Becket's is needed, a file of another kind was found and left as it is. Name another file.`,
    );
  }
  let connection: Sqlite.Database | undefined;
  try {
    // SQLite's own waiting would stop the whole program meanwhile: `patiently` waits instead.
    const opening = new Sqlite(file, { timeout: 0 });
    connection = opening;
    await patiently(async () => {
      // In the file itself before the log is switched on, so that the mark is there whatever happens next.
      if (header !== 'ours') opening.pragma(`application_id = ${applicationId}`);
      opening.pragma('journal_mode = WAL');
    }, patience_ms);
    opening.pragma('synchronous = FULL');
    opening.pragma('foreign_keys = ON');
    return opening;
  } catch (error) {
    connection?.close();
    throw storeUnavailable(error, file);
  }
}

/** Tries again while another program, or another connection of this one, is writing. What is tried must be safe to repeat. */
async function patiently<Result>(work: () => Promise<Result>, patience_ms: number): Promise<Result> {
  for (let waited_ms = 0, wait_ms = 2; ; waited_ms += wait_ms, wait_ms = Math.min(wait_ms * 2, 50)) {
    try {
      return await work();
    } catch (error) {
      const isBusy = error instanceof Sqlite.SqliteError && error.code.startsWith('SQLITE_BUSY');
      if (!isBusy || waited_ms >= patience_ms) throw error;
      await pause(wait_ms);
    }
  }
}

/**
 * Brings the tables to this version, all steps or none. The write lock is taken first, since SQLite's migrator takes
 * none and two programs may open a new file at the same moment.
 */
async function migrate(db: Kysely<Tables>, connection: Sqlite.Database, file: string): Promise<void> {
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => migrations },
    disableTransactions: true,
  });
  connection.exec('begin immediate');
  try {
    const stranger = migrationNames(connection).find((name) => !(name in migrations));
    if (stranger !== undefined) {
      throw new StoreUnavailable(
        'later version',
        file,
        `Cannot open the store ${file}: a later version of Becket has written to it (its tables are at '${stranger}', this version knows '${Object.keys(migrations).at(-1)}'). Use that version or a later one; the file was left as it is.`,
      );
    }
    const { error } = await migrator.migrateToLatest();
    if (error !== undefined) throw error;
    connection.exec('commit');
  } catch (error) {
    if (connection.inTransaction) connection.exec('rollback');
    throw error;
  }
}

function migrationNames(connection: Sqlite.Database): string[] {
  const isThere = connection
    .prepare("select 1 from sqlite_master where type = 'table' and name = 'kysely_migration'")
    .get();
  if (isThere === undefined) return [];
  return connection.prepare('select name from kysely_migration order by name').pluck().all() as string[];
}

async function listJobs(db: Kysely<Tables>) {
  const rows = await db
    .selectFrom('jobs')
    .select(({ selectFrom }) => [
      'jobs.job',
      selectFrom('entries')
        .whereRef('entries.job', '=', 'jobs.job')
        .select(({ fn }) => fn.countAll<number>().as('count'))
        .as('entries'),
      selectFrom('entries')
        .whereRef('entries.job', '=', 'jobs.job')
        .select('entries.at')
        .orderBy('entries.step', 'desc')
        .orderBy('entries.id', 'desc')
        .limit(1)
        .as('lastAt'),
    ])
    .execute();
  return rows.map(({ job, entries, lastAt }) => ({ job, entries: Number(entries), lastAt: lastAt! }));
}

async function readEntries(db: Kysely<Tables>, job: Ulid, after: string | undefined) {
  const from = readCursor(after);
  // The entry the cursor names is read along with what follows, to see that it is the same one.
  const rows = await db
    .selectFrom('entries')
    .selectAll()
    .where('job', '=', job)
    .where('arrival', '>=', from?.arrival ?? 1)
    .orderBy('arrival')
    .execute();
  const named = from === undefined ? undefined : rows.shift();
  if (named?.id !== from?.id || named?.arrival !== from?.arrival) throw new CursorNotKnown(after ?? '');
  const last = rows.at(-1) ?? named;
  return { entries: rows.map(entryFromRow), cursor: writeCursor(last) };
}

async function appendBatch(within: Transaction<Tables>, batch: readonly Entry[]) {
  if (batch.length === 0) return { added: 0, known: 0 };
  const lastArrivals = await lockJobs(within, batch);
  const kept = await keptEntries(within, batch);
  const { fresh, known } = splitBatch(batch, (id) => kept.get(id));
  const rows = fresh.map((entry) => {
    const arrival = lastArrivals.get(entry.job)! + 1;
    lastArrivals.set(entry.job, arrival);
    return rowFromEntry(entry, arrival);
  });
  for (const part of partsOf(rows, 500)) await within.insertInto('entries').values(part).execute();
  for (const [job, last_arrival] of lastArrivals) {
    await within.updateTable('jobs').set({ last_arrival }).where('job', '=', job).execute();
  }
  return { added: fresh.length, known };
}

/**
 * The arrival number of each job's newest entry, with the right to count on from there until the transaction ends.
 * It writes before anything is read: so SQLite waits for another writer instead of giving up, and a database with
 * locks by row lets arrivals of one job become visible in their order only.
 */
async function lockJobs(within: Transaction<Tables>, batch: readonly Entry[]): Promise<Map<Ulid, number>> {
  // Always in the same order, so that two writers cannot wait for each other.
  const jobs = [...new Set(batch.map((entry) => entry.job))].sort();
  const lastArrivals = new Map<Ulid, number>();
  for (const job of jobs) {
    const { last_arrival } = await within
      .insertInto('jobs')
      .values({ job, last_arrival: 0 })
      .onConflict((conflict) =>
        conflict.column('job').doUpdateSet({ last_arrival: sql<number>`jobs.last_arrival` }),
      )
      .returning('last_arrival')
      .executeTakeFirstOrThrow();
    lastArrivals.set(job, Number(last_arrival));
  }
  return lastArrivals;
}

async function keptEntries(within: Transaction<Tables>, batch: readonly Entry[]): Promise<Map<Ulid, Entry>> {
  const kept = new Map<Ulid, Entry>();
  for (const part of partsOf(
    batch.map((entry) => entry.id),
    1000,
  )) {
    const rows = await within.selectFrom('entries').selectAll().where('id', 'in', part).execute();
    for (const row of rows) kept.set(row.id, entryFromRow(row));
  }
  return kept;
}

function rowFromEntry({ id, job, step, at, by, device, fact }: Entry, arrival: number): Tables['entries'] {
  return { id, job, arrival, step, at, by, device, kind: fact.kind, fact: JSON.stringify(fact) };
}

function entryFromRow({ id, job, step, at, by, device, fact }: Selectable<Tables['entries']>): Entry {
  return { id, job, step: Number(step), at, by, device, fact: JSON.parse(fact) };
}

/** A statement has room for a limited number of values. */
function* partsOf<Item>(items: readonly Item[], size: number): Generator<Item[]> {
  for (let start = 0; start < items.length; start += size) yield items.slice(start, start + size);
}
