import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { readPdf } from '../../../packages/papers/src/testing/read-pdf.ts';
import { expect, test } from './server.ts';

const grand = resolve(import.meta.dirname, '../../../examples/grand');
interface Correction {
  readonly row: number;
  readonly column: number;
  readonly use: string;
  readonly reason: string;
}
const corrections: Correction[] = JSON.parse(readFileSync(resolve(grand, 'corrections.json'), 'utf8'));
const truth = JSON.parse(readFileSync(resolve(grand, 'truth.json'), 'utf8'));

test('the main job: import the messy grand, correct two cells, see the charts, strip check, papers', async ({
  page,
  server,
}) => {
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();

  await test.step('open a job and describe the piano', async () => {
    await page.getByLabel('Title').fill('A grand on trestles');
    await page.getByText('grand', { exact: true }).click();
    await page.getByLabel('Lowest note').fill('A0');
    await page.getByLabel('Highest note').fill('C8');
    await page.getByRole('button', { name: 'Open the job' }).click();
    await expect(page.getByRole('heading', { name: 'A grand on trestles' })).toBeVisible();
  });

  await test.step('bring in the messy table, and correct what is in question', async () => {
    await page
      .getByRole('link', { name: /bring in/i })
      .first()
      .click();
    await page.getByLabel('Choose a CSV file').setInputFiles(resolve(grand, 'readings.csv'));
    await expect(page.getByRole('heading', { name: /readings\.csv/ })).toBeVisible();
    for (const { row, use, reason } of corrections) {
      const field = page.getByLabel(new RegExp(`^Use instead in row ${row},`));
      await field.fill(use);
      await page.getByLabel(new RegExp(`^Reason for row ${row},`)).fill(reason);
      await page.getByRole('button', { name: new RegExp(`^Correct row ${row},`) }).click();
      await expect(field).toHaveCount(0);
    }
    await expect(page.getByRole('region', { name: 'Cells that cannot be read' })).toHaveCount(0);
    await page.getByRole('button', { name: /^Bring in \d+ readings$/ }).click();
    await expect(page.getByText(/readings of \d+ notes were brought in from readings\.csv/)).toBeVisible();
  });

  await test.step('see the three charts and the loads', async () => {
    await page.getByRole('link', { name: 'Scale', exact: true }).click();
    const charts = page.getByRole('main').getByRole('figure');
    await expect(charts).toHaveCount(3);
    for (const chart of await charts.all()) {
      await expect(chart.getByRole('slider')).toBeVisible();
      // A round point for every plain note that can be computed; wound ones have a shape of their own.
      await expect.poll(() => chart.locator('svg circle').count()).toBeGreaterThan(45);
    }
    await expect(page.getByText(/kN/).first()).toBeVisible();
  });

  await test.step('the strip check fails with named gaps, and passes once they are accepted by name', async () => {
    await page.getByRole('link', { name: 'Record', exact: true }).click();
    await page
      .getByRole('link', { name: /strip check/i })
      .first()
      .click();
    await expect(page.getByRole('status').filter({ hasText: 'Not passed' })).toBeVisible();
    const gaps = page.getByRole('link', { name: /^Go to / });
    expect(await gaps.count()).toBeGreaterThan(5);
    // The grand's own gaps, by name: what its truth file says was never read.
    await expect(page.getByRole('link', { name: 'Go to speaking-length/G#2' })).toBeVisible();
    for (const box of await page.getByLabel(/^tick all/).all()) await box.check();
    for (const box of await page.getByRole('checkbox').all()) await box.check();
    await page.getByLabel('Reason for accepting the ticked gaps').fill('an exercise');
    await page.getByRole('button', { name: /^Accept \d+ gaps? by name/ }).click();
    await expect(page.getByRole('status').filter({ hasText: 'Passed.' })).toBeVisible();
    await page.getByRole('button', { name: 'Seal the as-found record' }).click();
    await expect(page.getByText(/Seal [0-9a-f]{64}/)).toBeVisible();
  });

  await test.step('the papers say what the readings said', async () => {
    await page.getByRole('link', { name: 'Papers', exact: true }).click();
    const paper = async (name: string) => {
      const coming = page.waitForEvent('download');
      await page.getByRole('button', { name }).click();
      return readFileSync(await (await coming).path());
    };
    const record = await readPdf(await paper('As-found record, PDF'));
    const text = record.pages.map((one) => one.words).join('\n');
    // Words come back without spaces: gaps and line breaks are a matter of type-setting.
    for (const words of [
      'Agrandontrestles',
      'Sealedon',
      'anexercise',
      'speaking-length/G#2',
      'adecimalpointtoomany',
    ]) {
      expect(text).toContain(words);
    }
    for (const note of truth.notes.map((one: { note: string }) => one.note)) expect(text).toContain(note);

    await page.getByRole('link', { name: 'Order', exact: true }).click();
    await page
      .getByRole('navigation', { name: 'Parts of Order' })
      .getByRole('link', { name: 'Papers', exact: true })
      .click();
    const order = await readPdf(await paper('Bass string order, PDF'));
    const orderText = order.pages.map((one) => one.words).join('\n');
    const csv = (await paper('Bass string order, CSV')).toString('utf8');
    // Every wound note of the piano stands on the order, on paper and for machines.
    const wound: string[] = truth.notes
      .filter((note: { winding?: string }) => note.winding === 'wound')
      .map((note: { note: string }) => note.note);
    expect(wound.length).toBeGreaterThan(20);
    for (const note of wound) {
      expect(orderText).toContain(note);
      expect(csv).toContain(note);
    }
  });

  await test.step('what was entered here is on the server, and a reload loses nothing', async () => {
    await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
    await page.reload();
    await expect(page.getByRole('heading', { name: 'A grand on trestles' })).toBeVisible();
    const jobs = await (await page.request.get(`${server.url}/jobs`)).json();
    expect(JSON.stringify(jobs)).toContain('A grand on trestles');
  });
});
