import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';

const binary = resolve(import.meta.dirname, '../../bin/becket.mjs');
const folder = mkdtempSync(join(tmpdir(), 'becket-cli-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
// Each command is a process of its own; on a busy machine they take their time.
vi.setConfig({ testTimeout: 300_000 });

/** Runs the real program on the store of that name, in the test's folder. */
function becket(store: string, ...args: string[]): Promise<{ status: number; out: string; talk: string }> {
  return new Promise((done) => {
    execFile(
      process.execPath,
      [binary, '--data', join(folder, store), '--by', 'Ada', ...args],
      { cwd: folder, env: { ...process.env, LC_ALL: 'C' } },
      (error, out, talk) => done({ status: error === null ? 0 : Number(error.code), out, talk }),
    );
  });
}

describe('becket export and bring-in-job', () => {
  it('carry a job from one store to another, once', async () => {
    const opened = await becket(
      'one',
      '--json',
      'new',
      'A small grand',
      '--form',
      'grand',
      '--compass',
      'A4-B4',
    );
    const { job } = JSON.parse(opened.out);
    const saved = await becket('one', '--json', 'export', job);
    expect(saved.status).toBe(0);
    expect(JSON.parse(saved.out)).toMatchObject({ file: 'A-small-grand.zip', photos: 0, missingPhotos: [] });
    // Without being asked to, nothing is written over.
    expect(JSON.parse((await becket('one', '--json', 'export', job)).out).file).toBe('A-small-grand-2.zip');

    const file = join(folder, 'A-small-grand.zip');
    const there = await becket('two', '--json', 'bring-in-job', file);
    expect(there).toMatchObject({ status: 0, talk: '' });
    expect(JSON.parse(there.out)).toMatchObject({ job, added: JSON.parse(saved.out).entries });
    expect(JSON.parse((await becket('two', '--json', 'bring-in-job', file)).out)).toMatchObject({ added: 0 });
    const [here, again] = [
      await becket('one', '--json', 'show', job),
      await becket('two', '--json', 'show', job),
    ];
    expect(again.out).toBe(here.out);

    truncateSync(file, readFileSync(file).length - 100);
    const cut = await becket('three', '--json', 'bring-in-job', file);
    expect(cut.status).toBe(0);
    expect(cut.talk).toContain('the file is cut off');
  });

  it('refuse what is no job file, and a place where no file can be, in one sentence', async () => {
    const text = join(folder, 'holiday.txt');
    writeFileSync(text, 'sun');
    const refused = await becket('four', 'bring-in-job', text);
    expect(refused).toMatchObject({ status: 3, out: '' });
    expect(refused.talk.trim()).toMatch(/^Cannot bring in 'holiday\.txt': [^\n]*$/);
    expect((await becket('four', 'bring-in-job', join(folder, 'nothing.zip'))).status).toBe(4);

    const opened = await becket('four', '--json', 'new', 'x');
    const nowhere = await becket(
      'four',
      'export',
      JSON.parse(opened.out).job,
      '--to',
      join(folder, 'no/such/x.zip'),
    );
    expect(nowhere.status).toBe(3);
    expect(nowhere.talk.trim()).toMatch(/^Cannot write [^\n]*$/);
    expect(readdirSync(folder)).not.toContain('no');
  });
});
