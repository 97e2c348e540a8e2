import { places } from './places.ts';
import { expect, test } from './server.ts';

// A phone, and a thumb in a glove.
test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
test.setTimeout(300_000);

test('no place of a job is wider than a phone, and a slip is told beside the button that was tapped', async ({
  page,
  server,
}) => {
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).tap();
  await page.getByRole('button', { name: 'Open the demo job' }).first().tap();
  await expect(page.getByRole('navigation', { name: 'Parts of Record' })).toBeVisible();
  const job = new URL(page.url()).hash.split('/')[2];

  await test.step('every place fits', async () => {
    for (const place of places) {
      await page.goto(`${server.url}/#/job/${job}/${place}`);
      await expect(page.locator('main h2').first()).toBeAttached();
      await expect
        .poll(() => page.evaluate(() => document.documentElement.scrollWidth), { message: place })
        .toBeLessThanOrEqual(390);
    }
  });

  const sheet = page.getByRole('dialog');
  await test.step('a felt of 45 mm is refused where the thumb is', async () => {
    await page.goto(`${server.url}/#/job/${job}/record/seen`);
    await page.getByRole('radio', { name: /^tenor, \d+ open/ }).check({ force: true });
    await page.getByRole('button', { name: 'Measure felt, section tenor' }).tap();
    await sheet.getByLabel('Thickness').fill('45');
    await sheet.getByRole('button', { name: 'Keep it' }).tap();
    await expect(sheet.getByRole('alert')).toContainText('up to 30.0 mm');
    await expect(sheet.getByRole('alert')).toBeInViewport({ ratio: 1 });
    await sheet.getByRole('button', { name: 'Close' }).tap();
    // It is over with its form: the next one, and the next place, begin without it.
    await page.getByRole('button', { name: 'Add a piece' }).tap();
    await expect(sheet.getByLabel('Its name')).toBeVisible();
    await expect(sheet.getByRole('alert')).toHaveCount(0);
    await sheet.getByRole('button', { name: 'Close' }).tap();
  });

  await test.step('a run is described from its upper note as well', async () => {
    await page.goto(`${server.url}/#/job/${job}/record/sections`);
    await page.getByRole('button', { name: 'Describe a run of notes' }).tap();
    await sheet.getByLabel('First note of the run').fill('C8');
    await sheet.getByLabel('Last note of the run').fill('B7');
    await sheet.getByText('2', { exact: true }).tap();
    await sheet.getByRole('button', { name: 'Keep the stringing' }).tap();
    await expect(page.getByRole('rowheader', { name: 'B7 to C8' })).toBeVisible();
    // The table is wider than the phone; what is done to a row stays in reach all the same.
    const change = (await page.getByRole('button', { name: 'Change section bass' }).boundingBox())!;
    expect(change.x + change.width).toBeLessThanOrEqual(390);
  });
});
