import { readJournalLines, type Ulid } from '@becket/journal';
import type { JournalStore } from '@becket/store';

/** A job that was brought in, and what of its file could not be read. */
export interface BroughtIn {
  readonly job: Ulid;
  readonly notice: string | undefined;
}

/**
 * Brings a saved job in. Entries that are here already stay as they are. Of a file that was cut off or damaged, the
 * whole entries are brought in and the notice names the first line that could not be read.
 *
 * Throws: SyntaxError when no entry can be read; RangeError when the file mixes jobs. Nothing is kept then.
 */
export async function bringInJobFile(store: JournalStore, file: File): Promise<BroughtIn> {
  const { entries, unread } = readJournalLines(await file.text());
  const job = entries[0]?.job;
  if (job === undefined)
    throw new SyntaxError(
      `Cannot bring in '${file.name}': a job saved as a file is needed, no entry was found in it. Choose a file that Becket saved.`,
    );
  if (entries.some((entry) => entry.job !== job))
    throw new RangeError(
      `Cannot bring in '${file.name}': the entries of one job are needed, those of several were found. Bring each job in from its own file.`,
    );
  await store.append(entries);
  const first = unread[0];
  const notice =
    first === undefined
      ? undefined
      : `${entries.length} whole entries of '${file.name}' were brought in. ${first.problem} ${unread.length > 1 ? `${unread.length - 1} further lines could not be read. ` : ''}Keep the file, and save the job again where it came from.`;
  return { job, notice };
}
