import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { digestOf, foldJob, writeJournalLines } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import fc from 'fast-check';
import { unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { arbitraryJournal, entryOf, jobId } from '../../../journal/src/testing/arbitrary-entries.ts';
import { jpegWith } from '../../../journal/src/testing/tiny-jpeg.ts';
import { readJob, type TaskContext } from '../context.ts';
import { languageFor } from '../language-for.ts';
import { recordPhoto, withdrawPhoto } from '../record-photo.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { bringInJob } from './bring-in-job.ts';
import { saveJob } from './save-job.ts';
import { crc32, readZip } from './zip-file.ts';

const fileName = 'grand.zip';

/** A JPEG of its own for each number: a colour profile nobody reads makes the difference. */
const jpegOf = (number: number) =>
  jpegWith([{ marker: 0xe2, content: Uint8Array.of(number >> 8, number & 0xff) }]);

const emptyContext = (): TaskContext => ({ ...memoryContext(), store: createMemoryStore() });

/** A context with a job of these entries and so many photos. */
async function contextWith(entries: Parameters<TaskContext['store']['append']>[0], photos: number) {
  const context = emptyContext();
  await context.store.append(entries);
  for (let number = 0; number < photos; number += 1) {
    await recordPhoto(context, jobId, {
      jpeg: jpegOf(number),
      width: 2,
      height: 2,
      place: number % 2 === 0 ? {} : { key: 1 + number },
      reason: 'more to see',
    });
  }
  return context;
}
const opened = [entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'Flügel of the “old” school' })];

