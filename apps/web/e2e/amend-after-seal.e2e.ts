import { readFileSync } from 'node:fs';
import { foldJob, isSealIntact } from '@becket/journal';
import { readPdf } from '../../../packages/papers/src/testing/read-pdf.ts';
import { fieldOf, gridCell, holds } from './grid-field.ts';
import { entriesOnServer, seedJob } from './seed-job.ts';
import { expect, test } from './server.ts';

test('a sealed record is changed with a reason alone; the seal stays whole and the paper tells of the change', async ({
  page,
  server,
}) => {
  const job = await seedJob(server, 'A grand to seal');
  const goTo = (part: string) =>
    page
      .getByRole('navigation', { name: 'Parts of Record' })
      .getByRole('link', { name: part, exact: true })
      .click();
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('link', { name: /A grand to seal/ }).click();

  await test.step('the gaps are accepted by name, and the record is sealed', async () => {
    await goTo('Strip check');
    await expect(page.getByRole('status').filter({ hasText: 'Not passed' })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Go to wire-diameter/C4' })).toBeVisible();
    for (const box of await page.getByLabel(/^tick all/).all()) await box.check();
    for (const box of await page.getByRole('checkbox').all()) await box.check();
    await page.getByLabel('Reason for accepting the ticked gaps').fill('an exercise');
    await page.getByRole('button', { name: /^Accept \d+ gaps? by name/ }).click();
    await page.getByRole('button', { name: 'Seal the as-found record' }).click();
    await expect(page.getByText(/Seal [0-9a-f]{64}/)).toBeVisible();
    await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  });
  const sealed = await entriesOnServer(server, job);

  await goTo('Readings');
  const cell = gridCell(page, 'C3 wire diameter');
  const readBack = page.locator('.read-back-words');

  await test.step('without a reason a change is refused, and nothing is written', async () => {
    await (await fieldOf(page, 'C3 wire diameter')).fill('1.08');
    await cell.press('Enter');
    await expect(page.getByRole('alert')).toContainText(
      /Cannot change the as-found record.*a reason is needed/,
    );
    await expect(readBack).toContainText('Not kept: C3 wire diameter');
    await expect(page.getByText('Every later change is an amendment and needs a reason.')).toBeVisible();
    expect(await entriesOnServer(server, job)).toEqual(sealed);
    // What was typed is not thrown away with it.
    await holds(page, 'C3 wire diameter', '1.08');
    // A further reading corrects nothing, and changes the record all the same.
    const empty = await fieldOf(page, 'C4 wire diameter');
    await empty.fill('1.02');
    await empty.press('Enter');
    await expect(readBack).toContainText('Not kept: C4 wire diameter');
    expect(await entriesOnServer(server, job)).toEqual(sealed);
    await (await fieldOf(page, 'C4 wire diameter')).press('Escape');
    await fieldOf(page, 'C3 wire diameter');
  });

  await test.step('with a reason it is kept, as an amendment', async () => {
    await page.getByLabel('Reason for changing the sealed record').fill('measured on the old string');
    await cell.press('Enter');
    await expect(readBack).toContainText('Kept: C3 wire diameter');
    await expect(page.getByText(/1 amendment since/)).toBeVisible();
    await expect(page.getByRole('alert')).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  });

  await test.step('on the server the seal is whole, and the amendment stands after it', async () => {
    const entries = await entriesOnServer(server, job);
    expect(entries).toHaveLength(sealed.length + 1);
    const state = foldJob(entries);
    expect(isSealIntact(state.seal!, entries)).toBe(true);
    expect(state.amendments.map(({ reason, kind, by }) => [kind, reason, by])).toEqual([
      ['reading', 'measured on the old string', 'Ada'],
    ]);
    // The sealed reading is still there to be read, and no longer stands.
    const was = sealed.find(({ fact }) => fact.kind === 'reading')!;
    expect(state.withdrawnEntries.has(was.id)).toBe(true);
    await goTo('Strip check');
    await expect(page.getByText(`Seal ${state.seal?.digest}`)).toBeVisible();
  });

  await test.step('the paper names the seal and the amendment', async () => {
    await goTo('Papers');
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'As-found record, PDF' }).click();
    const { pages } = await readPdf(readFileSync(await (await coming).path()));
    const text = pages.map(({ words }) => words).join('');
    // Words come back without spaces: gaps and line breaks are a matter of type-setting.
    expect(text).toContain('Sealedon');
    expect(text).toContain('measuredontheoldstring');
  });
});
