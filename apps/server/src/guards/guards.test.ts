import type { ClientRequest } from 'node:http';
import { limits } from '@becket/contract';
import { createMemoryStore } from '@becket/store/memory';
import { describe, expect, it } from 'vitest';
import { ask, jobId, postJson, runServer } from '../testing/running-server.ts';

describe('the server answers to this computer alone', () => {
  it.each([
    'evil.example',
    'evil.example:80',
    '127.0.0.1.evil.example',
    '192.168.1.7:4780',
    'localhost.evil.example',
  ])('refuses a request made to the name %s, whatever the route', async (host) => {
    const { url } = await runServer();
    for (const path of ['/', '/jobs', '/health', '/nothing']) {
      const { status, json } = await ask<{ message: string }>(url + path, { headers: { host } });
      expect(status).toBe(403);
      expect(json).toMatchObject({ code: 'host-not-allowed' });
      expect(json.message).toContain(host);
    }
  });

  it.each(['127.0.0.1:9', 'localhost', 'localhost:4780', '[::1]:4780', '127.3.2.1'])(
    'answers a request made to %s',
    async (host) => {
      const { url } = await runServer();
      expect((await ask(`${url}/health`, { headers: { host } })).status).toBe(200);
    },
  );

  it.each<[string, Record<string, string>]>([
    ['another site', { origin: 'https://evil.example' }],
    ['another port of this computer', { origin: 'http://127.0.0.1:1' }],
    ['a page without an origin of its own', { origin: 'null' }],
    ['our name over another scheme', { origin: 'https://HOST' }],
    ['another site, by picture or script', { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' }],
    ['another port, by picture or script', { 'sec-fetch-site': 'same-site', 'sec-fetch-mode': 'no-cors' }],
    [
      'another site, in a frame',
      { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'iframe' },
    ],
  ])('refuses the page of %s, and stores nothing', async (_, headers) => {
    const { url } = await runServer();
    const own = Object.fromEntries(
      Object.entries(headers).map(([name, value]) => [name, value.replace('HOST', new URL(url).host)]),
    );
    const got = await ask(`${url}/jobs`, { headers: own });
    expect(got.status).toBe(403);
    expect(got.json).toMatchObject({ code: 'origin-not-allowed' });
    const posted = await ask(`${url}/jobs`, {
      method: 'POST',
      headers: { ...own, 'content-type': 'application/json' },
      body: JSON.stringify({ title: 'x', by: 'Mallory' }),
    });
    expect(posted.status).toBe(403);
    expect((await ask<{ jobs: unknown[] }>(`${url}/jobs`)).json.jobs).toEqual([]);
  });

  it('lets its own page through, programs, and a link that is followed to it', async () => {
    const { url } = await runServer();
    const own = { origin: url, 'sec-fetch-site': 'same-origin' };
    expect((await ask(`${url}/jobs`, { headers: own })).status).toBe(200);
    expect((await ask(`${url}/jobs`)).status).toBe(200);
    const link = {
      'sec-fetch-site': 'cross-site',
      'sec-fetch-mode': 'navigate',
      'sec-fetch-dest': 'document',
    };
    expect((await ask(`${url}/jobs`, { headers: link })).status).toBe(200);
    const form = await ask(`${url}/jobs`, { method: 'POST', headers: link });
    expect(form.status).toBe(403);
  });

  it('gives no other site leave to read its answers', async () => {
    const { url } = await runServer();
    const preflight = await ask(`${url}/jobs`, {
      method: 'OPTIONS',
      headers: { origin: 'https://evil.example', 'access-control-request-method': 'POST' },
    });
    expect(preflight.status).toBe(403);
    expect(preflight.headers['access-control-allow-origin']).toBeUndefined();
  });
});

describe('what is not there', () => {
  it.each([
    ['GET', '/nothing'],
    ['GET', '/jobs/'],
    ['POST', '/nothing'],
    ['DELETE', '/admin'],
    ['GET', `/jobs/${jobId}/secrets`],
    ['GET', '/..%2f..%2fpackage.json'],
    ['GET', '/assets/../../package.json'],
    ['GET', '//etc/passwd'],
    ['GET', '/%00'],
  ])('is refused in JSON: %s %s', async (method, path) => {
    const { url } = await runServer();
    const { status, json, headers } = await ask(url + path, { method });
    expect(status).toBe(404);
    expect(json).toMatchObject({ code: 'route-not-found' });
    expect(headers['content-type']).toContain('application/json');
  });

  it.each([
    ['PUT', '/jobs', 'GET, HEAD, POST'],
    ['DELETE', `/jobs/${jobId}`, 'GET, HEAD'],
    ['PATCH', `/jobs/${jobId}/entries`, 'GET, HEAD, POST'],
  ])('a method that is not: %s %s says which are', async (method, path, allowed) => {
    const { url } = await runServer();
    const { status, json, headers } = await ask(url + path, { method });
    expect(status).toBe(405);
    expect(json).toMatchObject({ code: 'method-not-allowed' });
    expect(headers.allow).toBe(allowed);
  });
});

describe('a body that cannot be read', () => {
  it.each<[string, string, number, string]>([
    ['{"title":', 'application/json', 400, 'request-not-understood'],
    ['', 'application/json', 400, 'request-not-understood'],
    ['[]', 'application/json', 400, 'request-not-understood'],
    ['{"title":"","by":"Ada"}', 'application/json', 400, 'request-not-understood'],
    ['{"title":"x"}', 'application/json', 400, 'request-not-understood'],
    ['{"title":"x","by":"Ada"}', 'text/plain', 415, 'type-not-supported'],
    ['title=x', 'application/x-www-form-urlencoded', 415, 'type-not-supported'],
  ])('%j as %s is refused in one sentence', async (body, type, status, code) => {
    const { url, faults } = await runServer();
    const answer = await ask<{ code: string; message: string }>(`${url}/jobs`, {
      method: 'POST',
      headers: { 'content-type': type },
      body,
    });
    expect([answer.status, answer.json.code]).toEqual([status, code]);
    expect(answer.json.message).toMatch(/^Cannot [^\n]+\.$/);
    expect(faults).toEqual([]);
  });

  it('of a piano that cannot be is refused, and no job is opened', async () => {
    const { url } = await runServer();
    const piano = { form: 'grand', firstKey: 88, lastKey: 1, referencePitch_hz: 440 };
    const answer = await postJson<{ message: string }>(`${url}/jobs`, { title: 'x', by: 'Ada', piano });
    expect(answer.status).toBe(400);
    expect(answer.json.message).toContain('first key below its last key');
    expect((await ask<{ jobs: unknown[] }>(`${url}/jobs`)).json.jobs).toEqual([]);
  });
});

/** Writes pieces until the other side has had enough; gives back how many bytes were handed over. */
function pour(request: ClientRequest, pieces: number, piece: Buffer): { sent: number } {
  const count = { sent: 0 };
  let left = pieces;
  const more = () => {
    while (left > 0 && !request.destroyed) {
      left -= 1;
      count.sent += piece.length;
      if (!request.write(piece)) {
        request.once('drain', more);
        return;
      }
    }
    request.end();
  };
  more();
  return count;
}

describe('a body that is too large', () => {
  it('is refused by its announced length, before any of it came', async () => {
    const { url } = await runServer();
    const answer = await ask<{ message: string }>(`${url}/jobs/${jobId}/imports`, {
      method: 'POST',
      headers: { 'content-type': 'multipart/form-data; boundary=x', 'content-length': '52428800' },
      // Not one byte of the body is sent.
      send: (request) => request.flushHeaders(),
    });
    expect(answer.status).toBe(413);
    expect(answer.json).toMatchObject({ code: 'too-large' });
    expect(answer.json.message).toMatch(/at most 22 MB are taken, 52\.4 MB came\. Export only the sheet/);
  });

  it.each([
    ['entries', limits.entriesBytes],
    ['imports', limits.tableBytes],
  ])('is refused when it passes the limit of %s unannounced, long before its end', async (route, limit) => {
    const { url } = await runServer();
    const piece = Buffer.alloc(64 * 1024, 0x20);
    let poured = { sent: 0 };
    const answer = await ask<{ message: string }>(`${url}/jobs/${jobId}/${route}`, {
      method: 'POST',
      headers: {
        'content-type': route === 'entries' ? 'application/json' : 'multipart/form-data; boundary=x',
        'transfer-encoding': 'chunked',
      },
      send: (request) => {
        request.on('error', () => {});
        poured = pour(request, 3200, piece);
      },
    });
    expect(answer.status).toBe(413);
    expect(answer.json).toMatchObject({ code: 'too-large' });
    expect(poured.sent).toBeGreaterThan(limit);
    expect(poured.sent).toBeLessThan((3200 * piece.length) / 2);
    expect((await ask(`${url}/health`)).status).toBe(200);
  });

  it('of a new job is refused', async () => {
    const { url } = await runServer();
    const answer = await postJson(`${url}/jobs`, { title: 'x'.repeat(limits.jsonBytes), by: 'Ada' });
    expect(answer.status).toBe(413);
  });
});

describe('what a browser is told', () => {
  it('stands on every answer, a refusal too', async () => {
    const { url } = await runServer();
    for (const path of ['/jobs', '/nothing', '/openapi.json']) {
      const { headers } = await ask(url + path);
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['content-security-policy']).toContain("default-src 'self'");
      expect(headers['content-security-policy']).not.toContain('script-src');
      expect(headers['cross-origin-resource-policy']).toBe('same-origin');
      expect(headers['referrer-policy']).toBe('same-origin');
      expect(headers['cache-control']).toBe('no-store');
      expect(headers['x-powered-by']).toBeUndefined();
    }
  });
});

describe('a fault of the program', () => {
  it('is written to the log in full and told in general', async () => {
    const server = await runServer({
      store: {
        blobs: createMemoryStore().blobs,
        jobs: async () => {
          throw new TypeError('secret inner words');
        },
        entries: async () => ({ entries: [], cursor: '0' }),
        append: async () => ({ added: 0, known: 0 }),
        close: async () => {},
      },
    });
    const answer = await ask(`${server.url}/jobs`);
    expect(answer.status).toBe(500);
    expect(answer.json).toMatchObject({ code: 'internal' });
    expect(answer.text).not.toContain('secret');
    expect(server.faults).toHaveLength(1);
  });
});
