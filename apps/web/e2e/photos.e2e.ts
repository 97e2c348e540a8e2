import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import { readJournalLines, tellingParts } from '../../../packages/journal/src/index.ts';
import { jpegWith, locatedExif } from '../../../packages/journal/src/testing/tiny-jpeg.ts';
import { fieldOf } from './grid-field.ts';
import { seedJob } from './seed-job.ts';
import { expect, test } from './server.ts';

// A picture of 24 megapixels takes its time on a busy machine.
test.setTimeout(300_000);

/** A JPEG as a camera makes it: of this size, with detail everywhere, and with EXIF that says where it was taken. */
async function photoFromCamera(page: Page, width: number, height: number): Promise<Buffer> {
  const text = await page.evaluate(
    async ([w, h]) => {
      const canvas = new OffscreenCanvas(w!, h!);
      const drawing = canvas.getContext('2d')!;
      for (let band = 0; band < 60; band += 1) {
        drawing.fillStyle = `hsl(${band * 6} 45% ${30 + (band % 5) * 10}%)`;
        drawing.fillRect(0, (band * h!) / 60, w!, h! / 60);
      }
      drawing.strokeStyle = '#222';
      drawing.lineWidth = 9;
      for (let string = 0; string < 88; string += 1) {
        drawing.beginPath();
        drawing.moveTo((string * w!) / 88, 0);
        drawing.lineTo(((string + 8) * w!) / 88, h!);
        drawing.stroke();
      }
      const bytes = new Uint8Array(
        await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 })).arrayBuffer(),
      );
      let binary = '';
      for (let at = 0; at < bytes.length; at += 8192)
        binary += String.fromCharCode(...bytes.subarray(at, at + 8192));
      return btoa(binary);
    },
    [width, height],
  );
  const jpeg = new Uint8Array(Buffer.from(text, 'base64'));
  return Buffer.from(jpegWith([{ marker: 0xe1, content: locatedExif }], jpeg));
}

async function openJob(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByLabel('Title').fill('A grand on trestles');
  await page.getByText('grand', { exact: true }).click();
  await page.getByLabel('Lowest note').fill('A0');
  await page.getByLabel('Highest note').fill('C8');
  await page.getByRole('button', { name: 'Open the job' }).click();
  await expect(page.getByRole('heading', { name: 'A grand on trestles' })).toBeVisible();
}
/** Opens the part, which is loaded only now, and waits until it is there. */
async function toPhotos(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Photos', exact: true }).click();
  await expect(page.locator('.photo-add')).toBeVisible();
}
const kept = (page: Page) => page.getByText(/photos? (is|are) kept on this device/);

