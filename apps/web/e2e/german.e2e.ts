import { places } from './places.ts';
import { expect, test } from './server.ts';
import { leftInEnglish, ownTexts, textsOf } from './words-on-page.ts';

test('in German, no place of the program keeps a word of English', async ({ browser, server }) => {
  test.setTimeout(400_000);
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('button', { name: 'Open the demo job' }).first().click();
  await page.getByRole('navigation', { name: 'Parts of Record' }).waitFor();
  const job = /#\/job\/([^/]+)/.exec(page.url())?.[1];
  const addresses = ['#/', '#/settings', ...places.map((place) => `#/job/${job}/${place}`)];

  async function visit(): Promise<Map<string, string[]>> {
    const texts = new Map<string, string[]>();
    for (const address of addresses) {
      await page.goto(`${server.url}/${address}`);
      await page.locator('#place').waitFor();
      await expect(page.getByText(/^(Opening …|Wird geöffnet …)$/)).toHaveCount(0);
      // Charts and lists follow when there is nothing more urgent.
      await page.waitForTimeout(400);
      texts.set(address, await textsOf(page));
    }
    return texts;
  }

  const inEnglish = await visit();
  await page.goto(`${server.url}/#/settings`);
  await page.getByText('Deutsch', { exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Einstellungen dieses Geräts');
  expect(await page.locator('html').getAttribute('lang')).toBe('de-DE');
  const inGerman = await visit();

  await expect
    .poll(async () => (await page.request.get(`${server.url}/jobs/${job}/entries`)).status())
    .toBe(200);
  const journal = (await (await page.request.get(`${server.url}/jobs/${job}/entries`)).json()) as unknown;
  const english = new Set([...inEnglish.values()].flat());
  const own = ownTexts(journal);
  const left: Record<string, string[]> = {};
  for (const [address, texts] of inGerman) {
    const found = leftInEnglish(texts, english, own);
    if (found.length > 0) left[address.replace(String(job), '…')] = found;
  }
  expect(left).toEqual({});
  await context.close();
});
