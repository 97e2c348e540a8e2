import { mkdtempSync, rmSync } from 'node:fs';
import { type ClientRequest, type IncomingHttpHeaders, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Entry, newUlid } from '@becket/journal';
import { openSqliteStore } from '@becket/store/sqlite';
import { onTestFinished } from 'vitest';
import type { AppParts } from '../app.ts';
import { startServer } from '../start-server.ts';

/** A new empty folder, gone when the test is. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'becket-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

let seed = 0;
/** A new id, the same in every run of a test. */
export const nextId = () => {
  seed += 1;
  let rest = seed;
  return newUlid(new Date('2026-03-01T10:00:00Z'), () => {
    const part = (rest % 32) / 32;
    rest = Math.floor(rest / 32);
    return part;
  });
};

export interface TestServer {
  readonly url: string;
  readonly file: string;
  readonly faults: unknown[];
  readonly stop: () => Promise<void>;
}

/** A real server on a free port over a real SQLite file; stopped when the test is done. */
export async function runServer(
  options: Partial<AppParts> & { file?: string; host?: string } = {},
): Promise<TestServer> {
  const file = options.file ?? join(temporaryFolder(), 'becket.sqlite');
  const store = await openSqliteStore(file);
  const faults: unknown[] = [];
  const server = await startServer({
    host: options.host ?? '127.0.0.1',
    port: 0,
    store,
    now: () => new Date('2026-03-01T10:00:00Z'),
    newId: nextId,
    log: (fault) => faults.push(fault),
    lookEvery_ms: 50,
    ...options,
  });
  let stopping: Promise<void> | undefined;
  const stop = () => {
    stopping ??= server.stop().then(() => store.close());
    return stopping;
  };
  onTestFinished(stop);
  return { url: server.url, file, faults, stop };
}

export interface Answer<Body = unknown> {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
  readonly json: Body;
}

/** A request with exactly these headers, as no browser would let us make it. `send` writes the body by hand. */
export function ask<Body = unknown>(
  url: string,
  {
    method = 'GET',
    headers = {},
    body,
    send,
  }: {
    method?: string;
    headers?: Record<string, string>;
    body?: string | Uint8Array;
    send?: (request: ClientRequest) => void;
  } = {},
): Promise<Answer<Body>> {
  return new Promise((resolve, reject) => {
    const asked = request(url, { method, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('error', reject);
      response.on('end', () => {
        const text = Buffer.concat(parts).toString('utf8');
        let json: unknown;
        try {
          json = JSON.parse(text);
        } catch {
          json = undefined;
        }
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text, json: json as Body });
      });
    });
    asked.on('error', reject);
    if (send) send(asked);
    else asked.end(body);
  });
}

export const postJson = <Body = unknown>(url: string, content: unknown) =>
  ask<Body>(url, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: typeof content === 'string' ? content : JSON.stringify(content),
  });

/** The text of an answer as it comes. */
export async function* textOf(response: Response): AsyncGenerator<string> {
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) yield part.value;
  } finally {
    await reader.cancel();
  }
}

/** Messages of a stream of events as they come, until it ends or is left. */
export async function* events(
  url: string,
  signal?: AbortSignal,
): AsyncGenerator<{ event: string; data: string }> {
  const response = await fetch(url, signal ? { signal } : {});
  let text = '';
  for await (const part of textOf(response)) {
    text += part;
    for (let end = text.indexOf('\n\n'); end >= 0; end = text.indexOf('\n\n')) {
      const lines = text.slice(0, end).split('\n');
      text = text.slice(end + 2);
      const field = (name: string) =>
        lines.find((line) => line.startsWith(`${name}: `))?.slice(name.length + 2);
      if (field('data') !== undefined) yield { event: field('event') ?? 'message', data: field('data')! };
    }
  }
}

export const jobId = '01J0000000000000000000000A';

/** The entry of this number; the same number gives the same entry. */
export function wireEntry(number: number, job = jobId): Entry {
  const value = 0.8 + (number % 40) / 100;
  return {
    id: `01J${String(number).padStart(23, '0')}`,
    job,
    step: number + 1,
    at: '2026-03-01T10:00:00.000Z',
    by: 'Ada',
    device: 'bench tablet',
    fact:
      number === 0
        ? { kind: 'job-opened', v: 1, title: 'a job' }
        : {
            kind: 'reading',
            v: 1,
            quantity: 'wire-diameter',
            place: { key: 1 + (number % 88) },
            value_si: value / 1000,
            asRead: { value, unit: 'mm' },
            origin: 'measured',
            stage: 'as found',
          },
  };
}

export const wireEntries = (first: number, count: number, job = jobId): Entry[] =>
  Array.from({ length: count }, (_, index) => wireEntry(first + index, job));
