import { errorCodes, limits } from '@becket/contract';
import { type Entry, foldJob } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { openSqliteStore } from '@becket/store/sqlite';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ask,
  events,
  jobId,
  postJson,
  runServer,
  textOf,
  wireEntries,
  wireEntry,
} from './testing/running-server.ts';

interface Page {
  entries: Entry[];
  cursor: string;
}

const entriesOf = (url: string, job = jobId) => `${url}/jobs/${job}/entries`;
const readAll = async (url: string, after?: string) =>
  (await ask<Page>(`${entriesOf(url)}${after === undefined ? '' : `?after=${encodeURIComponent(after)}`}`))
    .json;

describe('entries over HTTP', () => {
  it('are added once, however often and in whatever parts they are sent', async () => {
    const { url } = await runServer();
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat({ max: 40 }), fc.nat({ max: 9 })), { maxLength: 6 }),
        async (parts) => {
          for (const [first, count] of parts) {
            const batch = wireEntries(first, count);
            const { status, json } = await postJson<{ added: number; known: number }>(entriesOf(url), {
              entries: batch,
            });
            expect(status).toBe(200);
            expect(json.added + json.known).toBe(count);
            expect((await postJson(entriesOf(url), { entries: batch })).json).toEqual({
              added: 0,
              known: count,
            });
          }
          const ids = (await readAll(url)).entries.map(({ id }) => id);
          expect(new Set(ids).size).toBe(ids.length);
        },
      ),
      { numRuns: 10 },
    );
  });

  it('come back as they were sent, unknown kinds among them, and go on from the cursor', async () => {
    const { url } = await runServer();
    const strange = { ...wireEntry(1), fact: { kind: 'holograph', v: 3, deep: [{ a: null }, 'ü'] } };
    await postJson(entriesOf(url), { entries: [wireEntry(0), strange] });
    const { entries, cursor } = await readAll(url);
    expect(entries).toEqual([wireEntry(0), strange]);
    await postJson(entriesOf(url), { entries: wireEntries(2, 3) });
    expect((await readAll(url, cursor)).entries).toEqual(wireEntries(2, 3));
  });

  it('of a job nobody has heard of are an empty list; its state is not there', async () => {
    const { url } = await runServer();
    expect(await readAll(url)).toEqual({ entries: [], cursor: '0' });
    const answer = await ask(`${url}/jobs/${jobId}`);
    expect(answer.status).toBe(404);
    expect(answer.json).toMatchObject({ code: 'job-not-found' });
  });

  it('are all refused when one is wrong, with its number, its field and what is needed', async () => {
    const { url } = await runServer();
    const wrong = { ...wireEntry(2), fact: { ...wireEntry(2).fact, place: { key: 140 } } };
    const { status, json } = await postJson<{ message: string }>(entriesOf(url), {
      entries: [wireEntry(0), wireEntry(1), wrong],
    });
    expect(status).toBe(400);
    expect(json).toMatchObject({ code: 'entry-not-understood', details: { index: 2 } });
    expect(json.message).toMatch(/^Entry 3 of 3 .*place\.key.*Nothing of the batch was added\.$/);
    expect((await readAll(url)).entries).toEqual([]);
  });

  it.each([
    [null],
    ['text'],
    [7],
    [{}],
    [{ ...wireEntry(1), id: 'short' }],
    [{ ...wireEntry(1), step: 0.5 }],
  ])('are refused when one is %j', async (wrong) => {
    const { url } = await runServer();
    const answer = await postJson(entriesOf(url), { entries: [wireEntry(0), wrong] });
    expect(answer.status).toBe(400);
    expect(answer.json).toMatchObject({ code: 'entry-not-understood' });
    expect((await readAll(url)).entries).toEqual([]);
  });

  it('are refused when they belong to another job or were known with other content', async () => {
    const { url } = await runServer();
    const other = wireEntry(5, '01J0000000000000000000000B');
    expect((await postJson(entriesOf(url), { entries: [wireEntry(0), other] })).json).toMatchObject({
      code: 'entry-of-another-job',
      details: { index: 1 },
    });
    await postJson(entriesOf(url), { entries: [wireEntry(0)] });
    const changed = await postJson(entriesOf(url), {
      entries: [wireEntry(1), { ...wireEntry(0), by: 'Bo' }],
    });
    expect(changed.status).toBe(409);
    expect(changed.json).toMatchObject({ code: 'entry-changed', details: { entry: wireEntry(0).id } });
    expect((await readAll(url)).entries).toEqual([wireEntry(0)]);
  });

  it('are refused with a cursor the store did not give', async () => {
    const { url } = await runServer();
    const answer = await ask(`${entriesOf(url)}?after=12`);
    expect(answer.status).toBe(errorCodes['cursor-not-known'].status);
    expect(answer.json).toMatchObject({ code: 'cursor-not-known', details: { cursor: '12' } });
  });

  it(`are refused above ${limits.entriesInBatch} in a batch, with the limit, and taken at the limit`, async () => {
    const { url } = await runServer();
    const batch = wireEntries(0, limits.entriesInBatch + 1);
    const refused = await postJson<{ message: string }>(entriesOf(url), { entries: batch });
    expect(refused.status).toBe(413);
    expect(refused.json).toMatchObject({ code: 'too-large', details: { limit: limits.entriesInBatch } });
    expect(refused.json.message).toContain(String(batch.length));
    const taken = await postJson(entriesOf(url), { entries: batch.slice(1) });
    expect(taken.json).toEqual({ added: limits.entriesInBatch, known: 0 });
  });

  it('are all there when the server is stopped and started again', async () => {
    const first = await runServer();
    await postJson(entriesOf(first.url), { entries: wireEntries(0, 50) });
    const before = await readAll(first.url);
    await first.stop();
    const second = await runServer({ file: first.file });
    expect(await readAll(second.url)).toEqual(before);
    expect((await readAll(second.url, before.cursor)).entries).toEqual([]);
    const jobs = await ask<{ jobs: unknown[] }>(`${second.url}/jobs`);
    expect(jobs.json.jobs).toMatchObject([{ job: jobId, title: 'a job', entries: 50, isSealed: false }]);
  });
});

