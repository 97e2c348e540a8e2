import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import { readJournalLines } from '../../../packages/journal/src/index.ts';
import { fieldOf, gridCell, holds } from './grid-field.ts';
import { type BecketServer, expect, test } from './server.ts';

/** A device of its own: a browser that knows nothing of the others, with the demo job open. */
async function deviceWith(page: Page, server: BecketServer, name: string): Promise<void> {
  await page.goto(server.url);
  await page.getByLabel('Your name').fill(name);
  await page.getByRole('button', { name: 'Keep the name' }).click();
  // The screens are kept on the device before the network goes.
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
}

async function type(page: Page, name: string, value: string): Promise<void> {
  await (await fieldOf(page, name)).fill(value);
  await gridCell(page, name).press('Enter');
  // What is read back may still be the value before.
  await expect(page.locator('.read-back-words')).toContainText(`Kept: ${name}`);
}

/** A picture in one colour, made on the device as a camera would; the same colour gives the same picture. */
async function takePhoto(page: Page, colour: string): Promise<void> {
  const bytes = await page.evaluate(async (fill) => {
    const canvas = new OffscreenCanvas(640, 480);
    const drawing = canvas.getContext('2d')!;
    drawing.fillStyle = fill;
    drawing.fillRect(0, 0, 640, 480);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  }, colour);
  await page.getByRole('link', { name: 'Photos', exact: true }).click();
  await page.getByLabel('What it shows').fill(`something ${colour}`);
  await page
    .getByLabel('Choose photos')
    .setInputFiles({ name: `${colour}.jpg`, mimeType: 'image/jpeg', buffer: Buffer.from(bytes) });
  await expect(page.getByText(/photos? (is|are) kept on this device/)).toBeVisible();
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  await expect(gridCell(page, 'A3 wire diameter')).toBeVisible();
}

async function photosShown(page: Page): Promise<string[]> {
  await page.getByRole('link', { name: 'Photos', exact: true }).click();
  const list = page.getByRole('list', { name: 'Photos of this job' });
  await expect(list.getByRole('link')).toHaveCount(2, { timeout: 60_000 });
  // Drawn from the bytes on this device, not only named by the journal.
  for (const picture of await list.getByRole('img').all())
    await expect
      .poll(() => picture.evaluate((image: HTMLImageElement) => image.naturalWidth))
      .toBeGreaterThan(0);
  const names = await list.getByRole('link').allInnerTexts();
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  return names.map((name) => /something \w+/.exec(name)?.[0] ?? name).sort();
}

async function entriesOnServer(
  page: Page,
  server: BecketServer,
): Promise<{ id: string; fact: { kind: string; digest?: string } }[]> {
  const { jobs } = await (await page.request.get(`${server.url}/jobs`)).json();
  const { entries } = await (await page.request.get(`${server.url}/jobs/${jobs[0].job}/entries`)).json();
  return entries;
}

test('two devices work on one job without a server, and converge when it is back; nothing is lost', async ({
  browser,
  page,
  server,
}) => {
  await deviceWith(page, server, 'Ada');
  await page.getByRole('button', { name: 'Open the demo job' }).click();
  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();

  const otherContext: BrowserContext = await browser.newContext({ viewport: { width: 820, height: 1180 } });
  const other = await otherContext.newPage();
  await deviceWith(other, server, 'Bo');
  await other.getByRole('link', { name: /invented grand/i }).click();
  await expect(gridCell(other, 'A3 wire diameter')).toBeVisible();
  const before = (await entriesOnServer(page, server)).length;

  await test.step('the server is gone: both go on, each is told what only it has', async () => {
    await server.stop('SIGKILL');
    await type(page, 'A3 wire diameter', '1.012');
    await type(other, 'G5 wire diameter', '0.903');
    await type(other, 'A3 wire diameter', '1.009');
    await takePhoto(page, 'red');
    await takePhoto(other, 'blue');
    await expect(page.getByRole('button', { name: '2 entries only here' })).toBeVisible();
    await expect(other.getByRole('button', { name: '3 entries only here' })).toBeVisible();
  });

  await test.step('a reload without the server, in the middle of typing, keeps what was kept', async () => {
    await (await fieldOf(page, 'G#5 wire diameter')).fill('0.9');
    await page.reload();
    await expect(page.getByRole('heading', { name: /invented grand/i })).toBeVisible();
    await holds(page, 'A3 wire diameter', '1.012');
    await holds(page, 'G5 wire diameter', '');
    await expect(page.getByRole('button', { name: '2 entries only here' })).toBeVisible();
  });

  await test.step('the server is back: both have both', async () => {
    await server.start();
    for (const device of [page, other]) {
      await expect(device.getByRole('button', { name: 'All sent' })).toBeVisible({ timeout: 60_000 });
    }
    await holds(page, 'G5 wire diameter', '0.903', { timeout: 60_000 });
    const after = await entriesOnServer(page, server);
    expect(after.length).toBe(before + 5);
    expect(new Set(after.map(({ id }) => id)).size).toBe(after.length);
    for (const device of [page, other])
      expect(await photosShown(device)).toEqual(['something blue', 'something red']);
    for (const { fact } of after.filter((entry) => entry.fact.kind === 'photo'))
      expect((await page.request.get(`${server.url}/blobs/${fact.digest}`)).ok()).toBe(true);
  });

  await test.step('undo is a withdrawal, and reaches the other device', async () => {
    await type(other, 'G#6 wire diameter', '0.84');
    await holds(page, 'G#6 wire diameter', '0.84', { timeout: 60_000 });
    await other.getByRole('button', { name: /^Undo/ }).click();
    await holds(other, 'G#6 wire diameter', '');
    await holds(page, 'G#6 wire diameter', '', { timeout: 60_000 });
  });
  await otherContext.close();
});

