import { createHash, randomBytes } from 'node:crypto';
import { largestBlob_bytes } from '@becket/store';
import Sqlite from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { jpegWith, tinyJpeg } from '../../../packages/journal/src/testing/tiny-jpeg.ts';
import { type Answer, ask, postJson, runServer } from './testing/running-server.ts';

const digestOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const digest = digestOf(tinyJpeg);
const put = (url: string, name: string, body: Uint8Array, type = 'image/jpeg') =>
  ask<{ code: string; message: string; details?: Record<string, unknown> }>(`${url}/blobs/${name}`, {
    method: 'PUT',
    headers: { 'content-type': type, 'content-length': String(body.length) },
    body,
  });
const refusal = ({ status, json }: Answer<{ code: string; message: string }>) => {
  expect(json.message.split('\n')).toHaveLength(1);
  return `${status} ${json.code}`;
};

describe('photos over HTTP', () => {
  it('come back byte for byte, to be kept for good, as the picture they are', async () => {
    const { url, faults } = await runServer();
    const missing = () => postJson<{ missing: string[] }>(`${url}/blobs/missing`, { digests: [digest] });
    expect((await missing()).json).toEqual({ missing: [digest] });
    for (let time = 0; time < 2; time += 1) {
      const kept = await put(url, digest, tinyJpeg);
      expect([kept.status, kept.json]).toEqual([200, { digest, bytes: tinyJpeg.length }]);
    }
    expect((await missing()).json).toEqual({ missing: [] });
    const answer = await fetch(`${url}/blobs/${digest}`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('image/jpeg');
    expect(answer.headers.get('cache-control')).toBe('private, max-age=31536000, immutable');
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect(new Uint8Array(await answer.arrayBuffer())).toEqual(tinyJpeg);
    expect(faults).toEqual([]);
  });

  it('are there after the server was stopped and started again', async () => {
    const first = await runServer();
    await put(first.url, digest, tinyJpeg);
    await first.stop();
    const second = await runServer({ file: first.file });
    const answer = await fetch(`${second.url}/blobs/${digest}`);
    expect(new Uint8Array(await answer.arrayBuffer())).toEqual(tinyJpeg);
  });

  it('are what the bytes are, whatever the header says', async () => {
    const { url } = await runServer();
    expect((await put(url, digest, tinyJpeg, 'text/html')).status).toBe(200);
    expect((await fetch(`${url}/blobs/${digest}`)).headers.get('content-type')).toBe('image/jpeg');
    const page = new TextEncoder().encode('<script>alert(1)</script>');
    expect(refusal(await put(url, digestOf(page), page))).toBe('415 type-not-supported');
    expect(refusal(await put(url, digestOf(new Uint8Array()), new Uint8Array()))).toBe(
      '415 type-not-supported',
    );
  });

  it('are refused when they were changed or cut off on the way, and nothing is kept', async () => {
    const { url } = await runServer();
    const changed = tinyJpeg.map((byte, index) => (index === 300 ? byte ^ 1 : byte));
    for (const bytes of [changed, tinyJpeg.subarray(0, -20)]) {
      const answer = await put(url, digest, bytes);
      expect(refusal(answer)).toBe('422 digest-differs');
      expect(answer.json.details).toEqual({ found: digestOf(bytes) });
    }
    const answer = await ask<{ code: string; message: string }>(`${url}/blobs/${digest}`);
    expect(refusal(answer)).toBe('404 blob-not-found');
    expect(answer.headers['cache-control']).toBe('no-store');
  });

  it('are taken up to the limit of the store, and refused above it', async () => {
    const { url } = await runServer();
    const ofLength = (length: number) => {
      const bytes = new Uint8Array(length);
      bytes.set(tinyJpeg);
      return bytes;
    };
    const largest = ofLength(largestBlob_bytes);
    expect((await put(url, digestOf(largest), largest)).status).toBe(200);
    // Announced and not sent: the server does not wait for it.
    const answer = await ask<{ code: string; message: string }>(`${url}/blobs/${digest}`, {
      method: 'PUT',
      headers: { 'content-type': 'image/jpeg', 'content-length': String(largestBlob_bytes + 1) },
      send: (request) => request.flushHeaders(),
    });
    expect(refusal(answer)).toBe('413 too-large');
  });

  it.each(['abc', 'A'.repeat(64), `${'a'.repeat(63)}g`])(
    'of the name %s are not understood',
    async (name) => {
      const { url } = await runServer();
      expect(refusal(await put(url, name, tinyJpeg))).toBe('400 request-not-understood');
    },
  );

  it('that were damaged on the disk are said to be, and mended when they are sent again', async () => {
    const { url, file } = await runServer();
    await put(url, digest, tinyJpeg);
    const database = new Sqlite(file);
    database.prepare('update blobs set bytes = ?').run(randomBytes(50));
    database.close();
    const answer = await ask<{ code: string; message: string }>(`${url}/blobs/${digest}`);
    expect(refusal(answer)).toBe('503 store-unavailable');
    expect(answer.json.message).toContain('damaged');
    await put(url, digest, tinyJpeg);
    expect((await fetch(`${url}/blobs/${digest}`)).status).toBe(200);
  });

  it('are kept each for itself when many are sent at once', async () => {
    const { url } = await runServer();
    const photos = Array.from({ length: 20 }, (_, index) =>
      jpegWith([{ marker: 0xfe, content: Uint8Array.of(index) }]),
    );
    const answers = await Promise.all(photos.map((bytes) => put(url, digestOf(bytes), bytes)));
    expect(new Set(answers.map(({ status }) => status))).toEqual(new Set([200]));
    const digests = photos.map(digestOf);
    const found = await postJson<{ missing: string[] }>(`${url}/blobs/missing`, {
      digests: [...digests, digest],
    });
    expect(found.json.missing).toEqual([digest]);
  });
});
