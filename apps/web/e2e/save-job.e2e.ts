import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import { jpegWith } from '../../../packages/journal/src/testing/tiny-jpeg.ts';
import { type BecketServer, expect, test } from './server.ts';

// Forty photos of 2 MB go to the server, to the device and into a file.
test.setTimeout(300_000);

const photoCount = 40;

/** A JPEG of some 2 MB: noise, which cannot be made smaller. */
async function noisyPhoto(page: Page): Promise<Uint8Array> {
  const text = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2000, 1500);
    const drawing = canvas.getContext('2d')!;
    const picture = drawing.createImageData(2000, 1500);
    let state = 1;
    for (let at = 0; at < picture.data.length; at += 1) {
      state = (state * 1664525 + 1013904223) >>> 0;
      picture.data[at] = at % 4 === 3 ? 255 : state >>> 24;
    }
    drawing.putImageData(picture, 0, 0);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
    const bytes = new Uint8Array(await blob.arrayBuffer());
    let binary = '';
    for (let at = 0; at < bytes.length; at += 8192)
      binary += String.fromCharCode(...bytes.subarray(at, at + 8192));
    return btoa(binary);
  });
  return new Uint8Array(Buffer.from(text, 'base64'));
}

/** Puts a job with forty photos of 2 MB on the server, as another device would; gives back their digests. */
async function largeJobOn(server: BecketServer, page: Page, job: string): Promise<string[]> {
  const base = await noisyPhoto(page);
  expect(base.length).toBeGreaterThan(1_900_000);
  const facts: object[] = [{ kind: 'job-opened', v: 1, title: 'A job with many photos' }];
  const digests: string[] = [];
  for (let number = 0; number < photoCount; number += 1) {
    // A colour profile of its own makes each of them another file.
    const bytes = Buffer.from(jpegWith([{ marker: 0xe2, content: Uint8Array.of(number) }], base));
    const digest = createHash('sha256').update(bytes).digest('hex');
    const answer = await page.request.put(`${server.url}/blobs/${digest}`, {
      data: bytes,
      headers: { 'content-type': 'image/jpeg' },
    });
    expect(answer.ok()).toBe(true);
    digests.push(digest);
    facts.push({
      kind: 'photo',
      v: 1,
      digest,
      mediaType: 'image/jpeg',
      bytes: bytes.length,
      width: 2000,
      height: 1500,
      place: {},
      shows: `noise ${number}`,
      marks: [],
    });
  }
  const entries = facts.map((fact, index) => ({
    id: `01SAVE${String(index).padStart(20, '0')}`,
    job,
    step: index + 1,
    at: '2026-03-01T10:00:00.000Z',
    by: 'Ada',
    device: 'bench tablet',
    fact,
  }));
  const answer = await page.request.post(`${server.url}/jobs/${job}/entries`, { data: { entries } });
  expect(answer.ok()).toBe(true);
  return digests;
}

test('a job with forty photos of 2 MB is saved while the page goes on, and can be stopped', async ({
  page,
  server,
}) => {
  const job = '01SAVEJ0B00000000000000000';
  await page.goto(server.url);
  const digests = await largeJobOn(server, page, job);
  await page.goto(`${server.url}/#/job/${job}/hand-over`);
  const save = page.getByRole('button', { name: 'Save the job as a file' });
  const stop = page.getByRole('button', { name: 'Stop saving' });
  await expect(save).toBeVisible();
  // All forty have to be here before they can be saved.
  await expect
    .poll(
      () =>
        page.evaluate(
          () =>
            new Promise<number>((done, failed) => {
              const opening = indexedDB.open('becket');
              opening.onerror = () => failed(opening.error);
              opening.onsuccess = () => {
                const counting = opening.result.transaction('blobs').objectStore('blobs').count();
                counting.onsuccess = () => {
                  opening.result.close();
                  done(counting.result);
                };
              };
            }),
        ),
      { timeout: 120_000 },
    )
    .toBe(photoCount);

  await test.step('stopped in the middle: no file, and the job as it was', async () => {
    let downloads = 0;
    page.on('download', () => {
      downloads += 1;
    });
    await save.click();
    await expect(page.getByText(/^Reading photo \d+ of 40/)).toBeVisible();
    await expect(page.getByRole('progressbar', { name: /^Reading photo/ })).toBeVisible();
    await stop.click();
    await expect(page.getByText(/^Stopped: no file was saved/)).toBeVisible();
    await expect(stop).toBeHidden();
    expect(downloads).toBe(0);
  });

  await test.step('saved: the page draws meanwhile, other screens can be looked at, and every photo is in the file', async () => {
    await page.evaluate(() => {
      const watched = { longTasks: [] as number[], whileReading: 0 };
      Object.assign(globalThis, { watched });
      new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) watched.longTasks.push(duration);
      }).observe({ type: 'longtask' });
      const count = () => {
        if (document.querySelector('progress') !== null) watched.whileReading += 1;
        requestAnimationFrame(count);
      };
      requestAnimationFrame(count);
    });
    const downloading = page.waitForEvent('download');
    await save.click();
    await expect(page.getByText(/^Reading photo ([5-9]|\d\d) of 40/)).toBeVisible();
    await page.getByRole('link', { name: 'Record', exact: true }).click();
    await expect(save).toBeHidden();
    await page.goBack();
    await expect(stop).toBeVisible();
    const download = await downloading;
    await expect(
      page.getByText('A-job-with-many-photos.zip is among your downloads: 41 entries and 40 photos.'),
    ).toBeVisible();
    const { longTasks, whileReading } = await page.evaluate(
      () => (globalThis as unknown as { watched: { longTasks: number[]; whileReading: number } }).watched,
    );
    // A page that stands still draws nothing.
    expect(whileReading).toBeGreaterThan(5);
    test.info().annotations.push({
      type: 'longest task of the page [ms]',
      description: String(Math.max(0, ...longTasks)),
    });
    const files = unzipSync(new Uint8Array(readFileSync(await download.path())));
    expect(Object.keys(files).sort()).toEqual(
      ['journal.jsonl', ...digests.map((digest) => `photos/${digest}.jpg`)].sort(),
    );
    for (const digest of digests)
      expect(createHash('sha256').update(files[`photos/${digest}.jpg`]!).digest('hex')).toBe(digest);
  });
});
