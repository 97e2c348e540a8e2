import { english } from '@becket/core';
import {
  compareEntries,
  type Entry,
  type FactOf,
  foldJob,
  isKnownFact,
  photoFileEndings,
  type Ulid,
  writeJournalLines,
} from '@becket/journal';
import { type Zippable, zipSync } from 'fflate';
import { entriesOf, type TaskContext } from '../context.ts';
import { fileNamePart } from '../file-name.ts';

/** Names inside a job file. */
export const journalName = 'journal.jsonl';
export const photoName = (digest: string, ending: string): string => `photos/${digest}.${ending}`;

export interface SavedJob {
  readonly bytes: Uint8Array;
  /** From the job's title, so that it can be told among others. */
  readonly fileName: string;
  readonly entries: number;
  readonly photos: number;
  /** Digests of photos that this store does not have, or has damaged: the file goes without them. */
  readonly missingPhotos: readonly string[];
}

/**
 * A job as one file: a zip with the journal as JSON Lines and the photos beside it.
 *
 * Nothing in it is compressed: photos are already, and of a journal that lies open every whole line can be read even
 * when the file was cut. The journal comes first. Throws: JobNotFound.
 */
export async function saveJob(
  context: Pick<TaskContext, 'store' | 'now' | 'language'>,
  job: Ulid,
): Promise<SavedJob> {
  const language = context.language ?? english;
  const entries = [...(await entriesOf(context, job))].sort(compareEntries);
  const state = foldJob(entries);
  const files: Zippable = { [journalName]: new TextEncoder().encode(writeJournalLines(entries)) };
  const missingPhotos: string[] = [];
  const wanted = new Map(photosNamed(entries).map(({ digest, mediaType }) => [digest, mediaType]));
  for (const [digest, mediaType] of wanted) {
    // A damaged photo must not keep the rest from being saved.
    const bytes = await context.store.blobs.get(digest).catch(() => undefined);
    if (bytes === undefined) missingPhotos.push(digest);
    else files[photoName(digest, photoFileEndings[mediaType])] = bytes;
  }
  return {
    // A zip can hold no time before 1980.
    bytes: zipSync(files, {
      level: 0,
      mtime: new Date(Math.max(context.now().getTime(), Date.UTC(1980, 0, 2))),
    }),
    fileName: `${fileNamePart(state.title, language) || fileNamePart(language.say('[of a file] job'))}.zip`,
    entries: entries.length,
    photos: wanted.size - missingPhotos.length,
    missingPhotos,
  };
}

/** Every photo that entries name, also those that were taken out later: the journal stays whole. */
export function photosNamed(entries: readonly Entry[]): FactOf<'photo'>[] {
  return entries.flatMap(({ fact }) => (isKnownFact(fact) && fact.kind === 'photo' ? [fact] : []));
}
