import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from './server.ts';

/** Opens a job of the whole compass and goes to where a table is brought in. */
async function openBringIn(page: import('@playwright/test').Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('Title').fill('A grand on trestles');
  await page.getByText('grand', { exact: true }).click();
  await page.getByLabel('Lowest note').fill('A0');
  await page.getByLabel('Highest note').fill('C8');
  await page.getByRole('button', { name: 'Open the job' }).click();
  await page
    .getByRole('link', { name: /bring in/i })
    .first()
    .click();
}
const csv = (name: string, content: string | Buffer) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(content as string),
});

test('bad input gets one clear sentence each, and nothing goes into the job', async ({ page, server }) => {
  await openBringIn(page, server.url);
  const choose = page.getByLabel('Choose a CSV file');

  const large = join(server.folder, 'large.csv');
  writeFileSync(large, Buffer.alloc(50_000_000, 65));
  await choose.setInputFiles(large);
  await expect(page.getByRole('alert')).toContainText('up to 20 MB is needed, 50 MB were found');

  await choose.setInputFiles(
    csv(
      'bad.csv',
      'Note,Section,Wire (mm),Length (mm)\nA4,tenor,.039,400\nB4,treble,0.97,0\nD9,treble,0.95,300\nC5,tenor,0.95,340\n',
    ),
  );
  const problems = page.getByRole('region', { name: 'Cells that cannot be read' });
  await expect(problems).toContainText("Row 2, column 'Wire (mm)'");
  await expect(problems).toContainText('.039 would fit in in');
  await expect(problems).toContainText("a speaking length from 30 to 2600 mm is needed, '0' was found");
  await expect(problems).toContainText("'D9' was found");
  await expect(problems).toContainText('overlap');
  await expect(page.getByRole('button', { name: /^Bring in/ })).toBeDisabled();

  await choose.setInputFiles(csv('latin1.csv', Buffer.from('Taste;Länge (mm)\nA4;400\n', 'latin1')));
  await expect(page.getByText(/Windows-1252 \(Latin-1\)/).first()).toBeVisible();
  await page.getByRole('button', { name: 'Leave it' }).click();

  await page.getByRole('link', { name: 'Scale', exact: true }).click();
  await expect(page.getByText(/Enter readings in Record/)).toBeVisible();
});

test('a job file that is cut in the middle of a line gives its whole entries and says what is missing', async ({
  page,
  server,
}) => {
  await page.goto(server.url);
  await page.getByRole('button', { name: 'Open the demo job' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/invented/i);
  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  const { jobs } = (await (await page.request.get(`${server.url}/jobs`)).json()) as {
    jobs: { job: string }[];
  };
  const { entries } = (await (
    await page.request.get(`${server.url}/jobs/${jobs[0]!.job}/entries`)
  ).json()) as { entries: unknown[] };
  const whole = entries.map((entry) => `${JSON.stringify(entry)}\n`).join('');

  // Another device, which has never seen the job, and no server: the file alone.
  const other = await page.context().browser()!.newContext();
  const elsewhere = await other.newPage();
  await elsewhere.goto(server.url);
  await elsewhere.getByLabel('Bring in a job file').setInputFiles({
    name: 'job.jsonl',
    mimeType: 'application/x-ndjson',
    buffer: Buffer.from(whole.slice(0, -40)),
  });
  await expect(elsewhere.getByRole('alert')).toContainText('cut off');
  await expect(elsewhere.getByRole('link', { name: /invented grand/i })).toBeVisible();
  await other.close();
});
