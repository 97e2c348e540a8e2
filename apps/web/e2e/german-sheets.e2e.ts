import type { Page } from '@playwright/test';
import { makeLanguage } from '../../../packages/core/src/index.ts';
import { digestOf } from '../../../packages/journal/src/index.ts';
import { changedJournal, changePhotos } from '../../../packages/papers/src/testing/changed-job.ts';
import { german } from '../src/words/german.ts';
import { places } from './places.ts';
import { expect, test } from './server.ts';
import { beyondTheEdge, leftInEnglish, ownTexts, textsOf } from './words-on-page.ts';

type Say = (text: string, values?: Record<string, string | number>) => string;
const languages = {
  English: makeLanguage('en-GB').say as unknown as Say,
  Deutsch: makeLanguage('de-DE', german).say as unknown as Say,
};

interface Opening {
  readonly page: Page;
  readonly say: Say;
}
/** What a place shows only after a tap: where it is, below the job of a visit or the one with damage, and how it is opened. */
interface Hidden {
  readonly at: string;
  readonly job: 'demo' | 'damaged' | 'none';
  readonly open: (opening: Opening) => Promise<void>;
}

const button =
  (...words: string[]) =>
  async ({ page, say }: Opening) => {
    for (const one of words)
      await page
        .getByRole('button', { name: say(one) })
        .first()
        .click();
  };
const section = async ({ page }: Opening, name: string) =>
  page
    .getByRole('radio', { name: new RegExp(`^${name}, `) })
    .first()
    .check({ force: true });

