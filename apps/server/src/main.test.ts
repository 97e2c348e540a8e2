import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { ask, events, temporaryFolder } from './testing/running-server.ts';

// A program takes its time to start when the machine is busy.
vi.setConfig({ testTimeout: 240_000 });
const main = fileURLToPath(new URL('./main.ts', import.meta.url));
const root = fileURLToPath(new URL('../../..', import.meta.url));

/** The program itself, as `npm start` runs it. */
function run(environment: Record<string, string>) {
  const child: ChildProcess = spawn(process.execPath, ['--import', 'tsx', main], {
    cwd: root,
    env: { PATH: process.env.PATH, ...environment },
  });
  let out = '';
  let talk = '';
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  const url = new Promise<string>((resolve, reject) => {
    child.stdout!.on('data', (part) => {
      out += part;
      const found = /Becket is at (http:\S+)\//.exec(out);
      if (found) resolve(found[1]!);
    });
    void ended.then(() => reject(new Error(`The server ended: ${talk}`)));
  });
  url.catch(() => {});
  child.stderr!.on('data', (part) => {
    talk += part;
  });
  onTestFinished(async () => {
    child.kill('SIGKILL');
    await ended;
  });
  return {
    url,
    ended,
    kill: (signal: NodeJS.Signals) => child.kill(signal),
    talk: () => talk,
    out: () => out,
  };
}

describe('the server as a program', () => {
  it('prints its address, puts the demo in once, keeps everything, and ends well when it is told to', async () => {
    const data = join(temporaryFolder(), 'new', 'data');
    const environment = { BECKET_DATA: data, BECKET_PORT: '0', BECKET_DEMO: '1' };
    const first = run(environment);
    const { json } = await ask<{ jobs: { job: string; entries: number }[] }>(`${await first.url}/jobs`);
    expect(json.jobs).toHaveLength(1);
    expect(json.jobs[0]!.entries).toBeGreaterThan(300);
    expect(first.out().trim().split('\n')).toHaveLength(1);
    // Somebody is watching when the server is told to stop.
    for await (const { event } of events(`${await first.url}/jobs/${json.jobs[0]!.job}/events`)) {
      expect(event).toBe('entries');
      first.kill('SIGTERM');
    }
    expect(await first.ended).toBe(0);
    expect(first.talk()).toBe('');
    // The write-ahead log is folded into the file when the store is closed.
    expect(existsSync(join(data, 'becket.sqlite-wal'))).toBe(false);

    const second = run(environment);
    expect((await ask(`${await second.url}/jobs`)).json).toEqual(json);
    second.kill('SIGINT');
    expect(await second.ended).toBe(0);
  });

  it('does not start where others could reach it, and makes no data folder then', async () => {
    const data = join(temporaryFolder(), 'data');
    const server = run({ BECKET_DATA: data, BECKET_PORT: '0', BECKET_HOST: '0.0.0.0' });
    expect(await server.ended).toBe(1);
    expect(server.talk().trim()).toMatch(/^Cannot listen on 0\.0\.0\.0: [^\n]+$/);
    expect(existsSync(data)).toBe(false);
  });

  it('says which port is taken', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    onTestFinished(() => void other.close());
    const { port } = other.address() as { port: number };
    const server = run({ BECKET_DATA: join(temporaryFolder(), 'data'), BECKET_PORT: String(port) });
    expect(await server.ended).toBe(1);
    expect(server.talk().trim()).toMatch(
      new RegExp(`^Cannot listen on 127\\.0\\.0\\.1 port ${port}: [^\\n]+$`),
    );
  });

  it('says what is wrong with the data, and leaves it', async () => {
    const data = temporaryFolder();
    mkdirSync(data, { recursive: true });
    writeFileSync(join(data, 'becket.sqlite'), 'a shopping list');
    const server = run({ BECKET_DATA: data, BECKET_PORT: '0' });
    expect(await server.ended).toBe(1);
    expect(server.talk().trim()).toMatch(/^Cannot open the store [^\n]+left as it is\. Name another file\.$/);
    expect(readFileSync(join(data, 'becket.sqlite'), 'utf8')).toBe('a shopping list');
  });
});
