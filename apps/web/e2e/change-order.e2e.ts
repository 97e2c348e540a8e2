import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { digestOf } from '../../../packages/journal/src/index.ts';
import { changedJournal, changePhotos } from '../../../packages/papers/src/testing/changed-job.ts';
import { readPdf, withoutSpaces } from '../../../packages/papers/src/testing/read-pdf.ts';
import { expect, test } from './server.ts';

test('the change order is had as a paper from where damage is noted, with the photos that are there', async ({
  page,
  server,
}) => {
  const entries = changedJournal();
  const job = entries[0]!.job;
  for (const bytes of changePhotos) {
    const answer = await page.request.put(`${server.url}/blobs/${digestOf(bytes)}`, {
      data: Buffer.from(bytes),
      headers: { 'content-type': 'image/jpeg' },
    });
    expect(answer.ok()).toBe(true);
  }
  expect((await page.request.post(`${server.url}/jobs/${job}/entries`, { data: { entries } })).ok()).toBe(
    true,
  );
  await page.goto(`${server.url}/#/job/${job}/record/after-strip`);
  await expect(page.getByRole('heading', { name: 'Found after the strip' })).toBeVisible();
  await page.getByText('Letter', { exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Change order, PDF' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('practice-piano-north-room-change-order.pdf');
  const { pages } = await readPdf(readFileSync(await download.path()));
  const words = pages.map((one) => one.words).join('');
  expect(pages[0]!.width).toBe(612);
  for (const text of [
    'Crack in the bridge cap over five notes',
    'EUR 450.50',
    '____ not priced yet',
    'signature',
    'begins here',
    'This photo was not where the paper was made',
  ])
    expect(words).toContain(withoutSpaces(text));

  // A further line on the spot: its photo is taken in the form, and needs no reason, since it is of what came after.
  await page.getByLabel('What was found').fill('a split under the bass bridge apron');
  await page.getByLabel('What to do about it').fill('glue and dowel it');
  await page.getByLabel('Why it did not show before the strip').fill('hidden by the bass strings');
  await page.getByLabel('Price', { exact: true }).fill('180');
  await page.getByLabel('Currency', { exact: true }).fill('EUR');
  await page.getByLabel('Working days it adds').fill('1');
  await page
    .getByLabel('Choose photos')
    .setInputFiles({ name: 'apron.jpg', mimeType: 'image/jpeg', buffer: await colouredJpeg(page) });
  await expect(page.getByText('The photo is kept on this device.')).toBeVisible();
  await page.getByRole('button', { name: 'Put it on the change order' }).click();
  const line = page.getByRole('listitem').filter({ hasText: 'a split under the bass bridge apron' });
  await expect(line).toContainText('EUR 180.00');
  await expect(line).toContainText('With a photo.');

  await page.goto(`${server.url}/#/job/${job}/appraise/estimate`);
  await page.getByLabel('Answered by').fill('the owner');
  await page.getByRole('button', { name: 'Agreed: a split under the bass bridge apron' }).click();
  await expect(
    page.getByRole('listitem').filter({ hasText: 'a split under the bass bridge apron' }),
  ).toContainText('Agreed by the owner');
});

async function colouredJpeg(page: Page): Promise<Buffer> {
  const bytes = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(320, 240);
    canvas.getContext('2d')!.fillRect(0, 0, 160, 240);
    return [...new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer())];
  });
  return Buffer.from(bytes);
}