const csv = (text: string) => ({ name: 'cells.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
const readings =
  'Note;Section;Strings;Wire (mm);Length (mm);Remark\nA4;tenor;3;0,98;400;\nA#4;tenor;3;thick;379;\nB4;tenor;3;41;36;rust\n';

const hidden: Readonly<Record<string, Hidden>> = {
  'a table of readings after its file': {
    at: 'record/table',
    job: 'demo',
    open: async ({ page, say }) => {
      await page.getByLabel(say('Choose a CSV file')).setInputFiles(csv(readings));
      await expect(page.getByRole('heading', { name: /cells\.csv/ })).toBeVisible();
    },
  },
  'an instrument': { at: 'record/instruments', job: 'demo', open: button('Describe an instrument') },
  'a section': { at: 'record/sections', job: 'demo', open: button('Add a section') },
  'a run of notes': { at: 'record/sections', job: 'demo', open: button('Describe a run of notes') },
  'the windings': {
    at: 'record/seen',
    job: 'demo',
    open: async (opening) => {
      await section(opening, 'bass');
      await button('Say a winding')(opening);
    },
  },
  'a reading of a place': {
    at: 'record/seen',
    job: 'demo',
    open: async (opening) => {
      await section(opening, 'bass');
      await button('Add a reading')(opening);
    },
  },
  'a bar of the plate': {
    at: 'record/seen',
    job: 'demo',
    open: async (opening) => {
      await section(opening, 'low treble');
      await button('Add a piece')(opening);
    },
  },
  'a felt': {
    at: 'record/seen',
    job: 'demo',
    open: async ({ page, say }) => {
      await page
        .locator('button', { hasText: new RegExp(`^${say('Measure')}$`) })
        .first()
        .click();
    },
  },
  'the wire of a loop': {
    at: 'record/loops',
    job: 'demo',
    open: async ({ page, say }) => {
      await page.getByRole('radio', { name: 'tenor', exact: true }).check({ force: true });
      await page.locator('.loop-string').last().click();
      await page.getByRole('button', { name: say('This wire') }).click();
    },
  },
  'a finding': { at: 'appraise/survey', job: 'demo', open: button('Something seen') },
  'the rule for pin sizes': { at: 'appraise/pins', job: 'demo', open: button('Change the rule') },
  'the answer to an estimate': {
    at: 'appraise/estimate',
    job: 'demo',
    open: async ({ page, say }) => {
      await page
        .getByRole('button', { name: say('Keep the answer to version {version}', { version: 1 }) })
        .click();
      await page.locator('summary').first().click();
    },
  },
  'an allowance of the shop': {
    at: 'order/stock',
    job: 'demo',
    open: async ({ page, say }) => {
      await page
        .locator('summary')
        .filter({ hasText: new RegExp(`^${say('Plain wire')}`, 'i') })
        .last()
        .click();
      await page
        .locator('button:visible', { hasText: new RegExp(`^${say('Change')}$`) })
        .first()
        .click();
    },
  },
  'goods received': { at: 'order/orders', job: 'demo', open: button('Goods received') },
  'a confirmation': { at: 'order/orders', job: 'demo', open: button('It was confirmed') },
  'damage after the strip': { at: 'record/after-strip', job: 'damaged', open: async () => {} },
  'a change order without its fields': {
    at: 'record/after-strip',
    job: 'damaged',
    open: button('Put it on the change order'),
  },
  'answers to a change order': { at: 'appraise/estimate', job: 'damaged', open: async () => {} },
  'the pages of a paper': {
    at: 'record/after-strip',
    job: 'damaged',
    open: async ({ page, say }) => {
      await page
        .getByRole('button', { name: say('Look at {words}', { words: say('Change order') }) })
        .click();
      await expect(page.getByRole('dialog').locator('canvas').first()).toBeVisible({ timeout: 120_000 });
    },
  },
  'what a photo shows, to be changed': {
    at: 'record/photos',
    job: 'damaged',
    open: async (opening) => {
      await opening.page.locator('main a img').first().click();
      await button('Change place or words')(opening);
    },
  },
  'a job file that is here already': {
    at: '',
    job: 'none',
    open: async ({ page, say }) => {
      const entries = changedJournal();
      const lines = entries.map((entry) => JSON.stringify(entry)).join('\n');
      await page.getByLabel(say('Bring in a job file')).setInputFiles({
        name: 'cut.jsonl',
        mimeType: 'application/jsonl',
        buffer: Buffer.from(lines.slice(0, -40)),
      });
      await expect(page.getByRole('alert')).toBeVisible();
    },
  },
  'this device and the server': {
    at: 'record/strip',
    job: 'demo',
    open: async ({ page }) => page.locator('.sign').click(),
  },
  'a cell that is refused': {
    at: 'record',
    job: 'demo',
    open: async ({ page }) => {
      await page.locator('[data-row="49"] [data-cell="speaking-length"]').click();
      const cell = page.locator('.cell-field .cell');
      await cell.fill('9999,5');
      await cell.press('Enter');
      await expect(page.locator('[data-read-back], [role="alert"], [role="status"]').first()).toBeVisible();
    },
  },
};

test('in German, no sheet and nothing behind a tap keeps a word of English, and nothing leaves a phone', async ({
  browser,
  server,
}) => {
  test.setTimeout(900_000);
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const ids = await prepare(page, server.url);

  async function visit(language: keyof typeof languages): Promise<Map<string, string[]>> {
    const say = languages[language];
    await page.goto(`${server.url}/#/settings`);
    await page.getByText(language, { exact: true }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(say('Settings of this device'));
    const texts = new Map<string, string[]>();
    for (const [name, { at, job, open }] of Object.entries(hidden)) {
      await test.step(`${language}: ${name}`, async () => {
        const address = job === 'none' ? '#/' : `#/job/${ids[job]}/${at}`;
        await page.goto(`${server.url}/${address}`);
        // A sheet of the place before is gone with its page.
        await page.reload();
        await page.locator('#place').waitFor();
        await expect(page.getByText(/^(Opening …|Wird geöffnet …)$/)).toHaveCount(0);
        await open({ page, say });
        await page.waitForTimeout(400);
        texts.set(name, await textsOf(page));
        if (language === 'Deutsch') {
          if (process.env.BECKET_PICTURES !== undefined)
            await page.screenshot({
              path: `${process.env.BECKET_PICTURES}/${name.replaceAll(' ', '-')}.png`,
            });
          expect.soft(await beyondTheEdge(page), name).toEqual([]);
        }
      });
    }
    return texts;
  }

  const inEnglish = await visit('English');
  const inGerman = await visit('Deutsch');
  const own: string[] = [...ownTexts(changedJournal()), readings];
  for (const job of [ids.demo, '0000000000000000000000SH0P'])
    own.push(...ownTexts(await (await page.request.get(`${server.url}/jobs/${job}/entries`)).json()));
  const english = new Set([...inEnglish.values()].flat());
  const left: Record<string, string[]> = {};
  for (const [name, texts] of inGerman) {
    const found = leftInEnglish(texts, english, [
      ...own,
      ...readings.split(/[;\n]/).filter((one) => one !== ''),
    ]);
    if (found.length > 0) left[name] = found;
  }
  expect(left).toEqual({});
  await context.close();
});

test('in German, nothing of any place leaves a phone', async ({ browser, server }) => {
  test.setTimeout(400_000);
  const context = await browser.newContext({ locale: 'de-DE', viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await page.goto(server.url);
  await page.getByLabel(languages.Deutsch('Your name, as it stands on every entry you make')).fill('Ada');
  await page.getByRole('button', { name: languages.Deutsch('Keep the name') }).click();
  await page
    .getByRole('button', { name: languages.Deutsch('Open the demo job') })
    .first()
    .click();
  await page.getByRole('navigation', { name: 'Teile von Aufnehmen' }).waitFor();
  const job = /#\/job\/([^/]+)/.exec(page.url())?.[1];
  const out: Record<string, string[]> = {};
  for (const place of ['#/', '#/settings', ...places.map((one) => `#/job/${job}/${one}`)]) {
    await page.goto(`${server.url}/${place}`);
    await page.locator('#place').waitFor();
    await expect(page.getByText('Wird geöffnet …')).toHaveCount(0);
    await page.waitForTimeout(400);
    const found = await beyondTheEdge(page);
    if (found.length > 0) out[place.replace(String(job), '…')] = found;
    if (process.env.BECKET_PICTURES !== undefined)
      await page.screenshot({
        path: `${process.env.BECKET_PICTURES}/at-${place.replaceAll('/', '-')}.png`,
        fullPage: true,
      });
  }
  expect(out).toEqual({});
  await context.close();
});

/** A demo job with an estimate and an order that was sent, and a sealed job with damage found after the strip. */
async function prepare(page: Page, url: string): Promise<{ demo: string; damaged: string; none: string }> {
  const entries = changedJournal();
  for (const bytes of changePhotos)
    await page.request.put(`${url}/blobs/${digestOf(bytes)}`, {
      data: Buffer.from(bytes),
      headers: { 'content-type': 'image/jpeg' },
    });
  const damaged = entries[0]!.job;
  expect((await page.request.post(`${url}/jobs/${damaged}/entries`, { data: { entries } })).ok()).toBe(true);
  await page.goto(url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('button', { name: 'Open the demo job' }).first().click();
  await page.getByRole('navigation', { name: 'Parts of Record' }).waitFor();
  const demo = /#\/job\/([^/]+)/.exec(page.url())![1]!;

  await page.goto(`${url}/#/job/${demo}/appraise/estimate`);
  await page.getByLabel('Hourly rate').fill('64');
  await page.getByLabel('Tax on labour (%)').fill('19');
  await page.getByLabel('Tax on materials (%)').fill('19');
  await page.getByRole('button', { name: 'Draft it from the job' }).click();
  for (;;) {
    const open = page.getByRole('group').filter({ hasText: '? ' });
    if ((await open.count()) === 0) break;
    await open
      .first()
      .getByRole('button', { name: /^Leave out/ })
      .click();
  }
  await page.getByRole('button', { name: 'Make version 1' }).click();
  await expect(page.getByRole('article', { name: 'Version 1' })).toBeVisible();

  await page.goto(`${url}/#/job/${demo}/order/stock`);
  await page.getByLabel('Supplier', { exact: true }).fill('Invented Wire');
  await page.getByLabel('Lead time, days').fill('10');
  await page
    .getByLabel('Price list, CSV')
    .setInputFiles(
      csv('article,kind,diameter_mm,sold_by,pack,pack_unit,price\nW-17,wire,0.991,coil,500,g,14.50\n'),
    );
  await expect(page.getByText(/article.* of Invented Wire (is|are) kept/)).toBeVisible();
  await page.goto(`${url}/#/job/${demo}/order`);
  await page.getByLabel('Needed on').fill('2031-03-20');
  await page.getByRole('button', { name: 'Draft the order to Invented Wire' }).click();
  await page.goto(`${url}/#/job/${demo}/order/orders`);
  await page.getByRole('button', { name: 'It was sent' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Keep it' }).click();
  await expect(page.getByRole('button', { name: 'Goods received' })).toBeVisible();
  return { demo, damaged, none: '' };
}
