import type { Entry, Ulid } from '@becket/journal';

/** How far a reader has come in one store. Opaque: hand back what the store gave. */
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
  jobs(): Promise<readonly JobListing[]>;
  /** Entries of one job in order of their arrival in this store, after the cursor; from the beginning without one. */
  entries(
    job: Ulid,
    after?: Cursor,
  ): Promise<{ readonly entries: readonly Entry[]; readonly cursor: Cursor }>;
  /** Throws EntryChanged when an entry is known with other content; then nothing of the batch is added. */
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