test('a photo of 24 megapixels, taken offline, is marked, reaches the server, and is in the saved file', async ({
  page,
  server,
  browser,
}) => {
  await openJob(page, server.url);
  const camera = await photoFromCamera(page, 6000, 4000);
  expect(tellingParts(camera)).toEqual(['EXIF or XMP']);
  await toPhotos(page);
  await expect(page.getByText('All sent')).toBeVisible();
  // The program itself is kept on the device before the network goes.
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await server.stop();

  await test.step('it is kept on the device at once, and the page goes on working meanwhile', async () => {
    await page.getByLabel('Where on the piano').selectOption('note');
    await page.getByLabel('Note', { exact: true }).fill('A4');
    await page.getByLabel('What it shows').fill('the capo at A4');
    // Counts how often the page draws while the photo is made ready: a page that stands still draws nothing.
    await page.evaluate(() => {
      const counted = { frames: 0 };
      Object.assign(globalThis, { counted });
      const count = () => {
        counted.frames += 1;
        requestAnimationFrame(count);
      };
      requestAnimationFrame(count);
    });
    await page
      .getByLabel('Take a photo')
      .setInputFiles({ name: 'IMG_1.jpg', mimeType: 'image/jpeg', buffer: camera });
    await expect(page.getByText(/Making photo 1 of 1 ready/)).toBeVisible();
    await expect(kept(page)).toBeVisible();
    const frames = await page.evaluate(
      () => (globalThis as unknown as { counted: { frames: number } }).counted.frames,
    );
    expect(frames).toBeGreaterThan(2);
    // And by a worker: how long the page would stand still for it depends on the device.
    expect(page.workers().map((worker) => worker.url())).toContainEqual(
      expect.stringMatching(/photo-worker/),
    );
    await expect(page.getByText(/1 entry only here/)).toBeVisible();
  });

  await test.step('it is one tap from the string card of its note', async () => {
    await page.getByRole('link', { name: 'Record', exact: true }).click();
    // Over the readings the plan is put away by itself.
    await expect(page.getByRole('table', { name: /Readings of the compass/ })).toBeVisible();
    const showPlan = page.getByRole('button', { name: 'Show the plan' });
    if (await showPlan.isVisible()) await showPlan.click();
    await page.locator('[data-row="49"]').scrollIntoViewIfNeeded();
    await page.locator('[data-row="49"] [data-cell]').first().click();
    await page
      .getByRole('region', { name: 'String card: A4' })
      .getByRole('link', { name: /^the capo at A4/ })
      .click();
    await expect(page.getByRole('heading', { name: /the capo at A4/ })).toBeVisible();
    await expect(page.getByText('2560 × 1707 pixels')).toBeVisible();
  });

  const area = page.getByRole('application', { name: /^Drawing area/ });
  const marks = page.getByRole('list', { name: 'Marks' }).getByRole('listitem');
  await test.step('marks by pointer: an arrow, a label, a scale bar', async () => {
    await area.scrollIntoViewIfNeeded();
    const box = (await area.boundingBox())!;
    const stroke = async (from: [number, number], to: [number, number]) => {
      await page.mouse.move(box.x + from[0] * box.width, box.y + from[1] * box.height);
      await page.mouse.down();
      await page.mouse.move(box.x + to[0] * box.width, box.y + to[1] * box.height, { steps: 5 });
      await page.mouse.up();
    };
    await stroke([0.2, 0.2], [0.4, 0.4]);
    await expect(marks).toHaveText([/^Arrow/]);
    await page.getByText('label', { exact: true }).click();
    await stroke([0.6, 0.3], [0.6, 0.3]);
    await page.getByLabel('Words').fill('rust under the felt');
    await page.getByRole('button', { name: 'Keep the label' }).click();
    await expect(marks).toHaveText([/^Arrow/, /^Label: rust under the felt/]);
    await page.getByText('distance', { exact: true }).click();
    await stroke([0.1, 0.9], [0.6, 0.9]);
    await page.getByLabel(/^Length measured on the piano/).fill('100');
    await page.getByRole('button', { name: 'Keep the distance' }).click();
    await expect(marks.nth(2)).toContainText('100.0 mm = 3.937 in, measured on the piano; the scale bar');
  });

  await test.step('a further distance by keys alone, read off the scale bar; then undo and again', async () => {
    await area.focus();
    // From the middle 25 hundredths to the right: half of the scale bar, so 50 mm.
    await page.keyboard.press('Enter');
    for (let step = 0; step < 5; step += 1) await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Keep the distance' }).click();
    // The pointer's scale bar ends within a pixel of the screen: half a hundredth of its length.
    await expect(marks.nth(3)).toContainText(
      /(49\.[5-9]|50\.[0-5]) mm = .* ± 0\.\d mm, inferred from the scale bar/,
    );
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(marks).toHaveCount(3);
  });

  await test.step('after a reload without a server everything is there', async () => {
    await page.reload();
    await expect(marks).toHaveCount(3);
    const picture = page.getByRole('img', { name: 'the capo at A4' });
    await expect(picture).toBeVisible();
    expect(await picture.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(2560);
  });

  let digest = '';
  await test.step('back online it reaches the server, and tells nothing of where it was taken', async () => {
    await server.start();
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await expect(page.getByText('All sent')).toBeVisible({ timeout: 70_000 });
    digest = /photo-([0-9a-f]{64})/.exec(page.url())![1]!;
    const answer = await page.request.get(`${server.url}/blobs/${digest}`);
    expect(answer.headers()['content-type']).toBe('image/jpeg');
    const bytes = new Uint8Array(await answer.body());
    expect(tellingParts(bytes)).toEqual([]);
    for (const word of ['Exif', 'GPS', 'http://ns.adobe.com/xap'])
      expect(Buffer.from(bytes).includes(word)).toBe(false);
  });

  await test.step('another device sees it with its marks, from its own store', async () => {
    const other = await (await browser.newContext()).newPage();
    await other.goto(page.url());
    await expect(other.getByRole('img', { name: 'the capo at A4' })).toBeVisible({ timeout: 40_000 });
    await expect(other.getByRole('list', { name: 'Marks' }).getByRole('listitem')).toHaveCount(3);
    await other.context().close();
  });

  await test.step('the saved file has it, and a device that never met the server can bring it in', async () => {
    await page.getByRole('link', { name: 'Hand over' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the job as a file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('A-grand-on-trestles.zip');
    const file = await download.path();
    const files = unzipSync(new Uint8Array(readFileSync(file)));
    expect(Object.keys(files)).toEqual(['journal.jsonl', `photos/${digest}.jpg`]);
    const { entries, unread } = readJournalLines(new TextDecoder().decode(files['journal.jsonl']));
    expect(unread).toEqual([]);
    expect(entries.filter(({ fact }) => fact.kind === 'photo').length).toBeGreaterThanOrEqual(4);

    const other = await (await browser.newContext()).newPage();
    await other.goto(server.url);
    await other.route('**/jobs**', (route) => route.abort());
    await other.route('**/blobs/**', (route) => route.abort());
    const bytes = readFileSync(file);
    await other
      .getByLabel('Bring in a job file')
      .setInputFiles({ name: 'cut.zip', mimeType: 'application/zip', buffer: bytes.subarray(0, -2000) });
    await expect(other.getByRole('alert')).toContainText(
      /whole entries of 'cut\.zip' were brought in, but not everything/,
    );
    await other
      .getByLabel('Bring in a job file')
      .setInputFiles({ name: 'whole.zip', mimeType: 'application/zip', buffer: bytes });
    await expect(other.getByRole('heading', { name: 'A grand on trestles' })).toBeVisible();
    await toPhotos(other);
    await other.getByRole('list', { name: 'Photos of this job' }).getByRole('link').click();
    await expect(other.getByRole('img', { name: 'the capo at A4' })).toBeVisible();
    await other.context().close();
  });
});

test('a full device says so in one sentence and loses nothing; what is no picture is refused', async ({
  page,
  server,
}) => {
  // The browser itself refuses further bytes: a real quota, not a pretended error. It leaves room for the program.
  const client = await page.context().newCDPSession(page);
  await client.send('Storage.overrideQuotaForOrigin', { origin: server.url, quotaSize: 3_000_000 });
  await openJob(page, server.url);
  await toPhotos(page);
  const take = (name: string, buffer: Buffer) =>
    page.getByLabel('Choose photos').setInputFiles({ name, mimeType: 'image/jpeg', buffer });
  const list = page.getByRole('list', { name: 'Photos of this job' }).getByRole('link');
  const full = page.getByRole('alert').filter({
    hasText: /Cannot keep this on the device: its storage is full\. Nothing was changed; free some space/,
  });

  let taken = 0;
  let refused: Buffer | undefined;
  while (refused === undefined) {
    expect(taken, 'photos that were taken without filling 3 MB').toBeLessThan(12);
    const camera = await photoFromCamera(page, 2560 - taken, 1920);
    await take(`${taken}.jpg`, camera);
    await expect(list.nth(taken).or(full)).toBeVisible();
    if (await full.isVisible()) refused = camera;
    else taken += 1;
  }
  await expect(list).toHaveCount(taken);
  await page.reload();
  await expect(list).toHaveCount(taken);

  await client.send('Storage.overrideQuotaForOrigin', { origin: server.url });
  await take('again.jpg', refused);
  await expect(list).toHaveCount(taken + 1);

  await take('cut.jpg', refused.subarray(0, 300));
  await expect(page.getByRole('alert')).toContainText(
    /^▲ Cannot take 'cut\.jpg': a picture that this browser can show is needed/,
  );
  await expect(list).toHaveCount(taken + 1);
});

test('photos are dropped in and pasted, several at once', async ({ page, server }) => {
  await openJob(page, server.url);
  await toPhotos(page);
  const texts = [
    (await photoFromCamera(page, 640, 480)).toString('base64'),
    (await photoFromCamera(page, 480, 640)).toString('base64'),
    (await photoFromCamera(page, 320, 240)).toString('base64'),
  ];
  const bring = (how: 'drop' | 'paste', pictures: string[]) =>
    page.evaluate(
      ([kind, all]) => {
        const data = new DataTransfer();
        for (const [index, text] of (all as string[]).entries()) {
          const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
          data.items.add(new File([bytes], `${index}.jpg`, { type: 'image/jpeg' }));
        }
        if (kind === 'paste') {
          document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
          return;
        }
        const target = document.querySelector('.photo-add')!;
        target.dispatchEvent(
          new DragEvent('dragover', { dataTransfer: data, bubbles: true, cancelable: true }),
        );
        target.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
      },
      [how, pictures] as const,
    );
  const list = page.getByRole('list', { name: 'Photos of this job' }).getByRole('link');
  await bring('drop', texts.slice(0, 2));
  // A third comes while the two are still being made ready.
  await bring('paste', texts.slice(2));
  await expect(list).toHaveCount(3);
  // The same picture again is the same photo.
  await bring('paste', texts.slice(0, 1));
  await expect(page.getByText('1 photo is kept on this device.')).toBeVisible();
  await expect(list).toHaveCount(3);
});

test('a photo of a section is taken where the section is described, and is one tap from there', async ({
  page,
  server,
}) => {
  const job = await seedJob(server, 'A grand with photos');
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.goto(`${server.url}/#/job/${job}/record/seen`);
  await page.getByRole('radio', { name: /^high, \d+ open/ }).check({ force: true });
  const photos = page.getByRole('region', { name: 'Photos', exact: true });
  await photos.getByLabel('Take a photo').setInputFiles({
    name: 'felts.jpg',
    mimeType: 'image/jpeg',
    buffer: await photoFromCamera(page, 800, 600),
  });
  const thumb = photos.getByRole('link', { name: 'Photo, section high' });
  await expect(thumb).toBeVisible();
  await page.getByRole('radio', { name: /^low, \d+ open/ }).check({ force: true });
  await expect(thumb).toHaveCount(0);
  await page.getByRole('radio', { name: 'the whole piano' }).check({ force: true });
  await expect(thumb).toHaveCount(0);
  await page.getByRole('radio', { name: /^high, \d+ open/ }).check({ force: true });
  await thumb.click();
  await expect(page.getByText('800 × 600 pixels')).toBeVisible();

  await test.step('on a phone it is one tap from the cell of a note of its section, without the plan', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(`${server.url}/#/job/${job}/record`);
    const map = page.getByRole('complementary', { name: 'Map of the piano' });
    await page.getByLabel('Show', { exact: true }).selectOption('whole compass');
    await fieldOf(page, 'C#4 speaking length');
    await expect(map.getByRole('button', { name: 'Show the plan' })).toBeVisible();
    const near = map.getByRole('link', { name: 'Photo, section high' });
    await near.click({ trial: true });
    const { width, height } = (await near.boundingBox())!;
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(48);
    await fieldOf(page, 'C3 speaking length');
    await expect(near).toHaveCount(0);
    await fieldOf(page, 'C#4 speaking length');
    await near.click();
    await expect(page.getByText('800 × 600 pixels')).toBeVisible();
  });
});
