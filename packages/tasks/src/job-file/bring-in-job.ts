import { english, type Language } from '@becket/core';
import {
  digestOf,
  type Entry,
  mergeJournals,
  photoTypeOf,
  readJournalLines,
  type Ulid,
} from '@becket/journal';
import { largestBlob_bytes } from '@becket/store';
import type { TaskContext } from '../context.ts';
import { journalName, photosNamed } from './save-job.ts';
import { isZip, readZip } from './zip-file.ts';

export interface BroughtInJob {
  readonly job: Ulid;
  /** Entries and photos that were not here before. */
  readonly added: number;
  readonly photosAdded: number;
  /** What of the file could not be had, in one or two sentences; undefined when all of it could. */
  readonly notice: string | undefined;
}

/** The largest job file that is read, and the largest journal in it. */
const largestFile_bytes = 1_000_000_000;
const largestJournal_bytes = 200_000_000;

/**
 * Brings in a job that was saved as a file: a zip as `saveJob` makes it, or its journal alone as JSON Lines.
 *
 * The union with what is here: entries and photos that are here stay as they are, and bringing the same file in again
 * changes nothing. Every photo is checked by its digest, the journal by its checksum. Of a file that was cut off, what
 * is whole is brought in, and the notice says what was not.
 *
 * Throws: SyntaxError when no entry can be read or the journal is damaged; RangeError when the file is too large, mixes
 * jobs, or has an entry with other content than here. Nothing is kept then.
 */
export async function bringInJob(
  context: TaskContext,
  { bytes, fileName }: { readonly bytes: Uint8Array; readonly fileName: string },
): Promise<BroughtInJob> {
  const language = context.language ?? english;
  const { say } = language;
  if (bytes.length > largestFile_bytes) {
    throw new RangeError(
      say(
        "Cannot bring in '{file}': a file of at most {most} MB is needed, one of {found} MB was found. Choose a file that Becket saved.",
        { file: fileName, most: largestFile_bytes / 1e6, found: Math.ceil(bytes.length / 1e6) },
      ),
    );
  }
  const { text, photos, troubles } = isZip(bytes)
    ? contentOfZip(bytes, fileName, language)
    : { text: new TextDecoder().decode(bytes), photos: new Map<string, Uint8Array>(), troubles: [] };
  const { entries, unread } = readJournalLines(text, language);
  const job = entries[0]?.job;
  if (job === undefined) {
    throw new SyntaxError(
      say(
        "Cannot bring in '{file}': a job saved as a file is needed, no entry was found in it. Choose a file that Becket saved.",
        { file: fileName },
      ),
    );
  }
  if (entries.some((entry) => entry.job !== job)) {
    throw new RangeError(
      say(
        "Cannot bring in '{file}': the entries of one job are needed, those of several were found. Bring each job in from its own file.",
        { file: fileName },
      ),
    );
  }
  // Before anything is kept: entries that contradict those that are here are refused.
  mergeJournals([(await context.store.entries(job)).entries, entries], language);

  const wanted = [...new Set(photosNamed(entries).map(({ digest }) => digest))];
  const absent = await context.store.blobs.missing(wanted);
  for (const digest of absent) {
    const photo = photos.get(digest);
    if (photo !== undefined) await context.store.blobs.put(photo);
  }
  const { added } = await context.store.append(entries);
  const lost = absent.filter((digest) => !photos.has(digest)).length;
  return {
    job,
    added,
    photosAdded: absent.length - lost,
    notice: noticeOf({ fileName, entries, unread, troubles, lost, wanted: wanted.length }, language),
  };
}

interface Content {
  readonly text: string;
  readonly photos: ReadonlyMap<string, Uint8Array>;
  /** What is wrong with the zip, as parts of a sentence. */
  readonly troubles: readonly string[];
}

function contentOfZip(bytes: Uint8Array, fileName: string, { say }: Language): Content {
  const { files, isWhole } = readZip(bytes, (name) =>
    name === journalName ? largestJournal_bytes : digestInName(name) === undefined ? 0 : largestBlob_bytes,
  );
  const journal = files.find(({ name }) => name === journalName);
  if (journal?.bytes === undefined) {
    throw new SyntaxError(
      say(
        "Cannot bring in '{file}': a zip with a whole {journal} is needed, {found}. Save the job again where it came from; nothing was brought in.",
        {
          file: fileName,
          journal: journalName,
          found:
            journal?.problem === undefined
              ? say('a zip without one was found')
              : say('one that is {problem} was found', { problem: say(journal.problem) }),
        },
      ),
    );
  }
  const photos = new Map<string, Uint8Array>();
  let damaged = 0;
  for (const { name, bytes: photo } of files) {
    const digest = digestInName(name);
    if (digest === undefined) continue;
    if (photo !== undefined && photoTypeOf(photo) !== undefined && digestOf(photo) === digest)
      photos.set(digest, photo);
    else damaged += 1;
  }
  const troubles = [
    ...(isWhole ? [] : [say('the file is cut off')]),
    ...(damaged === 0
      ? []
      : [
          say('{count, plural, one {# photo in it is} other {# photos in it are}} damaged', {
            count: damaged,
          }),
        ]),
  ];
  return { text: new TextDecoder().decode(journal.bytes), photos, troubles };
}

function digestInName(name: string): string | undefined {
  return /^photos\/([0-9a-f]{64})\.(?:jpg|png|webp)$/.exec(name)?.[1];
}

function noticeOf(
  {
    fileName,
    entries,
    unread,
    troubles,
    lost,
    wanted,
  }: {
    fileName: string;
    entries: readonly Entry[];
    unread: ReturnType<typeof readJournalLines>['unread'];
    troubles: readonly string[];
    lost: number;
    wanted: number;
  },
  { say }: Language,
): string | undefined {
  const first = unread[0];
  const problems = [
    ...troubles,
    ...(first === undefined ? [] : [first.problem.replace(/\.$/, '')]),
    ...(unread.length > 1
      ? [say('{count} further lines could not be read', { count: unread.length - 1 })]
      : []),
    ...(lost === 0
      ? []
      : [
          say('{lost} of its {wanted} photos {lost, plural, one {is} other {are}} neither in it nor here', {
            lost,
            wanted,
          }),
        ]),
  ];
  if (problems.length === 0) return undefined;
  return say(
    "{count} whole entries of '{file}' were brought in, but not everything: {problems}. Keep the file, and save the job again where it came from.",
    { count: entries.length, file: fileName, problems: problems.join('; ') },
  );
}
