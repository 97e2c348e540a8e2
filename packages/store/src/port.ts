import type { Entry, Ulid } from '@becket/journal';
import type { BlobStore } from './blobs.ts';

/**
 * How far a reader has come in one job of one store. Opaque: hand back what the store gave.
 * It names the last entry read, so that a store restored from an older copy cannot take it for its own.
 */
export type Cursor = string;

/** What a store can say of a job without folding it. */
export interface JobListing {
  readonly job: Ulid;
  readonly entries: number;
  /** RFC 3339 UTC of the last entry by journal order. */
  readonly lastAt: string;
}

/**
 * Where journals are kept. Behind this port: SQLite, files, and the browser's own IndexedDB.
 *
 * Entries are only ever added. `append` is one transaction: all of the entries or none, and adding an entry that is
 * already there changes nothing, so that a caller may safely try again.
 */
export interface JournalStore {
  /** The photos that entries name by digest. */
  readonly blobs: BlobStore;
  jobs(): Promise<readonly JobListing[]>;
  /**
   * Entries of one job in order of their arrival in this store, after the cursor; from the beginning without one.
   * A job this store has never heard of has no entries. Throws CursorNotKnown.
   */
  entries(
    job: Ulid,
    after?: Cursor,
  ): Promise<{ readonly entries: readonly Entry[]; readonly cursor: Cursor }>;
  /**
   * Keeps the entries; when it resolves they are on the disk. `known` counts those that were there already.
   * Throws: EntryChanged when an entry is known with other content; StoreUnavailable when the store cannot write.
   * Nothing of the batch is added then.
   */
  append(entries: readonly Entry[]): Promise<{ readonly added: number; readonly known: number }>;
  close(): Promise<void>;
}

/** An entry came back with other content than it was first written with. Entries never change. */
export class EntryChanged extends Error {
  override readonly name = 'EntryChanged';
  readonly entry: Ulid;
  constructor(entry: Ulid) {
    super(
      `Cannot add entry ${entry}: an entry of that id with other content is already kept. Nothing was added; correct by a further entry.`,
    );
    this.entry = entry;
  }
}

/** A cursor that this store did not give: it is another store, or it was restored from an older copy. */
export class CursorNotKnown extends Error {
  override readonly name = 'CursorNotKnown';
  readonly cursor: string;
  constructor(cursor: string) {
    super(
      `Cannot go on from cursor '${cursor}': this store did not give it, or was restored from an older copy since. Read from the beginning, and send again what is not there.`,
    );
    this.cursor = cursor;
  }
}

/** Why a store cannot be opened, read or written. */
export type StoreProblem =
  | 'not a store'
  | 'later version'
  | 'in use'
  | 'cannot be opened'
  | 'cannot be written'
  | 'full'
  | 'damaged';

/** A store that cannot be opened, read or written as it is. Its message is one sentence that says what to do. */
export class StoreUnavailable extends Error {
  override readonly name = 'StoreUnavailable';
  readonly problem: StoreProblem;
  readonly path: string;
  constructor(problem: StoreProblem, path: string, sentence: string, options?: ErrorOptions) {
    super(sentence, options);
    this.problem = problem;
    this.path = path;
  }
}
