import { isSealIntact, stripCheck, tellingParts } from '@becket/journal';
import { StoreUnavailable } from '@becket/store';
import { beforeEach, describe, expect, it } from 'vitest';
import { jpegWith, locatedExif, tinyJpeg } from '../../journal/src/testing/tiny-jpeg.ts';
import { RecordIsSealed, readJob, type TaskContext } from './context.ts';
import { describePiano, describeSections } from './describe-piano.ts';
import { openJob } from './open-job.ts';
import { changePhoto, recordPhoto, undoPhotoChange, withdrawPhoto } from './record-photo.ts';
import { acceptGaps, sealRecord } from './strip-record.ts';
import { memoryContext } from './testing/memory-context.ts';

const photo = { jpeg: tinyJpeg, width: 2, height: 2, place: {} };
const label = { mark: 'label' as const, at: { x: 0.5, y: 0.25 }, text: 'crack' };
const arrow = { mark: 'arrow' as const, from: { x: 0, y: 0 }, to: { x: 1, y: 1 } };

describe('a photo of the record', () => {
  let context: TaskContext;
  let job: string;
  beforeEach(async () => {
    context = memoryContext();
    ({ id: job } = await openJob(context, { title: 'a grand' }));
    await describePiano(context, job, { form: 'grand', firstKey: 1, lastKey: 85, referencePitch_hz: 440 });
    await describeSections(context, job, [
      { section: 'bass', firstKey: 1, lastKey: 20, bridge: 'bass', frontTermination: 'agraffe' },
    ]);
  });

  it('is kept under its digest and tied to its place, and tells nothing of where it was taken', async () => {
    const telling = jpegWith([{ marker: 0xe1, content: locatedExif }]);
    const { job: state, digest } = await recordPhoto(context, job, {
      ...photo,
      jpeg: telling,
      place: { key: 40, string: 2 },
      shows: 'the loop',
    });
    expect(state.photos).toMatchObject([
      { digest, place: { key: 40, string: 2 }, shows: 'the loop', marks: [] },
    ]);
    const kept = (await context.store.blobs.get(digest))!;
    expect(tellingParts(kept)).toEqual([]);
    expect(kept).toEqual(tinyJpeg);
    expect(state.photos[0]!.bytes).toBe(kept.length);
  });

  it.each([
    ['a note that is not on this piano', { key: 88 }],
    ['a section that is not there', { section: 'alto' }],
  ])('is refused for %s, and nothing is kept', async (_, place) => {
    await expect(recordPhoto(context, job, { ...photo, place })).rejects.toThrow(/^Cannot tie a photo to /);
    expect((await readJob(context, job)).photos).toEqual([]);
  });

  it('that is cut off is refused, and nothing is kept', async () => {
    const cut = { ...photo, jpeg: tinyJpeg.subarray(0, 200) };
    await expect(recordPhoto(context, job, cut)).rejects.toThrow(/^Cannot read this photo/);
    expect((await readJob(context, job)).photos).toEqual([]);
  });

  it('has no entry when the device is full', async () => {
    const full = new StoreUnavailable('full', 'here', 'Cannot keep this on the device: its storage is full.');
    const { store } = context;
    const blobs = { ...store.blobs, put: () => Promise.reject(full) };
    const fullContext = { ...context, store: { ...store, blobs } };
    await expect(recordPhoto(fullContext, job, photo)).rejects.toBe(full);
    expect((await readJob(context, job)).photos).toEqual([]);
  });

  it('takes marks one after another and gives them back the other way; the picture stays', async () => {
    const { digest } = await recordPhoto(context, job, { ...photo, shows: 'bridge' });
    await changePhoto(context, job, { digest, marks: [label] });
    await changePhoto(context, job, { digest, marks: [label, arrow] });
    await changePhoto(context, job, { digest, place: { section: 'bass' } });
    const marksNow = async () =>
      (await readJob(context, job)).photos.map(({ marks, place }) => [marks.length, place]);
    const undo = () => undoPhotoChange(context, job, { digest, reason: 'undo' });
    expect(await marksNow()).toEqual([[2, { section: 'bass' }]]);
    expect(await undo()).toBe(true);
    expect(await marksNow()).toEqual([[2, {}]]);
    expect(await undo()).toBe(true);
    expect(await marksNow()).toEqual([[1, {}]]);
    expect(await undo()).toBe(true);
    expect(await marksNow()).toEqual([[0, {}]]);
    expect(await undo()).toBe(false);
    expect((await readJob(context, job)).photos).toMatchObject([{ digest, shows: 'bridge', marks: [] }]);
  });

  it('taken in twice is one photo, with its marks', async () => {
    const { digest } = await recordPhoto(context, job, photo);
    await changePhoto(context, job, { digest, marks: [label] });
    await recordPhoto(context, job, photo);
    expect((await readJob(context, job)).photos).toMatchObject([{ digest, marks: [label] }]);
  });

  it('is taken out with every change it had, and its bytes stay for the journal', async () => {
    const { digest } = await recordPhoto(context, job, photo);
    await changePhoto(context, job, { digest, marks: [label] });
    expect((await withdrawPhoto(context, job, { digest, reason: 'blurred' })).photos).toEqual([]);
    expect(await context.store.blobs.missing([digest])).toEqual([]);
    await expect(withdrawPhoto(context, job, { digest, reason: 'blurred' })).rejects.toThrow(RangeError);
  });

  it('needs a reason after the seal, and amends the record then without breaking the seal', async () => {
    const { digest } = await recordPhoto(context, job, photo);
    const gaps = stripCheck(await readJob(context, job)).openGaps.map(({ name }) => name);
    await acceptGaps(context, job, { gaps, reason: 'a test' });
    const { seal } = await sealRecord(context, job);
    await expect(recordPhoto(context, job, photo)).rejects.toThrow(RecordIsSealed);
    await expect(changePhoto(context, job, { digest, marks: [label] })).rejects.toThrow(RecordIsSealed);
    const state = await changePhoto(context, job, {
      digest,
      marks: [label],
      reason: 'the crack was seen later',
    });
    expect(state.amendments).toMatchObject([{ kind: 'photo', reason: 'the crack was seen later' }]);
    expect(isSealIntact(seal!, (await context.store.entries(job)).entries)).toBe(true);
    // A reason belongs to one change.
    await expect(changePhoto(context, job, { digest, marks: [] })).rejects.toThrow(RecordIsSealed);
  });

  it('of new work needs no reason after the seal, and amends nothing', async () => {
    const gaps = stripCheck(await readJob(context, job)).openGaps.map(({ name }) => name);
    await acceptGaps(context, job, { gaps, reason: 'a test' });
    const { seal } = await sealRecord(context, job);
    const { digest } = await recordPhoto(context, job, { ...photo, stage: 'as strung' });
    const state = await changePhoto(context, job, { digest, marks: [label], stage: 'after the strip' });
    expect(state.photos).toMatchObject([{ digest, stage: 'after the strip', marks: [label] }]);
    expect(state.amendments).toEqual([]);
    expect(isSealIntact(seal!, (await context.store.entries(job)).entries)).toBe(true);
    // It cannot slip into the sealed record without a reason either.
    await expect(changePhoto(context, job, { digest, stage: 'as found' })).rejects.toThrow(RecordIsSealed);
  });

  it('of the piano as found cannot leave the sealed record without a reason', async () => {
    const { digest } = await recordPhoto(context, job, photo);
    const gaps = stripCheck(await readJob(context, job)).openGaps.map(({ name }) => name);
    await acceptGaps(context, job, { gaps, reason: 'a test' });
    await sealRecord(context, job);
    await expect(changePhoto(context, job, { digest, stage: 'as strung' })).rejects.toThrow(RecordIsSealed);
    await expect(recordPhoto(context, job, { ...photo, stage: 'as strung' })).rejects.toThrow(RecordIsSealed);
    const state = await changePhoto(context, job, { digest, stage: 'as strung', reason: 'wrong piano' });
    expect(state.amendments).toMatchObject([{ kind: 'photo', reason: 'wrong piano' }]);
  });
});
