import { english, type Language } from '@becket/core';
import {
  compareEntries,
  type FactOf,
  foldJob,
  isAsFoundFact,
  isKnownFact,
  type Job,
  type PhotoMark,
  type PhotoStage,
  type Place,
  photoMarkSchema,
  type Standing,
  type Ulid,
  withoutTellingParts,
} from '@becket/journal';
import { addFacts, entriesOf, RecordIsSealed, readJob, type TaskContext } from './context.ts';

export interface PhotoToRecord {
  /** A JPEG, re-encoded on the device. */
  readonly jpeg: Uint8Array;
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  readonly place: Place;
  readonly shows?: string | undefined;
  /** What it is a picture of: the piano as found when not said. */
  readonly stage?: PhotoStage | undefined;
  /** Needed after the seal for a photo of the piano as found. */
  readonly reason?: string | undefined;
}

/**
 * Keeps a photo and ties it to a place. Whatever the JPEG tells beside its picture (position, time, device) is taken
 * out first. The picture is kept before the entry that names it, so that no entry names a photo that is nowhere.
 *
 * Throws: SyntaxError when the bytes are no whole JPEG; RangeError when they are too many or the place is not on this
 * piano; RecordIsSealed; StoreUnavailable. Nothing of the journal is changed then.
 */
export async function recordPhoto(
  context: TaskContext,
  job: Ulid,
  { jpeg, width, height, place, shows, stage = 'as found', reason }: PhotoToRecord,
): Promise<{ job: Job; digest: string }> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  requirePlace(state, place, language);
  const bytes = withoutTellingParts(jpeg, language);
  // The digest of these bytes is known only once they are kept; what is refused for want of a reason keeps none.
  if (stage === 'as found') requireReason(state, reason, language);
  const digest = await context.store.blobs.put(bytes);
  const known = state.photos.find((photo) => photo.digest === digest);
  if (known !== undefined && isAsFoundFact(known)) requireReason(state, reason, language);
  const { job: changed } = await addFacts(context, job, [
    {
      kind: 'photo',
      v: 1,
      digest,
      mediaType: 'image/jpeg',
      bytes: bytes.length,
      width,
      height,
      place,
      ...(shows === undefined ? {} : { shows }),
      // The same picture taken in again keeps what was drawn on it.
      marks: known?.marks ?? [],
      ...(stage === 'as found' ? {} : { stage }),
      ...(reason === undefined ? {} : { reason }),
    },
  ]);
  return { job: changed, digest };
}

export interface PhotoChange {
  readonly digest: string;
  readonly marks?: readonly PhotoMark[] | undefined;
  readonly place?: Place | undefined;
  readonly shows?: string | undefined;
  readonly stage?: PhotoStage | undefined;
  /** Needed after the seal where the photo is, or becomes, one of the piano as found. */
  readonly reason?: string | undefined;
}

/** Draws other marks on a photo, or ties it to another place; the picture stays. Throws as `recordPhoto` does. */
export async function changePhoto(context: TaskContext, job: Ulid, change: PhotoChange): Promise<Job> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  const {
    entry: _entry,
    step: _step,
    at: _at,
    by: _by,
    reason: _reason,
    ...photo
  } = photoOf(state, change.digest, language);
  const { reason } = change;
  const stage = change.stage ?? photo.stage ?? 'as found';
  if (stage === 'as found' || isAsFoundFact(photo)) requireReason(state, reason, language);
  const place = change.place ?? photo.place;
  requirePlace(state, place, language);
  const shows = change.shows ?? photo.shows;
  const { shows: _shows, stage: _stage, ...rest } = photo;
  const fact: FactOf<'photo'> = {
    ...rest,
    place,
    marks: (change.marks ?? photo.marks).map((mark) => photoMarkSchema.parse(mark)),
    ...(shows === undefined || shows === '' ? {} : { shows }),
    ...(stage === 'as found' ? {} : { stage }),
    ...(reason === undefined ? {} : { reason }),
  };
  return (await addFacts(context, job, [fact])).job;
}

/** Takes back the last change of a photo's marks, words or place; its first entry stays. Gives back whether there was one. */
export async function undoPhotoChange(
  context: TaskContext,
  job: Ulid,
  { digest, reason }: { readonly digest: string; readonly reason: string },
): Promise<boolean> {
  const standing = await standingEntries(context, job, digest);
  const last = standing.at(-1);
  if (standing.length < 2 || last === undefined) return false;
  await addFacts(context, job, [{ kind: 'withdrawn', v: 1, entry: last, reason }]);
  return true;
}

/** Takes a photo out of the record, with a reason. Its entries stay in the journal, and its bytes in the store. */
export async function withdrawPhoto(
  context: TaskContext,
  job: Ulid,
  { digest, reason }: { readonly digest: string; readonly reason: string },
): Promise<Job> {
  photoOf(await readJob(context, job), digest, context.language ?? english);
  const entries = await standingEntries(context, job, digest);
  return (
    await addFacts(
      context,
      job,
      entries.map((entry) => ({ kind: 'withdrawn' as const, v: 1 as const, entry, reason })),
    )
  ).job;
}

/** Entries of this photo that were not taken back, in journal order. */
async function standingEntries(context: TaskContext, job: Ulid, digest: string): Promise<Ulid[]> {
  const entries = await entriesOf(context, job);
  const { withdrawnEntries } = foldJob(entries);
  return entries
    .filter(
      ({ id, fact }) =>
        isKnownFact(fact) && fact.kind === 'photo' && fact.digest === digest && !withdrawnEntries.has(id),
    )
    .sort(compareEntries)
    .map(({ id }) => id);
}

function requireReason({ seal }: Job, reason: string | undefined, language: Language): void {
  if (seal !== undefined && reason === undefined) throw new RecordIsSealed(seal.at, language);
}

function photoOf(state: Job, digest: string, { say }: Language): Standing<FactOf<'photo'>> {
  const photo = state.photos.find((one) => one.digest === digest);
  if (photo === undefined) {
    throw new RangeError(
      say(
        'Cannot change the photo {digest}…: this job has no photo of that digest. Take one from its list.',
        {
          digest: digest.slice(0, 12),
        },
      ),
    );
  }
  return photo;
}

function requirePlace({ piano, sections }: Job, { key, section }: Place, { say }: Language): void {
  if (piano !== undefined && key !== undefined && (key < piano.firstKey || key > piano.lastKey)) {
    throw new RangeError(
      say(
        "Cannot tie a photo to key {key}: this piano has keys {first} to {last}. Check the note, or the piano's compass.",
        { key, first: piano.firstKey, last: piano.lastKey },
      ),
    );
  }
  if (section !== undefined && !sections.some((one) => one.section === section)) {
    throw new RangeError(
      say(
        "Cannot tie a photo to the section '{section}': this piano has {sections}. Choose one of them, or the whole piano.",
        {
          section,
          sections:
            sections.length === 0 ? say('no sections yet') : sections.map((one) => one.section).join(', '),
        },
      ),
    );
  }
}
