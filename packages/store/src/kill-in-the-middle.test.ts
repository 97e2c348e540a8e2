import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { openFilesStore } from './files/index.ts';
import type { JournalStore } from './port.ts';
import { openSqliteStore } from './sqlite/index.ts';
import { ChildProgram } from './testing/child-program.ts';
import { jobA, wireEntries } from './testing/journal-samples.ts';
import { temporaryFolders } from './testing/temporary-folder.ts';

// A program takes its time to start when the machine is busy.
vi.setConfig({ testTimeout: 240_000 });
const newFolder = temporaryFolders();

const kinds: Record<string, { place: () => string; open: (place: string) => Promise<JournalStore> }> = {
  sqlite: { place: () => join(newFolder(), 'becket.sqlite'), open: openSqliteStore },
  files: { place: () => join(newFolder(), 'journals'), open: openFilesStore },
};

/** How many entries the first batches have together: batch 1 has 2 entries, then 3, 4, 5, 1, 2 … */
function batchEnds(first: number, count: number): number[] {
  const ends = [first];
  for (let batch = 1; batch <= count; batch += 1) ends.push(ends.at(-1)! + 1 + (batch % 5));
  return ends;
}

describe.each(Object.entries(kinds))(
  'a program killed while it adds to a %s store',
  (kind, { place, open }) => {
    it('leaves every acknowledged entry, no part of a batch, and a store that opens and takes more', async () => {
      const where = place();
      let kept = 0;
      for (const linesBefore of [2, 14]) {
        const child = new ChildProgram('append-until-ended.ts', [kind, where, String(kept)]);
        await child.said(linesBefore);
        await child.kill();
        expect(child.lines[0]).toBe('open');
        const acknowledged = child.lines.length === 1 ? kept : (child.lines.at(-1) as number);

        const store = await open(where);
        const { entries } = await store.entries(jobA);
        expect(entries.length).toBeGreaterThanOrEqual(acknowledged);
        expect(entries).toEqual(wireEntries(entries.length));
        expect(batchEnds(kept, child.lines.length + 1)).toContain(entries.length);

        const more = wireEntries(2, { first: entries.length });
        await store.append(more);
        await store.close();
        kept = entries.length + more.length;
      }
      const last = await open(where);
      expect((await last.entries(jobA)).entries).toEqual(wireEntries(kept));
      await last.close();
    });
  },
);

describe.each(Object.entries(kinds))('a %s store that can grow no further', (kind, { place, open }) => {
  it('says so in one sentence, keeps what it acknowledged and nothing of the batch that failed', async () => {
    const where = place();
    const child = new ChildProgram('append-until-ended.ts', [kind, where], { limit_kib: 200 });
    await child.ended();
    const failure = child.lines.at(-1) as { name: string; message: string };
    expect(failure).toMatchObject({ name: 'StoreUnavailable' });
    expect(failure.message).toMatch(/^Cannot write to the store .*try again\.$/);
    const store = await open(where);
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(child.lines.at(-2) as number));
    await store.close();
  });
});
