import type { BrowserContext, Page } from '@playwright/test';
import { type BecketServer, expect, test } from './server.ts';

/** A device of its own: a browser that knows nothing of the others, with the demo job open. */
async function deviceWith(page: Page, server: BecketServer, name: string): Promise<void> {
  await page.goto(server.url);
  await page.getByLabel('Your name').fill(name);
  await page.getByRole('button', { name: 'Keep the name' }).click();
  // The screens are kept on the device before the network goes.
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
}
const cell = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

async function type(page: Page, name: string, value: string): Promise<void> {
  await cell(page, name).fill(value);
  await cell(page, name).press('Enter');
  await expect(page.getByText(/^Kept: /)).toBeVisible();
}

async function entriesOnServer(page: Page, server: BecketServer): Promise<{ id: string }[]> {
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
  await expect(cell(other, 'A3 wire diameter')).toBeVisible();
  const before = (await entriesOnServer(page, server)).length;

  await test.step('the server is gone: both go on, each is told what only it has', async () => {
    await server.stop('SIGKILL');
    await type(page, 'A3 wire diameter', '1.012');
    await type(other, 'G5 wire diameter', '0.903');
    await type(other, 'A3 wire diameter', '1.009');
    await expect(page.getByRole('button', { name: '1 entry only here' })).toBeVisible();
    await expect(other.getByRole('button', { name: '2 entries only here' })).toBeVisible();
  });

  await test.step('a reload without the server, in the middle of typing, keeps what was kept', async () => {
    await cell(page, 'G#5 wire diameter').fill('0.9');
    await page.reload();
    await expect(page.getByRole('heading', { name: /invented grand/i })).toBeVisible();
    await expect(cell(page, 'A3 wire diameter')).toHaveValue('1.012');
    await expect(cell(page, 'G5 wire diameter')).toHaveValue('');
    await expect(page.getByRole('button', { name: '1 entry only here' })).toBeVisible();
  });

  await test.step('the server is back: both have both', async () => {
    await server.start();
    for (const device of [page, other]) {
      await expect(device.getByRole('button', { name: 'All sent' })).toBeVisible({ timeout: 60_000 });
    }
    await expect(cell(page, 'G5 wire diameter')).toHaveValue('0.903', { timeout: 60_000 });
    const after = await entriesOnServer(page, server);
    expect(after.length).toBe(before + 3);
    expect(new Set(after.map(({ id }) => id)).size).toBe(after.length);
  });

  await test.step('undo is a withdrawal, and reaches the other device', async () => {
    await type(other, 'G#6 wire diameter', '0.84');
    await expect(cell(page, 'G#6 wire diameter')).toHaveValue('0.84', { timeout: 60_000 });
    await other.getByRole('button', { name: /^Undo/ }).click();
    await expect(cell(other, 'G#6 wire diameter')).toHaveValue('');
    await expect(cell(page, 'G#6 wire diameter')).toHaveValue('', { timeout: 60_000 });
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
  await cell(page, 'G5 wire diameter').pressSequentially('0.9');
  await page.close({ runBeforeUnload: false });

  const again = await context.newPage();
  await again.goto(server.url);
  await again.getByRole('link', { name: /invented grand/i }).click();
  await expect(cell(again, 'A3 wire diameter')).toHaveValue('1.011');
  await expect(cell(again, 'G5 wire diameter')).toHaveValue('');
});
