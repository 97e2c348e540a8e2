import { readFileSync } from 'node:fs';
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
});