/** A device as the web app is one: a store of its own, that sends what is its own and reads what is new. */
class Device {
  readonly store = createMemoryStore();
  cursor: string | undefined;
  readonly #url: string;
  constructor(url: string) {
    this.#url = url;
  }
  async write(entries: readonly Entry[]): Promise<void> {
    await this.store.append(entries);
    await postJson(entriesOf(this.#url), { entries });
  }
  async read(): Promise<void> {
    const { entries, cursor } = await readAll(this.#url, this.cursor);
    await this.store.append(entries);
    this.cursor = cursor;
  }
  async state() {
    const job = foldJob((await this.store.entries(jobId)).entries);
    return { ...job, unisons: [...job.unisons], instruments: [...job.instruments] };
  }
}

describe('two devices', () => {
  it('come to the same state through the entries and the stream of events', async () => {
    const { url } = await runServer();
    const [ada, bo] = [new Device(url), new Device(url)];
    const leaving = new AbortController();
    const follow = async (device: Device, until: number) => {
      for await (const { event } of events(`${url}/jobs/${jobId}/events`, leaving.signal)) {
        expect(event).toBe('entries');
        await device.read();
        if ((await device.store.entries(jobId)).entries.length === until) return;
      }
    };
    const following = [follow(ada, 31), follow(bo, 31)];
    await ada.write([wireEntry(0)]);
    const writeAll = async (device: Device, first: number) => {
      for (let part = 0; part < 5; part += 1) await device.write(wireEntries(first + part * 3, 3));
    };
    await Promise.all([writeAll(ada, 1), writeAll(bo, 100)]);
    await Promise.all(following);
    leaving.abort();
    expect(await ada.state()).toEqual(await bo.state());
    expect((await ada.state()).entryCount).toBe(31);
  });
});

describe('the stream of events', () => {
  it('begins with the cursor as it stands, so that nothing falls between reading and watching', async () => {
    const { url } = await runServer();
    await postJson(entriesOf(url), { entries: wireEntries(0, 3) });
    const { cursor } = await readAll(url);
    for await (const { data } of events(`${url}/jobs/${jobId}/events`)) {
      expect(JSON.parse(data)).toEqual({ cursor });
      break;
    }
  });

  it('tells of entries that another program wrote into the same store', async () => {
    const { url, file } = await runServer();
    const other = await openSqliteStore(file);
    let seen = 0;
    for await (const { data } of events(`${url}/jobs/${jobId}/events`)) {
      seen += 1;
      if (seen === 1) await other.append(wireEntries(0, 2));
      else {
        expect(JSON.parse(data).cursor).toBe((await readAll(url)).cursor);
        break;
      }
    }
    await other.close();
  });

  it('is kept open by lines that mean nothing', async () => {
    const { url } = await runServer({ heartbeat_ms: 10 });
    const leaving = new AbortController();
    const response = await fetch(`${url}/jobs/${jobId}/events`, { signal: leaving.signal });
    expect(response.headers.get('content-type')).toBe('text/event-stream');
    let text = '';
    for await (const part of textOf(response)) {
      text += part;
      if ((text.match(/^: here$/gm) ?? []).length >= 3) break;
    }
    leaving.abort();
  });

  it('ends when the server is stopped, and does not hold the stop up', async () => {
    const server = await runServer();
    const messages = [];
    for await (const message of events(`${server.url}/jobs/${jobId}/events`)) {
      messages.push(message);
      void server.stop();
    }
    expect(messages).toHaveLength(1);
    await server.stop();
    await expect(ask(`${server.url}/health`)).rejects.toThrow();
  });
});
