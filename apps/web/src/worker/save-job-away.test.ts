// IndexedDB as the standard has it, in memory: Node has none of its own.
import 'fake-indexeddb/auto';
import { digestOf, type Entry } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { bringInJob } from '@becket/tasks';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { jobA, wireEntries, wireEntry } from '../../../../packages/store/src/testing/journal-samples.ts';
import { openBrowserStore } from '../store/browser-store.ts';
import { type SaveJobAnswer, type SaveJobWorker, saveJobAway } from './save-job-away.ts';
import { saveJobHere } from './save-job-here.ts';

const at = new Date('2026-03-01T10:00:00.000Z');
const photoBytes = (number: number) => Uint8Array.of(0xff, 0xd8, 0xff, number);
const photoEntry = (number: number): Entry => ({
  ...wireEntry(100 + number),
  fact: {
    kind: 'photo',
    v: 1,
    digest: digestOf(photoBytes(number)),
    mediaType: 'image/jpeg',
    bytes: 4,
    width: 2,
    height: 2,
    place: {},
    marks: [],
  },
});

describe('saveJobHere()', () => {
  it('makes a file that another store can bring in, tells each step, and leaves the database free', async () => {
    const database = 'a job with three photos';
    const store = await openBrowserStore(database);
    const entries = [...wireEntries(30), ...[1, 2, 3].map(photoEntry)];
    await store.append(entries);
    for (const number of [1, 3]) await store.blobs.put(photoBytes(number));

    const steps: string[] = [];
    const saved = await saveJobHere({
      job: jobA,
      at: at.toISOString(),
      database,
      onStep: (step) => steps.push(step.is === 'reading' ? `${step.photo} of ${step.photos}` : step.is),
    });
    expect(steps).toEqual(['1 of 3', '2 of 3', '3 of 3', 'writing']);
    expect(saved).toMatchObject({ entries: 33, photos: 2, missingPhotos: [digestOf(photoBytes(2))] });
    const bytes = new Uint8Array(await saved.file.arrayBuffer());
    expect(Object.keys(unzipSync(bytes))).toEqual([
      'journal.jsonl',
      `photos/${digestOf(photoBytes(1))}.jpg`,
      `photos/${digestOf(photoBytes(3))}.jpg`,
    ]);
    const other = createMemoryStore();
    await bringInJob(
      { store: other, now: () => at, newId: () => jobA, by: 'Bo', device: 'other' },
      { bytes, fileName: saved.fileName },
    );
    expect((await other.entries(jobA)).entries).toEqual(entries);
    expect(await other.blobs.get(digestOf(photoBytes(3)))).toEqual(photoBytes(3));
    await store.close();
    await new Promise<void>((done, failed) => {
      const deleting = indexedDB.deleteDatabase(database);
      deleting.onsuccess = () => done();
      deleting.onblocked = () => failed(new Error('something still has it open'));
    });
  });

  it('says which job is not on this device', async () => {
    const wanted = { job: jobA, at: at.toISOString(), database: 'an empty device', onStep: () => {} };
    await expect(saveJobHere(wanted)).rejects.toThrow(`Cannot find job ${jobA}`);
  });
});

describe('saveJobAway()', () => {
  /** A worker that answers what the test says. */
  function begun() {
    const asked: unknown[] = [];
    const files: string[] = [];
    let ended = 0;
    const workers: SaveJobWorker[] = [];
    const saving = saveJobAway(jobA, () => {
      const worker: SaveJobWorker = {
        postMessage: (question: unknown) => void asked.push(question),
        terminate: () => {
          ended += 1;
        },
        onmessage: null,
        onerror: null,
      };
      workers.push(worker);
      return worker;
    });
    const start = () => saving.start(at, (_file, name) => files.push(name));
    const answer = (data: SaveJobAnswer, from = workers.length - 1) =>
      workers[from]!.onmessage?.call(workers[from] as Worker, { data } as MessageEvent<SaveJobAnswer>);
    start();
    return { saving, start, answer, asked, files, workers, ended: () => ended };
  }
  const savedAnswer: SaveJobAnswer = {
    is: 'saved',
    file: new Blob(['zip']),
    fileName: 'a-piano.zip',
    entries: 4,
    photos: 2,
    missingPhotos: [],
  };

  it('hands over the file once, and ends its worker', () => {
    const { saving, start, answer, asked, files, ended } = begun();
    start();
    expect(asked).toEqual([{ job: jobA, at: '2026-03-01T10:00:00.000Z', locale: 'en-GB' }]);
    answer({ is: 'reading', photo: 2, photos: 9 });
    expect(saving.state.get()).toEqual({ is: 'reading', photo: 2, photos: 9 });
    answer(savedAnswer);
    expect(files).toEqual(['a-piano.zip']);
    expect(ended()).toBe(1);
    // The file itself is not held on to: the page would keep all the photos in memory.
    expect(saving.state.get()).not.toHaveProperty('file');
    start();
    expect(asked).toHaveLength(2);
  });

  it('gives no file once it was stopped, whatever still comes', () => {
    const { saving, start, answer, files, ended } = begun();
    saving.stop();
    expect(ended()).toBe(1);
    answer(savedAnswer);
    expect(saving.state.get()).toEqual({ is: 'stopped' });
    start();
    answer(savedAnswer, 0);
    expect(files).toEqual([]);
    expect(saving.state.get()).toEqual({ is: 'beginning' });
  });

  it('says why there is no file, and can be asked again', () => {
    const { saving, start, answer, asked, workers } = begun();
    answer({ is: 'failed', sentence: 'Cannot find job X.' });
    expect(saving.state.get()).toEqual({ is: 'failed', sentence: 'Cannot find job X.' });
    start();
    let isPrevented = false;
    const event = { preventDefault: () => (isPrevented = true) } as unknown as ErrorEvent;
    workers[1]!.onerror?.call(workers[1] as Worker, event);
    expect(isPrevented).toBe(true);
    expect(saving.state.get()).toMatchObject({
      is: 'failed',
      sentence: expect.stringMatching(/^Could not save .*memory/),
    });
    start();
    expect(asked).toHaveLength(3);
  });
});
