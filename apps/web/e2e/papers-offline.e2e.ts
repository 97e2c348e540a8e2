import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readPdf, withoutSpaces } from '../../../packages/papers/src/testing/read-pdf.ts';
import { axe } from './axe.ts';
import { expect, test } from './server.ts';

const goTo = (page: Page, task: string) =>
  page
    .getByRole('navigation', { name: 'Tasks of this job' })
    .getByRole('link', { name: task, exact: true })
    .click();

const goToRecordPapers = async (page: Page) => {
  await goTo(page, 'Record');
  await page
    .getByRole('navigation', { name: 'Parts of Record' })
    .getByRole('link', { name: 'Papers', exact: true })
    .click();
};

async function saved(page: Page, name: string): Promise<Buffer> {
  const coming = page.waitForEvent('download', { timeout: 60_000 });
  await page.getByRole('button', { name, exact: true }).click();
  return readFileSync(await (await coming).path());
}

async function openDemo(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  // The screens, then the type-setting and the fonts are kept on the device before the network goes.
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.goto(`${url}/#/settings`);
  await expect(page.getByText('Papers can be made and looked at without a network.')).toBeVisible({
    timeout: 60_000,
  });
  await page.goto(`${url}/#/`);
  await page.getByRole('button', { name: 'Open the demo job' }).first().click();
  await expect(page.getByRole('navigation', { name: 'Parts of Record' })).toBeVisible();
}

/** A picture as a camera makes it, larger than paper needs it. */
async function takePhoto(page: Page): Promise<void> {
  const bytes = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2000, 1500);
    const drawing = canvas.getContext('2d')!;
    drawing.fillStyle = 'teal';
    drawing.fillRect(0, 0, 2000, 1500);
    return [...new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer())];
  });
  await page.getByRole('link', { name: 'Photos', exact: true }).click();
  await page.getByLabel('What it shows').fill('the bridge at the break');
  await page
    .getByLabel('Choose photos')
    .setInputFiles({ name: 'bridge.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) });
  await expect(page.getByText(/photos? (is|are) kept on this device/)).toBeVisible();
}

test('without a server a device makes its papers by itself, with its own photos', async ({
  page,
  server,
}) => {
  await openDemo(page, server.url);
  await server.stop('SIGKILL');
  await takePhoto(page);

  await test.step('a paper is saved, and read back', async () => {
    await goToRecordPapers(page);
    const record = await readPdf(await saved(page, 'As-found record, PDF'));
    expect(record.language).toMatch(/^en/);
    const words = record.pages.map((one) => one.words).join('\n');
    expect(words).toContain(withoutSpaces('An invented grand'));
    expect(words).toContain(withoutSpaces('the bridge at the break'));
    expect(words).not.toContain(withoutSpaces('This photo was not where the paper was made'));
    const job = /#\/job\/([^/]+)/.exec(page.url())![1]!;
    expect(words).toContain(`${server.url}/#/job/${job}/record`);
    expect(record.pages.flatMap(({ texts }) => texts).every(({ isFontEmbedded }) => isFontEmbedded)).toBe(
      true,
    );
  });

  await test.step('and its table for machines', async () => {
    const csv = (await saved(page, 'As-found record, CSV')).toString('utf8');
    expect(csv.split('\r\n').length).toBeGreaterThan(100);
  });

  await test.step('a paper is looked at, and going back leads to where one was', async () => {
    const before = page.url();
    await page.getByRole('button', { name: 'Look at As-found record' }).click();
    const over = page.getByRole('dialog', { name: 'As-found record' });
    await expect(over.getByText(/^Page 1 of \d+\./)).toBeAttached({ timeout: 60_000 });
    await expect
      .poll(() =>
        over
          .locator('canvas')
          .first()
          .evaluate((canvas: HTMLCanvasElement) => {
            const shown = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
            return shown?.some((value) => value < 100) === true;
          }),
      )
      .toBe(true);
    const { violations } = await axe(page).include('.paper-dialog').analyze();
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
    await page.goBack();
    await expect(over).toBeHidden();
    expect(page.url()).toBe(before);
    await goTo(page, 'Order');
    await expect(page.getByRole('button', { name: 'Look at Purchase list' })).toBeVisible();
    const inOrder = page.url();
    await page.getByRole('button', { name: 'Look at Purchase list' }).click();
    await page.getByRole('dialog', { name: 'Purchase list' }).getByRole('button', { name: '← Back' }).click();
    await expect(page.getByRole('dialog')).toBeHidden();
    expect(page.url()).toBe(inOrder);
  });
});

test('a paper made on the device says the same as the one the server makes', async ({ page, server }) => {
  await openDemo(page, server.url);
  const job = /#\/job\/([^/]+)/.exec(page.url())![1]!;
  const language = await page.evaluate(() => navigator.language);
  const wordsOf = async (bytes: Uint8Array) =>
    (await readPdf(bytes)).pages.map((one) =>
      one.words
        // The minute may change between the two; and the server knows no address of the screens.
        .replace(/\d\d:\d\dUTC|page\d+of\d+|Thejobbehindthispaper:http\S*?\/record/g, ''),
    );
  for (const [task, paper, words] of [
    ['String', 'stringing-sheets', 'Stringing sheets'],
    ['String', 'cut-list', 'Loop plan and cut list'],
    ['Order', 'purchase-list', 'Purchase list'],
  ] as const) {
    await goTo(page, task);
    if (task === 'String')
      await page
        .getByRole('navigation', { name: 'Parts of String' })
        .getByRole('link', { name: 'Sheets', exact: true })
        .click();
    const here = await wordsOf(await saved(page, `${words}, PDF`));
    const there = await page.request.get(`${server.url}/jobs/${job}/papers/${paper}?language=${language}`);
    expect(here).toEqual(await wordsOf(await there.body()));
  }
});

test('a code that is scanned opens its job, or says what to do', async ({ page, server, browser }) => {
  await openDemo(page, server.url);
  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  await goToRecordPapers(page);
  const record = await readPdf(await saved(page, 'As-found record, PDF'));
  const printed = record.pages.flatMap(({ texts }) => texts.map(({ text }) => text));
  const address = printed.map((text) => /http\S+/.exec(text)?.[0]).find((found) => found !== undefined)!;
  expect(address.startsWith(server.url)).toBe(true);

  const phone = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
  await phone.goto(address.replace(/[0-9A-Z]{26}/, '01ARZ3NDEKTSV4RRFFQ69G5FAV'));
  await expect(phone.getByRole('alert')).toContainText(
    'If you scanned a paper, open Becket on the device that made it',
  );
  await phone.goto(address);
  await expect(phone.getByRole('navigation', { name: 'Parts of Record' })).toBeVisible();

  await test.step('away from the shop', async () => {
    await phone.evaluate(async () => void (await navigator.serviceWorker.ready));
    await server.stop('SIGKILL');
    await phone.goto(address.replace(/[0-9A-Z]{26}/, '01ARZ3NDEKTSV4RRFFQ69G5FAV'));
    await phone.reload();
    await expect(phone.getByRole('alert')).toContainText(
      'the server cannot be reached. If you scanned a paper, join',
    );
  });
  await phone.context().close();
});
