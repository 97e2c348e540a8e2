import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { digestOf, writeJournalLines } from '@becket/journal';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { StoreUnavailable } from '../port.ts';
import { ChildProgram } from '../testing/child-program.ts';
import { jobA, jobB, wireEntries, wireEntry } from '../testing/journal-samples.ts';
import { temporaryFolders } from '../testing/temporary-folder.ts';
import { openFilesStore } from './open-files-store.ts';

// A program takes its time to start when the machine is busy.
vi.setConfig({ testTimeout: 240_000 });
const newFolder = temporaryFolders();
const fileA = `${jobA}.jsonl`;

async function refusal(folder: string): Promise<StoreUnavailable> {
  const error = await openFilesStore(folder).then(
    (store) => store.close(),
    (failure: unknown) => failure,
  );
  expect(error).toBeInstanceOf(StoreUnavailable);
  expect((error as StoreUnavailable).message.split('\n')).toHaveLength(1);
  return error as StoreUnavailable;
}

async function storeWith(count: number): Promise<string> {
  const folder = join(newFolder(), 'journals');
  const store = await openFilesStore(folder);
  if (count > 0) await store.append(wireEntries(count));
  await store.close();
  return folder;
}

const cutFiles = (folder: string) => readdirSync(folder).filter((name) => name.includes('.cut-'));

