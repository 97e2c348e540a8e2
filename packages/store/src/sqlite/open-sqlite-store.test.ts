import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { describe, expect, it, vi } from 'vitest';
import { StoreUnavailable } from '../port.ts';
import { ChildProgram } from '../testing/child-program.ts';
import { jobA, wireEntries } from '../testing/journal-samples.ts';
import { temporaryFolders } from '../testing/temporary-folder.ts';
import { migrations } from './migrations/index.ts';
import { openSqliteStore } from './open-sqlite-store.ts';

// A program takes its time to start when the machine is busy.
vi.setConfig({ testTimeout: 240_000 });
const newFolder = temporaryFolders();

async function refusal(file: string, options?: { patience_ms: number }): Promise<StoreUnavailable> {
  const error = await openSqliteStore(file, options).then(
    (store) => store.close(),
    (failure: unknown) => failure,
  );
  expect(error).toBeInstanceOf(StoreUnavailable);
  const { message } = error as StoreUnavailable;
  expect(message).toContain(file);
  expect(message.split('\n')).toHaveLength(1);
  return error as StoreUnavailable;
}

async function smallStore(): Promise<string> {
  const file = join(newFolder(), 'becket.sqlite');
  const store = await openSqliteStore(file);
  await store.append(wireEntries(300));
  await store.close();
  return file;
}

describe('openSqliteStore()', () => {
  it('makes the folders on the way', async () => {
    const file = join(newFolder(), 'a', 'b', 'becket.sqlite');
    await (await openSqliteStore(file)).close();
    expect(readFileSync(file).toString('latin1', 0, 15)).toBe('SQLite format 3');
  });

  it('writes through to the disk and keeps a write-ahead log', async () => {
    const file = join(newFolder(), 'becket.sqlite');
    const store = await openSqliteStore(file);
    await store.append(wireEntries(1));
    // The log stands beside the file as long as the store is open; SQLite's own words say that it is one.
    expect(readFileSync(`${file}-wal`).readUInt32BE(0) >>> 1).toBe(0x377f0682 >>> 1);
    await store.close();
  });

  it.each([
    ['a text', (file: string) => writeFileSync(file, 'note,wire\nA0,1.2\n'.repeat(100))],
    ['a short text', (file: string) => writeFileSync(file, 'x')],
    [
      "another program's database",
      (file: string) => {
        const other = new Sqlite(file);
        other.exec('create table entries (id text); insert into entries values (1)');
        other.close();
      },
    ],
  ])('refuses %s and leaves it as it was', async (_, make) => {
    const file = join(newFolder(), 'something');
    make(file);
    const before = readFileSync(file);
    const { problem, message } = await refusal(file);
    expect(problem).toBe('not a store');
    expect(message).toMatch(/a file of another kind was found and left as it is\. Name another file\.$/);
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('refuses a database that a later version has written to, and leaves it as it was', async () => {
    const file = await smallStore();
    const direct = new Sqlite(file);
    direct
      .prepare('insert into kysely_migration (name, timestamp) values (?, ?)')
      .run('2031-01-01-later', '2031-01-01');
    direct.close();
    const before = readFileSync(file);
    const { problem, message } = await refusal(file);
    expect(problem).toBe('later version');
    expect(message).toContain('2031-01-01-later');
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('refuses a database that another program does not let go of, and opens it afterwards', async () => {
    const file = await smallStore();
    const other = new Sqlite(file);
    other.exec('begin exclusive');
    expect((await refusal(file, { patience_ms: 60 })).problem).toBe('in use');
    other.exec('rollback');
    other.close();
    await (await openSqliteStore(file)).close();
  });

  it('waits for another that is writing', async () => {
    const file = await smallStore();
    const store = await openSqliteStore(file);
    const other = new Sqlite(file);
    other.exec('begin immediate');
    const adding = store.append(wireEntries(301));
    await new Promise((resolve) => setTimeout(resolve, 80));
    other.exec('commit');
    other.close();
    expect(await adding).toEqual({ added: 1, known: 300 });
    await store.close();
  });

  it('refuses a place where no file can be', async () => {
    const folder = newFolder();
    writeFileSync(join(folder, 'a-file'), '');
    expect((await refusal(join(folder, 'a-file', 'becket.sqlite'))).problem).toBe('cannot be opened');
    mkdirSync(join(folder, 'a-folder'));
    expect((await refusal(join(folder, 'a-folder'))).problem).toBe('cannot be opened');
  });

  it('says that a damaged database is damaged, when it is opened or read', async () => {
    const file = await smallStore();
    const content = readFileSync(file);
    content.fill(0xa5, 4096);
    const hurt = join(newFolder(), 'becket.sqlite');
    writeFileSync(hurt, content);
    const reading = openSqliteStore(hurt).then(async (store) => {
      try {
        return await store.entries(jobA);
      } finally {
        await store.close();
      }
    });
    await expect(reading).rejects.toMatchObject({ name: 'StoreUnavailable', problem: 'damaged' });
  });

  it('opens a copy of the file as it was', async () => {
    const file = await smallStore();
    const copy = join(newFolder(), 'copy.sqlite');
    copyFileSync(file, copy);
    const store = await openSqliteStore(copy);
    expect((await store.entries(jobA)).entries).toEqual(wireEntries(300));
    await store.close();
  });

  it('several programs may make the same new store at the same moment', async () => {
    const file = join(newFolder(), 'becket.sqlite');
    const programs = [0, 1].map(
      (number) => new ChildProgram('append-until-ended.ts', ['sqlite', file, String(number * 100_000)]),
    );
    await Promise.all(programs.map((program) => program.said(3)));
    await Promise.all(programs.map((program) => program.kill()));
    const store = await openSqliteStore(file);
    const ids = new Set((await store.entries(jobA)).entries.map(({ id }) => id));
    programs.forEach(({ lines }, number) => {
      const first = number * 100_000;
      for (const { id } of wireEntries((lines.at(-1) as number) - first, { first }))
        expect(ids.has(id)).toBe(true);
    });
    await store.close();
  });

  it('has migrations with dated names, in their order', () => {
    const names = Object.keys(migrations);
    expect(names).toEqual([...names].sort());
    for (const name of names) expect(name).toMatch(/^\d{4}-\d{2}-\d{2}-[a-z-]+$/);
  });
});
