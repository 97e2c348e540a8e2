import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { test as base } from '@playwright/test';
import { slowEveryPage, slownessOf } from './slow-pages.ts';

const root = resolve(import.meta.dirname, '../../..');

/** The real server as `npm start` runs it, with a data folder of its own and any free port. */
export class BecketServer {
  readonly folder = mkdtempSync(join(tmpdir(), 'becket-e2e-'));
  private child: ChildProcess | undefined;
  private port = '0';
  url = '';

  async start(env: Record<string, string> = {}): Promise<void> {
    const child = spawn(process.execPath, ['--import', 'tsx', 'apps/server/src/main.ts'], {
      cwd: root,
      stdio: ['ignore', 'pipe', 'inherit'],
      env: {
        ...process.env,
        BECKET_DATA: this.folder,
        BECKET_PORT: this.port,
        BECKET_HOST: '127.0.0.1',
        BECKET_DEMO: '',
        ...env,
      },
    });
    this.child = child;
    this.url = await new Promise<string>((found, failed) => {
      let said = '';
      child.stdout.on('data', (chunk: Buffer) => {
        said += chunk.toString();
        const url = /http:\/\/[\d.]+:\d+/.exec(said)?.[0];
        if (url !== undefined) found(url);
      });
      child.once('exit', (code) => failed(new Error(`the server ended with status ${code}: ${said}`)));
    });
    // A server that is started again keeps its address, as a shop's would.
    this.port = new URL(this.url).port;
  }

  /** Ends the server; `kill` as a power cut would. */
  async stop(signal: 'SIGTERM' | 'SIGKILL' = 'SIGTERM'): Promise<void> {
    const { child } = this;
    if (child === undefined || child.exitCode !== null) return;
    const ended = new Promise((done) => child.once('exit', done));
    child.kill(signal);
    await ended;
    this.child = undefined;
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

const slowness = slownessOf(process.env);

/** A test with a server of its own; its pages are slow when `BECKET_SLOW` says so. */
export const test = base.extend<
  { server: BecketServer; slowTime: undefined },
  { slowPages: undefined; nextServer: () => Promise<BecketServer> }
>({
  // Slow pages are there to show what happens in the wrong order, not to be timed.
  slowTime: [
    // biome-ignore lint/correctness/noEmptyPattern: the test tool reads the fixture's needs from this pattern
    async ({}, use, info) => {
      info.setTimeout(info.timeout * slowness);
      await use(undefined);
    },
    { auto: true },
  ],
  slowPages: [
    async ({ browser }, use) => {
      if (slowness > 1) slowEveryPage(browser, slowness);
      await use(undefined);
    },
    { scope: 'worker', auto: true },
  ],
  // The server of the next test is started while this one runs: its program takes two seconds to load.
  nextServer: [
    // biome-ignore lint/correctness/noEmptyPattern: the test tool reads the fixture's needs from this pattern
    async ({}, use) => {
      const begin = () => {
        const server = new BecketServer();
        const started = server.start();
        // Whoever takes it is told; one that nobody takes may have been ended on its way.
        started.catch(() => {});
        return { server, started };
      };
      let coming = begin();
      await use(async () => {
        const { server, started } = coming;
        coming = begin();
        await started;
        return server;
      });
      await coming.server.stop();
      coming.server.remove();
    },
    { scope: 'worker' },
  ],
  server: async ({ nextServer }, use) => {
    const server = await nextServer();
    await use(server);
    await server.stop();
    server.remove();
  },
});
export { expect } from '@playwright/test';
