import { readFileSync } from 'node:fs';
import { foldHandOver, foldSettling } from '@becket/journal';
import type { Page } from '@playwright/test';
import { readPdf, withoutSpaces } from '../../../packages/papers/src/testing/read-pdf.ts';
import { entriesOnServer, seedJob } from './seed-job.ts';
import { expect, test } from './server.ts';

// Days and units are those of this country.
test.use({ locale: 'en-GB' });

/** Types values one after the other where the focus is, each with Enter: nothing is clicked in between. */
async function typeOn(page: Page, values: readonly string[]): Promise<void> {
  for (const value of values) {
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type(value);
    await page.keyboard.press('Enter');
    await expect(
      page.getByText(`: ${value.startsWith('-') ? `−${value.slice(1)}` : `+${value}`}.0`),
    ).toBeVisible();
  }
}

async function savedWords(page: Page, name: string): Promise<string> {
  const coming = page.waitForEvent('download', { timeout: 60_000 });
  await page.getByRole('button', { name, exact: true }).click();
  const { pages } = await readPdf(readFileSync(await (await coming).path()));
  return pages.map(({ words }) => words).join('');
}

test('two passes by keyboard, the next overpull, both papers, and the hand-over', async ({
  page,
  server,
}) => {
  const job = await seedJob(server, 'Settling in the back room');
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.goto(`${server.url}/#/job/${job}/settle`);

  await test.step('before there is a pass the starting figure is said to be one', async () => {
    await expect(page.getByText('no fall of this piano is known yet')).toBeVisible();
    await expect(page.getByText('high: no string can be computed, so no overpull is told')).toBeVisible();
  });

  await test.step('the limit is set for this job with its table and its source, and taken back', async () => {
    const starting = page.getByText('65 % of its break load (common practice; ASTM A228 minimum)');
    await expect(starting).toBeVisible();
    await page.getByRole('button', { name: 'Change the limit' }).click();
    const sheet = page.getByRole('dialog', { name: 'How far up a string may be pulled' });
    await sheet.getByLabel('At most, % of the break load').fill('95');
    await sheet.getByLabel('Break load by').selectOption('ASTM A228 maximum');
    await sheet.getByLabel('Where it comes from').fill('our own trials');
    await sheet.getByRole('button', { name: 'Keep this limit' }).click();
    await expect(sheet.getByRole('alert')).toContainText(
      'from 20 to 90 % of the break load are needed, 95 was found',
    );
    await sheet.getByLabel('At most, % of the break load').fill('57.5');
    await sheet.getByRole('button', { name: 'Keep this limit' }).click();
    await expect(
      page.getByText('57.5 % of its break load (our own trials; ASTM A228 maximum)'),
    ).toBeVisible();
    await expect(page.getByText(/^Set for this job by Ada, .* it started as 65 %/)).toBeVisible();
    await page.getByRole('button', { name: 'Take the limit back' }).click();
    await expect(starting).toBeVisible();
  });

  await test.step('the first pass, typed without a pointer', async () => {
    await page.getByLabel('Relative humidity (%)').fill('48');
    await page.getByLabel('Relative humidity (%)').press('Enter');
    await expect(page.getByRole('textbox', { name: 'low cents' })).toBeFocused();
    await typeOn(page, ['-60', '-40', '8', '2', '8', '1']);
    await expect(page.getByText('Every section was left: pass 1 is finished.')).toBeVisible();
  });

  await test.step('a value that is none is refused beside its field, and undo takes the last one back', async () => {
    const high = page.getByRole('textbox', { name: 'high cents' });
    await high.fill('flat');
    await high.press('Enter');
    await expect(page.getByRole('alert')).toContainText('Cannot read ‘flat’ as cents');
    await page.getByRole('button', { name: 'Undo' }).press('Enter');
    await expect(page.getByText('Every section was left')).toHaveCount(0);
    await high.focus();
    await typeOn(page, ['2']);
    await page.getByRole('button', { name: 'On to the next pass' }).press('Enter');
  });

  await test.step('the second pass begins, and tells the overpull from the fall after the first', async () => {
    await page.getByLabel('A4 (Hz)').press('Enter');
    await expect(page.getByRole('textbox', { name: 'low cents' })).toBeFocused();
    await typeOn(page, ['-10', '-6']);
    // By hand: raised by 68, fallen by 18: 0.26471; with u = 1 cent w = 1/(2/68² + 0.0025) = 341.0, the default 0.25 with
    // w = 100: k = 0.26137; a = 0.26137 · 10 / 0.73863 = 3.5.
    await expect(page.getByText(/told 3\.5 ± \d\.\d; at most \d+/)).toBeVisible();
    await expect(page.getByText('no overpull told; limit unknown')).toBeVisible();
    await page.getByRole('button', { name: 'Take the overpulls as told' }).press('Enter');
    await expect(page.getByText('1 overpull as told')).toBeVisible();
  });

  await test.step('an overpull above the limit of the break load is refused with the limit', async () => {
    const low = page.getByRole('textbox', { name: 'low cents' });
    await low.fill('590');
    await low.press('Enter');
    await expect(page.getByRole('alert')).toContainText('Cannot keep an overpull of 590 cents for low');
    await low.fill('4');
    await low.press('Enter');
    await expect(page.getByText('low, 2 Overpull: +4.0')).toBeVisible();
  });

  await test.step('the second pass ends; a string that slipped is noted', async () => {
    await page.getByText('3 Left at', { exact: true }).click();
    await page.getByRole('textbox', { name: 'low cents' }).focus();
    await typeOn(page, ['4', '3']);
    await page.getByText('A string broke or slipped', { exact: true }).click();
    await page.getByText('slipped', { exact: true }).click();
    await page.getByLabel('Note', { exact: true }).fill('C4');
    await page.getByRole('button', { name: 'Note it' }).click();
    await expect(page.getByText('C4: slipped')).toBeVisible();
  });

  await test.step('a day to come', async () => {
    await page.getByRole('link', { name: 'Follow-ups' }).click();
    await page.getByLabel('On', { exact: true }).fill('2031-03-04');
    await page.getByRole('button', { name: 'Plan it' }).click();
    await expect(page.getByText('tuning, 4 March 2031')).toBeVisible();
  });

  await test.step('the course is drawn, and the log is made and read back', async () => {
    await page.getByRole('link', { name: 'How it went' }).click();
    await expect(page.getByRole('img', { name: /^Offset from pitch of each section/ })).toBeVisible();
    await page
      .getByRole('navigation', { name: 'Parts of Settle' })
      .getByRole('link', { name: 'Settling log' })
      .click();
    const words = await savedWords(page, 'Settling log, PDF');
    for (const text of ['−60.0', 'Pass 2: C4: slipped', '4 March 2031', 'To be filled in at the piano'])
      expect(words).toContain(withoutSpaces(text));
  });

  await test.step('the hand-over names what is open, and is refused until that was read', async () => {
    await page.goto(`${server.url}/#/job/${job}/hand-over`);
    await expect(page.getByText('The as-found record is not sealed.')).toBeVisible();
    await page.getByText(/^Measured on the new strings/).click();
    const wire = page.getByLabel('wire diameter (mm)');
    for (const diameter of ['1.075', '1.08']) {
      await wire.fill(diameter);
      await wire.press('Enter');
      await expect(page.getByText(/^Kept: /)).toContainText(diameter);
    }
    // The piano begins at C3; the second reading went to the next note by itself.
    await expect(page.getByRole('list', { name: 'Readings on the new strings' })).toContainText('C#3');
    await expect(page.getByText('The new wire was not measured: D3 to B3.')).toBeVisible();
    await page.getByLabel('Handed to').fill('Ines Okafor');
    await page.getByLabel('Left alone, and why').fill('damper felt: not ordered');
    await page.getByRole('button', { name: 'In 1, 3 and 6 months' }).click();
    await page.getByRole('button', { name: 'Hand the piano over' }).click();
    await expect(page.getByRole('alert')).toContainText('nobody has said that it was read');
    await page.getByLabel(/I have read what is still open/).check();
    await page.getByRole('button', { name: 'Hand the piano over' }).click();
    await expect(page.getByRole('status').filter({ hasText: 'Handed over on' })).toContainText('Ines Okafor');
    const words = await savedWords(page, 'Hand-over record, PDF');
    for (const text of ['to Ines Okafor', 'not ordered', 'The as-found record is not sealed.'])
      expect(words).toContain(withoutSpaces(text));
  });

  await test.step('all of it is in the journal of the server', async () => {
    await expect
      .poll(async () => foldHandOver(await entriesOnServer(server, job))?.to, { timeout: 60_000 })
      .toBe('Ines Okafor');
    const { passes, followUps } = foldSettling(await entriesOnServer(server, job));
    expect(passes.map(({ pass, mishaps }) => [pass, mishaps.length])).toEqual([
      [1, 0],
      [2, 1],
    ]);
    expect(passes[0]!.relativeHumidity_percent).toBe(48);
    expect(passes[1]!.sections.map(({ after }) => after[0]?.offset_cents)).toEqual([4, 3]);
    expect(followUps).toHaveLength(1);
  });
});