test('a page that is killed in the middle of typing has lost no reading that was kept', async ({
  context,
  server,
}) => {
  const page = await context.newPage();
  await deviceWith(page, server, 'Ada');
  await page.getByRole('button', { name: 'Open the demo job' }).click();
  await type(page, 'A3 wire diameter', '1.011');
  await (await fieldOf(page, 'G5 wire diameter')).pressSequentially('0.9');
  await page.close({ runBeforeUnload: false });

  const again = await context.newPage();
  await again.goto(server.url);
  await again.getByRole('link', { name: /invented grand/i }).click();
  await holds(again, 'A3 wire diameter', '1.011');
  await holds(again, 'G5 wire diameter', '');
  // What was typed and not entered is gone, as the page says beforehand.
  await expect(
    again.getByText('A value is kept once you leave its cell; what is half typed in it is not.'),
  ).toBeVisible();
});

/** Asks the browser to keep 20 MB beside the program's own data; how it was refused. */
async function keepSomethingLarge(): Promise<string> {
  const database = await new Promise<IDBDatabase>((done, failed) => {
    const opening = indexedDB.open('something else', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('kept', { autoIncrement: true });
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  return new Promise((done) => {
    const transaction = database.transaction('kept', 'readwrite');
    transaction.objectStore('kept').add(new Uint8Array(70_000_000).map(() => Math.random() * 256));
    transaction.oncomplete = () => done('kept');
    transaction.onabort = () => {
      database.close();
      done(transaction.error?.name ?? 'aborted');
    };
  });
}

test('a device without room says so in one sentence, keeps nothing by halves, and the job can be taken off it', async ({
  page,
  server,
}) => {
  // The browser's own refusal, not a pretended one. The room is made small before anything is kept, and taken away once
  // the job is there; the browser looks at how much is left only when something large asks for it.
  const client = await page.context().newCDPSession(page);
  const leaveRoom = (quotaSize?: number) =>
    client.send('Storage.overrideQuotaForOrigin', {
      origin: server.url,
      ...(quotaSize === undefined ? {} : { quotaSize }),
    });
  // Room for the program itself, papers and their type included, and for one job.
  await leaveRoom(60_000_000);
  await deviceWith(page, server, 'Ada');
  await page.getByRole('button', { name: 'Open the demo job' }).click();
  await type(page, 'A3 wire diameter', '1.011');
  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  const before = await entriesOnServer(page, server);
  await leaveRoom(1);
  expect(await page.evaluate(keepSomethingLarge)).toBe('QuotaExceededError');

  await (await fieldOf(page, 'G5 wire diameter')).fill('0.903');
  await gridCell(page, 'G5 wire diameter').press('Enter');
  // Said once for the page, and once beside the cell.
  const full = page
    .getByText(/Cannot keep this on the device: its storage is full\. Nothing was changed/)
    .first();
  await expect(full).toBeVisible();
  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();

  await page.getByRole('link', { name: 'Hand over' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the job as a file' }).click(),
  ]);
  const files = unzipSync(new Uint8Array(readFileSync(await download.path())));
  const { entries, unread } = readJournalLines(new TextDecoder().decode(files['journal.jsonl']));
  expect(unread).toEqual([]);
  expect(new Set(entries.map(({ id }) => id))).toEqual(new Set(before.map(({ id }) => id)));

  await page.getByRole('link', { name: 'Record', exact: true }).click();
  await page.reload();
  await holds(page, 'A3 wire diameter', '1.011');
  await holds(page, 'G5 wire diameter', '');
  expect(await entriesOnServer(page, server)).toHaveLength(before.length);

  await leaveRoom();
  await type(page, 'G5 wire diameter', '0.903');
  await page.reload();
  await holds(page, 'G5 wire diameter', '0.903');
});
