import { mkdir, readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { type Entry, readJournalLines, type Ulid, ulidSchema, writeJournalLines } from '@becket/journal';
import type { BlobStore } from '../blobs.ts';
import { KeptJournals } from '../kept-journals.ts';
import { EntryChanged, type JournalStore, StoreUnavailable } from '../port.ts';
import { blobsInFolder } from './blob-folder.ts';
import { addAtEnd, cutBack, removeForGood, syncFolder } from './disk.ts';
import { takeFolder } from './folder-lock.ts';
import { mendLastLine, putAside } from './mend-file.ts';
import { checkFolder, markFolder } from './store-mark.ts';
import { batchIsDone, type LengthsBefore, lengthOf, noteBatch, unfinishedBatch } from './unfinished-batch.ts';

export interface FilesStore extends JournalStore {
  /** What was amiss when the folder was opened, one sentence each, for the user to see. */
  readonly notices: readonly string[];
}

/**
 * A store in a folder: one JSON Lines file a job, named after it, one entry a line in order of arrival.
 *
 * For one program at a time. Everything is read when the folder is opened; what was acknowledged is on the disk.
 * A job whose file cannot be read is left out of the list, and says why when it is asked for.
 * Throws: StoreUnavailable when the folder is not ours, was written by a later version, is in use, or cannot be written.
 */
export async function openFilesStore(folder: string): Promise<FilesStore> {
  let release: (() => void) | undefined;
  try {
    await mkdir(folder, { recursive: true });
    const kind = await checkFolder(folder);
    release = takeFolder(folder);
    if (kind === 'empty') await markFolder(folder);
    const notices = await undoUnfinishedBatch(folder);
    const journals = new KeptJournals();
    const damaged = new Map<Ulid, StoreUnavailable>();
    for (const name of (await readdir(folder)).sort()) {
      const job = jobOfFile(name);
      if (job === undefined) continue;
      const notice = await mendLastLine(join(folder, name));
      if (notice !== undefined) notices.push(notice);
      const problem = await loadJob(join(folder, name), job, journals);
      if (problem !== undefined) {
        damaged.set(job, problem);
        notices.push(problem.message);
      }
    }
    return new OpenFolder(folder, { journals, damaged, notices, release });
  } catch (error) {
    release?.();
    if (error instanceof StoreUnavailable) throw error;
    throw new StoreUnavailable(
      'cannot be opened',
      folder,
      `Cannot open the store ${folder}: the system does not allow it (${messageOf(error)}). Check the path and who may read and write there, or name another one.`,
      { cause: error },
    );
  }
}

class OpenFolder implements FilesStore {
  readonly notices: readonly string[];
  readonly blobs: BlobStore;
  readonly #folder: string;
  readonly #journals: KeptJournals;
  readonly #damaged: ReadonlyMap<Ulid, StoreUnavailable>;
  readonly #release: () => void;
  /** Batches are written one after another. */
  #lastWrite: Promise<unknown> = Promise.resolve();
  #isClosed = false;
  /** Set when a failed batch could not be taken back: what is on the disk is then not known. */
  #broken: StoreUnavailable | undefined;

  constructor(
    folder: string,
    {
      journals,
      damaged,
      notices,
      release,
    }: {
      journals: KeptJournals;
      damaged: ReadonlyMap<Ulid, StoreUnavailable>;
      notices: readonly string[];
      release: () => void;
    },
  ) {
    this.#folder = folder;
    this.blobs = blobsInFolder(folder, (cause) => this.#cannotWrite(cause));
    this.#journals = journals;
    this.#damaged = damaged;
    this.notices = notices;
    this.#release = release;
  }

  async jobs() {
    return this.#journals.jobs();
  }

  async entries(job: Ulid, after?: string) {
    this.#requireUndamaged(job);
    return this.#journals.entries(job, after);
  }

  append(batch: readonly Entry[]): Promise<{ added: number; known: number }> {
    const write = this.#lastWrite.then(() => this.#write(batch));
    this.#lastWrite = write.catch(() => undefined);
    return write;
  }

  async close(): Promise<void> {
    await this.#lastWrite;
    if (this.#isClosed) return;
    this.#isClosed = true;
    this.#release();
  }

  async #write(batch: readonly Entry[]) {
    if (this.#isClosed) throw new Error(`Cannot add to the store ${this.#folder}: it was closed.`);
    if (this.#broken !== undefined) throw this.#broken;
    for (const entry of batch) this.#requireUndamaged(entry.job);
    const { fresh, known } = this.#journals.split(batch);
    if (fresh.length === 0) return { added: 0, known };
    const textByFile = new Map<string, string>();
    for (const entry of fresh) {
      const file = fileOfJob(entry.job);
      textByFile.set(file, (textByFile.get(file) ?? '') + writeJournalLines([entry]));
    }
    const before = new Map<string, number>();
    for (const file of textByFile.keys()) before.set(file, await lengthOf(join(this.#folder, file)));
    try {
      // A single entry is one line: it is whole or it is cut, and needs no note.
      if (fresh.length > 1) await noteBatch(this.#folder, before);
      for (const [file, text] of textByFile) await addAtEnd(join(this.#folder, file), text);
      if ([...before.values()].includes(0)) await syncFolder(this.#folder);
      if (fresh.length > 1) await batchIsDone(this.#folder);
    } catch (error) {
      await this.#takeBack(before, error);
      throw this.#cannotWrite(error);
    }
    this.#journals.add(fresh);
    return { added: fresh.length, known };
  }

  async #takeBack(before: LengthsBefore, cause: unknown): Promise<void> {
    try {
      for (const [file, length] of before) {
        const path = join(this.#folder, file);
        if ((await lengthOf(path)) > length) await cutBack(path, length);
      }
      await batchIsDone(this.#folder);
    } catch {
      this.#broken = this.#cannotWrite(cause);
    }
  }

  #cannotWrite(cause: unknown): StoreUnavailable {
    const isFull = ['ENOSPC', 'EDQUOT'].includes((cause as NodeJS.ErrnoException).code ?? '');
    return new StoreUnavailable(
      isFull ? 'full' : 'cannot be written',
      this.#folder,
      isFull
        ? `Cannot write to the store ${this.#folder}: there is no room left for it, nothing was added. Make room on the disk, then try again.`
        : `Cannot write to the store ${this.#folder}: the system does not allow it (${messageOf(cause)}), nothing was added. Check who may write there, then try again.`,
      { cause },
    );
  }

  #requireUndamaged(job: Ulid): void {
    const problem = this.#damaged.get(job);
    if (problem !== undefined) throw problem;
  }
}

const fileOfJob = (job: Ulid): string => `${job}.jsonl`;

function jobOfFile(name: string): Ulid | undefined {
  const [job = '', ending, ...rest] = name.split('.');
  return ending === 'jsonl' && rest.length === 0 && ulidSchema.safeParse(job).success ? job : undefined;
}

/** Takes back a batch that the program ended in the middle of: none of its entries was acknowledged. */
async function undoUnfinishedBatch(folder: string): Promise<string[]> {
  const before = await unfinishedBatch(folder);
  if (before === undefined) return [];
  const notices: string[] = [];
  for (const [name, length] of before) {
    const aside = await putAside(join(folder, name), length);
    if (length === 0) await removeForGood(join(folder, name));
    if (aside !== undefined) {
      notices.push(
        `Becket ended in the middle of adding to ${name}; what had not been confirmed was put aside in ${aside}, every entry before it was kept. Look at the end of that job and enter again what is missing.`,
      );
    }
  }
  await batchIsDone(folder);
  return notices;
}

/** Reads the file of one job; gives back what is wrong with it, and then takes in nothing of it. */
async function loadJob(
  file: string,
  job: Ulid,
  journals: KeptJournals,
): Promise<StoreUnavailable | undefined> {
  const { entries, unread } = readJournalLines(await readFile(file, 'utf8'));
  const stranger = entries.find((entry) => entry.job !== job);
  let problem = unread[0]?.problem;
  if (problem === undefined && stranger !== undefined)
    problem = `Entry ${stranger.id} belongs to job ${stranger.job}.`;
  if (problem === undefined) {
    try {
      journals.add(journals.split(entries).fresh);
      return undefined;
    } catch (error) {
      if (!(error instanceof EntryChanged)) throw error;
      problem = `Entry ${error.entry} stands twice with different content.`;
    }
  }
  return new StoreUnavailable(
    'damaged',
    file,
    `Cannot read the job in ${basename(file)}: ${problem.replace(/\.$/, '')}. The file was left as it is; keep a copy, then mend that line or put back the last good copy.`,
  );
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