describe('a job as one file', () => {
  it('brought into an empty store folds to the same job with the same photos, and a second time changes nothing', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryJournal, fc.nat({ max: 4 }), async (journal, count) => {
        const here = await contextWith(journal, count);
        const saved = await saveJob(here, jobId);
        expect(saved.photos).toBe(count);
        const there = emptyContext();
        const file = { bytes: saved.bytes, fileName };
        expect(await bringInJob(there, file)).toEqual({
          job: jobId,
          added: saved.entries,
          photosAdded: count,
          notice: undefined,
        });
        const job = await readJob(there, jobId);
        expect(job).toEqual(await readJob(here, jobId));
        for (const { digest } of job.photos)
          expect(await there.store.blobs.get(digest)).toEqual(await here.store.blobs.get(digest));
        expect(await bringInJob(there, file)).toMatchObject({ added: 0, photosAdded: 0, notice: undefined });
        expect(await readJob(there, jobId)).toEqual(job);
      }),
      { numRuns: 25 },
    );
  });

  it('joins what two devices did apart, whichever is brought into the other', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryJournal, fc.nat({ max: 40 }), async (journal, cut) => {
        const [first, ...rest] = journal;
        const one = await contextWith([first!, ...rest.slice(0, cut)], 1);
        const other = await contextWith([first!, ...rest.slice(cut)], 0);
        const oneFile = await saveJob(one, jobId);
        const otherFile = await saveJob(other, jobId);
        await bringInJob(one, { bytes: otherFile.bytes, fileName });
        await bringInJob(other, { bytes: oneFile.bytes, fileName });
        expect(await readJob(one, jobId)).toEqual(await readJob(other, jobId));
      }),
      { numRuns: 15 },
    );
  });

  it('is a zip that another program finds whole, with the journal as text and each photo under its digest', async () => {
    const context = await contextWith(opened, 3);
    const { bytes, fileName: name } = await saveJob(context, jobId);
    expect(name).toBe('Flugel-of-the-old-school.zip');
    const folder = mkdtempSync(join(tmpdir(), 'becket-test-'));
    try {
      writeFileSync(join(folder, name), bytes);
      // Python's zipfile, which checks every CRC; a program that shares no code with ours.
      const script =
        'import sys,zipfile,json; z=zipfile.ZipFile(sys.argv[1]); assert z.testzip() is None; print(json.dumps([[i.filename,i.file_size] for i in z.infolist()]))';
      const listed = JSON.parse(
        execFileSync('python3', ['-c', script, join(folder, name)], { encoding: 'utf8' }),
      ) as [string, number][];
      const { entries } = await context.store.entries(jobId);
      expect(listed[0]).toEqual(['journal.jsonl', Buffer.byteLength(writeJournalLines(entries))]);
      expect(listed.slice(1).map(([path]) => path)).toEqual(
        (await readJob(context, jobId)).photos.map(({ digest }) => `photos/${digest}.jpg`),
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('has photos that were taken out of the record as well, since its journal names them', async () => {
    const context = await contextWith(opened, 1);
    const digest = (await readJob(context, jobId)).photos[0]!.digest;
    await withdrawPhoto(context, jobId, { digest, reason: 'blurred' });
    expect((await readJob(context, jobId)).photos).toEqual([]);
    expect((await saveJob(context, jobId)).photos).toBe(1);
  });

  it('cut off anywhere gives every whole entry and every whole photo before the cut, or says in one sentence why not', async () => {
    const context = await contextWith(opened, 4);
    const { bytes, entries } = await saveJob(context, jobId);
    const photos = (await readJob(context, jobId)).photos.map(({ digest }) => digest);
    let mostSaved = 0;
    // Every length is tried near the ends of files; elsewhere every seventh.
    for (let length = 0; length < bytes.length; length += length % 3 === 0 ? 7 : 1) {
      const there = emptyContext();
      const file = { bytes: bytes.slice(0, length), fileName };
      const done = await bringInJob(there, file).catch((error: Error) => error);
      if (done instanceof Error) {
        expect(done.message).toMatch(/^Cannot bring in 'grand\.zip': [^\n]*\.$/);
        expect(await there.store.jobs()).toEqual([]);
        continue;
      }
      expect(done.notice).toMatch(
        /whole entries of 'grand\.zip' were brought in, but not everything: the file is cut off/,
      );
      const kept = (await there.store.entries(jobId)).entries;
      expect(kept).toEqual((await context.store.entries(jobId)).entries.slice(0, kept.length));
      const missing = await there.store.blobs.missing(photos);
      expect(photos.slice(0, photos.length - missing.length)).toEqual(
        photos.filter((digest) => !missing.includes(digest)),
      );
      mostSaved = Math.max(mostSaved, photos.length - missing.length);
      // The whole file completes what was cut.
      await bringInJob(there, { bytes, fileName });
      expect((await there.store.entries(jobId)).entries).toHaveLength(entries);
    }
    expect(mostSaved).toBe(4);
  });

  it('with a damaged photo gives everything else and says so; with a damaged journal gives nothing', async () => {
    const context = await contextWith(opened, 2);
    const { bytes } = await saveJob(context, jobId);
    const photo = await context.store.blobs.get((await readJob(context, jobId)).photos[1]!.digest);
    const at = Buffer.from(bytes).indexOf(Buffer.from(photo!));
    const damaged = bytes.slice();
    damaged[at + 100]! ^= 1;
    const there = emptyContext();
    const { notice, photosAdded } = await bringInJob(there, { bytes: damaged, fileName });
    expect(photosAdded).toBe(1);
    expect(notice).toBe(
      "3 whole entries of 'grand.zip' were brought in, but not everything: 1 photo in it is damaged; 1 of its 2 photos is neither in it nor here. Keep the file, and save the job again where it came from.",
    );
    const changed = bytes.slice();
    changed[60]! ^= 1;
    await expect(bringInJob(emptyContext(), { bytes: changed, fileName })).rejects.toThrow(
      /^Cannot bring in 'grand\.zip': a zip with a whole journal\.jsonl is needed, one that is damaged was found/,
    );
  });

  it('may be unpacked and packed again by another program that compresses', async () => {
    const context = await contextWith(opened, 2);
    const { bytes } = await saveJob(context, jobId);
    const again = zipSync(unzipSync(bytes), { level: 9 });
    const there = emptyContext();
    expect(await bringInJob(there, { bytes: again, fileName })).toMatchObject({
      photosAdded: 2,
      notice: undefined,
    });
  });

  it('may be the journal alone; then its photos are said to be missing', async () => {
    const context = await contextWith(opened, 2);
    const text = writeJournalLines((await context.store.entries(jobId)).entries);
    const there = emptyContext();
    const { notice } = await bringInJob(there, {
      bytes: new TextEncoder().encode(text),
      fileName: 'grand.jsonl',
    });
    expect(notice).toContain('2 of its 2 photos are neither in it nor here');
    expect((await readJob(there, jobId)).photos).toHaveLength(2);
    // Brought in again with its photos, it is complete.
    const { bytes } = await saveJob(context, jobId);
    expect(await bringInJob(there, { bytes, fileName })).toMatchObject({
      added: 0,
      photosAdded: 2,
      notice: undefined,
    });
  });

  it('with an entry that is here with other content changes nothing, its photos included', async () => {
    const context = await contextWith(opened, 1);
    const { bytes } = await saveJob(context, jobId);
    const there = emptyContext();
    await there.store.append([{ ...opened[0]!, by: 'Bo' }]);
    await expect(bringInJob(there, { bytes, fileName })).rejects.toThrow(/with different content/);
    const german = await languageFor('de-DE');
    await expect(bringInJob({ ...there, language: german }, { bytes, fileName })).rejects.toThrow(
      /^Diese Journale lassen sich nicht vereinen: .* steht in beiden mit verschiedenem Inhalt\./,
    );
    expect((await there.store.entries(jobId)).entries).toHaveLength(1);
    const { photos } = await readJob(context, jobId);
    expect(await there.store.blobs.missing([photos[0]!.digest])).toHaveLength(1);
  });

  it.each([
    ['nothing', new Uint8Array()],
    ['a picture', jpegOf(1)],
    ['a zip of something else', zipSync({ 'holiday.txt': new TextEncoder().encode('sun') })],
    ['a zip without a file', zipSync({})],
    ['a text', new TextEncoder().encode('hello')],
  ])('that is %s is refused in one sentence', async (_, bytes) => {
    await expect(bringInJob(emptyContext(), { bytes, fileName: 'x' })).rejects.toThrow(
      /^Cannot bring in 'x': [^\n]*\.$/,
    );
  });

  it('names photos that this store does not have, and goes without them', async () => {
    const context = await contextWith(opened, 1);
    const elsewhere = emptyContext();
    await elsewhere.store.append((await context.store.entries(jobId)).entries);
    const saved = await saveJob(elsewhere, jobId);
    expect(saved.photos).toBe(0);
    expect(saved.missingPhotos).toEqual(
      foldJob((await context.store.entries(jobId)).entries).photos.map(({ digest }) => digest),
    );
  });
});

describe('readZip()', () => {
  const limit = () => 1000;
  it('does not unpack more than it is allowed to, whatever the zip says of itself', () => {
    const zip = zipSync({ a: new Uint8Array(100_000) }, { level: 9 });
    expect(readZip(zip, limit).files[0]).toMatchObject({ bytes: undefined, problem: 'too large' });
    const lying = zip.slice();
    const view = new DataView(lying.buffer);
    // The size, as the list at the end has it, made small.
    const list = view.getUint32(lying.length - 22 + 16, true);
    view.setUint32(list + 24, 500, true);
    expect(readZip(lying, limit).files[0]).toMatchObject({ bytes: undefined, problem: 'damaged' });
  });

  it('changed in any one byte gives what was put in, or says what is wrong, and never ends itself', () => {
    const put = [new Uint8Array(50).fill(3), new Uint8Array([1])];
    const zip = zipSync({ a: put[0]!, b: put[1]! });
    fc.assert(
      fc.property(fc.nat({ max: zip.length - 1 }), fc.nat({ max: 255 }), (at, byte) => {
        const bytes = zip.slice();
        bytes[at] = byte;
        for (const { bytes: found, problem } of readZip(bytes, limit).files) {
          if (problem === undefined) expect(put).toContainEqual(new Uint8Array(found!));
          else if (problem !== 'cut off') expect(found).toBeUndefined();
        }
      }),
      { numRuns: 400 },
    );
  });

  it('has the checksum of the standard', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
    expect(digestOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});
