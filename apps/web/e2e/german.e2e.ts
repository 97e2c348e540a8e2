import type { Page } from '@playwright/test';
import { places } from './places.ts';
import { expect, test } from './server.ts';

/** Every text a page shows or speaks, each once: its text nodes, and the attributes that are read out or stand in fields. */
async function textsOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const texts = new Set<string>();
    const take = (text: string | null) => {
      const words = (text ?? '').replace(/\s+/g, ' ').trim();
      if (words !== '') texts.add(words);
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
      if (!['SCRIPT', 'STYLE', 'NOSCRIPT'].includes(node.parentElement?.tagName ?? ''))
        take(node.textContent);
    for (const element of document.querySelectorAll('*'))
      for (const name of ['aria-label', 'aria-valuetext', 'aria-description', 'title', 'placeholder', 'alt'])
        take(element.getAttribute(name));
    return [...texts];
  });
}

/** Everything people wrote into the job themselves, which no language changes: the texts under these names in its journal. */
const ownNames = new Set(
  'title customer maker model serialNumber section point what note because shows by device instrument name bridge bridges label text strut thing of whose source supplier colour material kind condition conditions ifFound unit'.split(
    ' ',
  ),
);

function ownTexts(value: unknown, name = ''): string[] {
  if (typeof value === 'string') return ownNames.has(name) ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((one) => ownTexts(one, name));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, one]) => ownTexts(one, key));
  return [];
}

/** Words that are the same in both languages: names, units, formats, note names. */
const same =
  /^(Becket|Deutsch|English|Agraffe|Tenor|Bass|Letter|Name|Position|Text|PDF|CSV|Limit|Layer|Material|Version|Status|Wind|Mensur|Rest|Ton|Radius|Index|Journal|kN|lbf)$/;

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
  const own = [...new Set(ownTexts(journal))].sort((a, b) => b.length - a.length);
  const english = new Set([...inEnglish.values()].flat());
  const isWord = (text: string) => {
    let rest = text;
    for (const one of own) rest = rest.replaceAll(one, ' ');
    return rest
      .split(/[^A-Za-zÀ-ž]+/)
      .some((word) => /[a-z]{3,}/.test(word) && !same.test(word) && !/^(mm|lbf|kgf|cent)$/.test(word));
  };
  const left: Record<string, string[]> = {};
  for (const [address, texts] of inGerman) {
    const found = texts.filter((text) => english.has(text) && isWord(text));
    if (found.length > 0) left[address.replace(String(job), '…')] = found;
  }
  expect(left).toEqual({});
  await context.close();
});