describe('openFilesStore()', () => {
  it('keeps each job as JSON Lines, one entry a line, that a job file reader reads', async () => {
    const folder = await storeWith(3);
    expect(readFileSync(join(folder, fileA), 'utf8')).toBe(writeJournalLines(wireEntries(3)));
  });

  it('takes no notice of a photo that was half written when its program ended', async () => {
    const folder = await storeWith(1);
    const digest = digestOf(new Uint8Array([1, 2, 3]));
    mkdirSync(join(folder, 'blobs'));
    writeFileSync(join(folder, 'blobs', `${digest}.half`), new Uint8Array([1]));
    const store = await openFilesStore(folder);
    expect(await store.blobs.get(digest)).toBeUndefined();
    expect(await store.blobs.put(new Uint8Array([1, 2, 3]))).toBe(digest);
    await store.close();
    expect(readdirSync(join(folder, 'blobs'))).toEqual([digest]);
  });

  it('takes a journal file that was put into the folder by hand', async () => {
    const folder = await storeWith(0);
    writeFileSync(join(folder, fileA), writeJournalLines(wireEntries(4)));
    const store = await openFilesStore(folder);
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(4));
    await store.close();
  });

  it('cut anywhere gives every whole entry, puts the piece aside byte for byte, and says so', async () => {
    const whole = Buffer.from(writeJournalLines(wireEntries(4)));
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: whole.length }), async (length) => {
        const folder = await storeWith(4);
        truncateSync(join(folder, fileA), length);
        const store = await openFilesStore(folder);
        const { entries } = await store.entries(jobA);
        const part = whole.subarray(0, length).toString();
        const wholeLines = part.split('\n').length - 1;
        const isOnlyLineEndMissing = length < whole.length && whole[length] === 0x0a;
        expect(entries).toEqual(wireEntries(wholeLines + (isOnlyLineEndMissing ? 1 : 0)));
        const piece = isOnlyLineEndMissing ? '' : part.slice(part.lastIndexOf('\n') + 1);
        const aside = cutFiles(folder);
        expect(aside.map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual(
          piece === '' ? [] : [piece],
        );
        expect(store.notices).toHaveLength(aside.length);
        for (const name of aside) expect(store.notices[0]).toContain(name);
        await store.append([wireEntry(9)]);
        await store.close();
        const again = await openFilesStore(folder);
        expect((await again.entries(jobA)).entries).toEqual([...entries, wireEntry(9)]);
        expect(again.notices).toEqual([]);
        await again.close();
      }),
      { numRuns: 40 },
    );
  });

  it('keeps two pieces that were cut at the same place apart', async () => {
    const folder = await storeWith(1);
    for (const piece of ['{"one', '{"other', '{"one']) {
      appendFileSync(join(folder, fileA), piece);
      await (await openFilesStore(folder)).close();
    }
    expect(cutFiles(folder).map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual([
      '{"one',
      '{"other',
    ]);
  });

  it('takes back a batch it was ended in the middle of, over several jobs, and puts its lines aside', async () => {
    const folder = await storeWith(2);
    const length = readFileSync(join(folder, fileA)).length;
    // What stands on the disk when the power goes after the first entries of a batch were written.
    writeFileSync(join(folder, 'adding.json'), JSON.stringify({ [fileA]: length, [`${jobB}.jsonl`]: 0 }));
    const added = writeJournalLines(wireEntries(2, { first: 2 }));
    appendFileSync(join(folder, fileA), added);
    writeFileSync(join(folder, `${jobB}.jsonl`), '{"id":"0000');
    const store = await openFilesStore(folder);
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(2));
    expect((await store.jobs()).map(({ job }) => job)).toEqual([jobA]);
    expect(store.notices).toHaveLength(2);
    expect(readFileSync(join(folder, `${fileA}.cut-${length}`), 'utf8')).toBe(added);
    expect(existsSync(join(folder, 'adding.json'))).toBe(false);
    await store.append(wireEntries(4));
    await store.close();
    const again = await openFilesStore(folder);
    expect((await again.entries(jobA)).entries).toEqual(wireEntries(4));
    await again.close();
  });

  it.each([
    ['a line that is no entry', 'hello\n', /Line 3 is not an entry/],
    ["another job's entry", writeJournalLines([wireEntry(7, { job: jobB })]), /belongs to job/],
    ['an entry twice with other content', writeJournalLines([{ ...wireEntry(0), by: 'Bo' }]), /stands twice/],
  ])(
    'with %s leaves that job out, says why, touches nothing, and serves the others',
    async (_, text, sentence) => {
      const folder = await storeWith(2);
      writeFileSync(
        join(folder, `${jobB}.jsonl`),
        writeJournalLines(wireEntries(2, { first: 50, job: jobB })),
      );
      appendFileSync(join(folder, fileA), text);
      const before = readFileSync(join(folder, fileA));
      const store = await openFilesStore(folder);
      expect(store.notices).toEqual([expect.stringMatching(sentence)]);
      expect((await store.jobs()).map(({ job }) => job)).toEqual([jobB]);
      await expect(store.entries(jobA)).rejects.toMatchObject({ problem: 'damaged' });
      await expect(store.append([wireEntry(8)])).rejects.toMatchObject({ problem: 'damaged' });
      expect((await store.entries(jobB)).entries).toHaveLength(2);
      await store.close();
      expect(readFileSync(join(folder, fileA)).equals(before)).toBe(true);
    },
  );

  it('refuses a folder with other content, or with a mark it cannot read, and leaves it as it was', async () => {
    const folder = newFolder();
    writeFileSync(join(folder, 'holiday.txt'), 'sun');
    expect((await refusal(folder)).problem).toBe('not a store');
    expect(readdirSync(folder)).toEqual(['holiday.txt']);
    for (const mark of ['', '[]', 'null', '{"format":"else","version":1}']) {
      const marked = newFolder();
      writeFileSync(join(marked, 'becket-store.json'), mark);
      expect((await refusal(marked)).problem).toBe('not a store');
      expect(readdirSync(marked)).toEqual(['becket-store.json']);
    }
  });

  it('refuses a folder that a later version has written to', async () => {
    const folder = await storeWith(1);
    writeFileSync(join(folder, 'becket-store.json'), '{"format":"becket journals","version":2}');
    const { problem, message } = await refusal(folder);
    expect(problem).toBe('later version');
    expect(message).toContain('version 2');
  });

  it('refuses a place where no folder can be', async () => {
    const folder = newFolder();
    writeFileSync(join(folder, 'a-file'), '');
    expect((await refusal(join(folder, 'a-file'))).problem).toBe('cannot be opened');
    expect((await refusal(join(folder, 'a-file', 'below'))).problem).toBe('cannot be opened');
  });

  it('is for one program at a time, and free again when that program was killed', async () => {
    const folder = join(newFolder(), 'journals');
    const other = new ChildProgram('append-until-ended.ts', ['files', folder]);
    await other.said(1);
    const { problem, message } = await refusal(folder);
    expect(problem).toBe('in use');
    expect(message).toMatch(/Close the other program, then try again\.$/);
    await other.kill();
    await (await openFilesStore(folder)).close();
  });

  it('is for one opener at a time within a program as well', async () => {
    const folder = join(newFolder(), 'journals');
    const store = await openFilesStore(folder);
    expect((await refusal(folder)).problem).toBe('in use');
    await store.append(wireEntries(2));
    await store.close();
    await (await openFilesStore(folder)).close();
  });

  it('takes back what it wrote when a write fails, and goes on when the reason is gone', async () => {
    const folder = await storeWith(2);
    const store = await openFilesStore(folder);
    // A folder stands where the second job's file should be.
    mkdirSync(join(folder, `${jobB}.jsonl`));
    const batch = [wireEntry(2), wireEntry(60, { job: jobB })];
    await expect(store.append(batch)).rejects.toMatchObject({ problem: 'cannot be written' });
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(2));
    expect(readFileSync(join(folder, fileA), 'utf8')).toBe(writeJournalLines(wireEntries(2)));
    expect(await store.append([wireEntry(2)])).toEqual({ added: 1, known: 0 });
    await store.close();
  });
});
