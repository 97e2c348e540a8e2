import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { axe } from './axe.ts';
import { expect, test } from './server.ts';

/** The shop's journal, which no list of jobs shows. */
const SHOP = '0000000000000000000000SH0P';
const prices = `article,kind,diameter_mm,sold_by,pack,pack_unit,price
W-17,wire,0.991,coil,500,g,14.50
W-18,wire,1.041,coil,500,g,14.50
`;

async function openDemo(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('button', { name: 'Open the demo job' }).first().click();
  await expect(page.getByRole('navigation', { name: 'Parts of Record' })).toBeVisible();
  await page.getByRole('link', { name: 'Order', exact: true }).click();
}
const goTo = (page: Page, part: string) =>
  page
    .getByRole('navigation', { name: 'Parts of Order' })
    .getByRole('link', { name: part, exact: true })
    .click();

test('supplies are covered from the stock, bought from a price list, and come in', async ({
  page,
  server,
}) => {
  await openDemo(page, server.url);
  await expect(page.getByRole('heading', { name: 'What the job needs' })).toBeVisible();
  const wire = page.getByRole('listitem').filter({ hasText: 'Plain wire 0.991 mm' }).first();
  await expect(wire).toContainText('not counted');

  await test.step('a price list with a slip is refused in one sentence, and then kept', async () => {
    await goTo(page, 'Suppliers and stock');
    await page.getByLabel('Supplier', { exact: true }).fill('Invented Wire');
    await page.getByLabel('Lead time, days').fill('10');
    const file = page.getByLabel('Price list, CSV');
    const csv = (text: string) => ({ name: 'prices.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    await file.setInputFiles(csv(prices.replace('0.991', 'thin')));
    await expect(
      page.getByRole('region', { name: 'Suppliers' }).getByText(/Cannot read row 2 of prices.csv/),
    ).toBeVisible();
    await expect(page.getByText('No price list is kept yet.')).toBeVisible();
    await file.setInputFiles(csv(prices));
    await expect(page.getByText('2 articles of Invented Wire are kept.')).toBeVisible();
  });

  await test.step('what is counted is set aside for the job', async () => {
    const form = page.getByRole('form', { name: 'Note a stock movement' });
    await form.getByLabel('Diameter, mm').fill('0.991');
    await form.getByLabel('How much, grams').fill('500');
    await form.getByRole('button', { name: 'Note it' }).click();
    await expect(page.getByText('Noted: Plain wire 0.991 mm')).toBeVisible();
    await goTo(page, 'Supplies');
    await expect(wire).toContainText('nothing');
    await page.getByRole('button', { name: 'Set aside what the shelf has' }).click();
    await expect(wire).toContainText('set aside');
  });

  await test.step('the rest is ordered, sent, and comes', async () => {
    await page.getByLabel('Needed on').fill('2027-03-20');
    const card = page.getByRole('region', { name: 'To buy from Invented Wire' });
    // Ten days of lead time before 20 March.
    await expect(card).toContainText('order by 10 March 2027');
    await card.getByRole('button', { name: 'Draft the order to Invented Wire' }).click();
    await goTo(page, 'Orders');
    const order = page.getByRole('article', { name: 'Order to Invented Wire' });
    await expect(order).toContainText('drafted');
    await order.getByRole('button', { name: 'It was sent' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Keep it' }).click();
    await expect(order).toContainText('◔ sent');
    await order.getByRole('button', { name: 'Goods received' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'It is here' }).click();
    await expect(order).toContainText('● delivered');
    // Noted by a slip: taken back, and noted again.
    await order.getByRole('button', { name: 'That was a slip' }).click();
    await page.getByRole('dialog').getByLabel('Why').fill('it was another parcel');
    await page.getByRole('dialog').getByRole('button', { name: 'Take it back' }).click();
    await expect(order).toContainText('◔ sent');
    await order.getByRole('button', { name: 'Goods received' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'It is here' }).click();
    await expect(order).toContainText('● delivered');
  });

  await test.step('the shop is on the server, on another device, and among no jobs', async () => {
    await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
    const jobs = await (await page.request.get(`${server.url}/jobs`)).json();
    expect(JSON.stringify(jobs)).not.toContain(SHOP);
    const { entries } = await (await page.request.get(`${server.url}/jobs/${SHOP}/entries`)).json();
    expect(entries.length).toBeGreaterThanOrEqual(4);
    const other = await page.context().browser()!.newContext();
    const phone = await other.newPage();
    await openDemo(phone, server.url);
    await goTo(phone, 'Suppliers and stock');
    const shelf = phone.getByRole('listitem').filter({ hasText: 'Plain wire 0.991 mm' }).first();
    await expect(shelf).toContainText('500 g');
    await expect(shelf).toContainText('An invented grand');
    await other.close();
  });
});

test('the shop sets a figure of its own, sees what it does to this job, and takes it back', async ({
  page,
  server,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page, server.url);
  const wire = page.getByRole('group').filter({ hasText: 'Plain wire' }).first();
  const head = () => wire.locator('summary').first().textContent();
  await expect(wire.locator('summary').first()).toContainText(/\d g .* to buy/);
  const before = await head();

  await test.step('one group is open at a time, by touch and by key', async () => {
    const pins = page.locator('summary').filter({ hasText: /^Tuning pins/ });
    await expect(page.getByText('Plain wire 0.991 mm').first()).toBeHidden();
    await wire.locator('summary').first().click();
    await expect(page.getByText('Plain wire 0.991 mm').first()).toBeVisible();
    await pins.focus();
    await page.keyboard.press('Enter');
    await expect(page.getByText(/^Tuning pins \d/).first()).toBeVisible();
    await expect(page.getByText('Plain wire 0.991 mm').first()).toBeHidden();
  });

  await goTo(page, 'Suppliers and stock');
  await page
    .locator('summary')
    .filter({ hasText: /^Plain wire/ })
    .click();
  await page.getByRole('button', { name: 'Change: for spoilage' }).click();
  const sheet = page.getByRole('dialog', { name: 'Plain wire: for spoilage' });
  await sheet.getByLabel('Figure, %').fill('150');
  await sheet.getByRole('button', { name: 'Keep this figure' }).click();
  await expect(sheet.getByText(/a share from 0 to 100 % is needed, 150 was found/)).toBeVisible();
  await sheet.getByLabel('Figure, %').fill('30');
  await expect(sheet.getByRole('listitem').filter({ hasText: 'Plain wire 0.991 mm' })).toContainText('→');
  await sheet.getByRole('button', { name: 'Keep this figure' }).click();
  await expect(sheet.getByText(/where it comes from is needed/)).toBeVisible();
  await sheet.getByLabel('Where it comes from').fill('our last ten pianos');
  await sheet.getByRole('button', { name: 'Keep this figure' }).click();
  await expect(page.getByText('From: our last ten pianos. Set by Ada')).toBeVisible();

  await goTo(page, 'Supplies');
  await expect.poll(head).not.toBe(before);
  await expect(page.getByText('Wire: 30 % for spoilage')).toBeAttached();
  await goTo(page, 'Suppliers and stock');
  await page
    .locator('summary')
    .filter({ hasText: /^Plain wire/ })
    .click();
  await page.getByRole('button', { name: 'Take back: for spoilage' }).click();
  await expect(page.getByText('From: our last ten pianos')).toBeHidden();
  await goTo(page, 'Supplies');
  await expect.poll(head).toBe(before);
});

test('what the bass strings are ordered with is seen where they are, changed, and taken back', async ({
  page,
  server,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page, server.url);
  await goTo(page, 'Bass strings');
  const digest = () => page.getByText(/^Digest of these strings/).textContent();
  const before = await digest();
  await page
    .locator('summary')
    .filter({ hasText: /^Bass strings to be ordered/ })
    .click();
  const eye = page.getByRole('listitem').filter({ hasText: 'for the eye of each pin' });
  await expect(eye).toContainText('12.000 mm');
  await expect(eye).toContainText('From: our own starting figures');
  await expect(page.getByRole('listitem').filter({ hasText: 'coils on each pin' })).toContainText(
    'From: common practice, no source',
  );
  await page.getByRole('button', { name: 'Change: coils on each pin' }).click();
  const sheet = page.getByRole('dialog', { name: 'Bass strings to be ordered: coils on each pin' });
  await sheet.getByLabel('Figure').fill('4');
  await expect(sheet.getByText(/^Core beyond the front termination, \d+ strings; .* → /)).toBeVisible();
  await sheet.getByLabel('Where it comes from').fill('our string maker');
  await sheet.getByRole('button', { name: 'Keep this figure' }).click();
  await expect(page.getByText('From: our string maker. Set by Ada')).toBeVisible();
  await expect.poll(digest).not.toBe(before);
  await page.getByRole('button', { name: 'Take back: coils on each pin' }).click();
  await expect.poll(digest).toBe(before);
});

test('a bass set is signed, ordered, and measured before it is strung', async ({ page, server }) => {
  await openDemo(page, server.url);
  await goTo(page, 'Bass strings');
  await expect(page.getByRole('heading', { name: 'String by string' })).toBeVisible();
  const draft = page.getByRole('button', { name: 'Draft the bass string order' });
  await page.getByLabel('Who makes the strings').fill('Invented Strings');
  await expect(draft).toBeDisabled();

  const form = page.getByRole('form', { name: 'Sign checks' });
  await form.getByRole('button', { name: 'Tick all' }).click();
  await form.getByLabel('Who answers for it').fill('Ada');
  await form.getByLabel('Why it is right all the same').fill('the old strings go along as patterns');
  await form.getByRole('button', { name: /^Sign \d+ checks$/ }).click();
  await expect(page.getByText('Every check passes or is signed.')).toBeVisible();
  await draft.click();
  await expect(page.getByText('The order is drafted.')).toBeVisible();

  await goTo(page, 'Orders');
  const order = page.getByRole('article', { name: 'Order to Invented Strings' });
  await order.getByRole('button', { name: 'It was sent' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Keep it' }).click();
  await order.getByRole('button', { name: 'Goods received' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'It is here' }).click();
  await expect(order).toContainText('● delivered');
  await expect(order).toContainText('Do not string this set yet');
  const measure = order.getByRole('form', { name: 'Measure a string' });
  await measure.getByLabel('String').selectOption('1/1');
  await measure.getByLabel('Reading, mm').fill('1.5');
  await measure.getByRole('button', { name: 'Keep the reading' }).click();
  await expect(order.getByText(/A0 string 1, core: 1\.500 mm .* Do not string it/)).toBeVisible();
  await order.getByRole('button', { name: 'Take it all the same' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Why', { exact: true }).fill('only to try this');
  await dialog.getByRole('button', { name: 'Take it by name' }).click();
  await expect(order.getByText('Taken by Ada: only to try this')).toBeVisible();

  await test.step('whoever strings is told which string may go on', async () => {
    await page.getByRole('link', { name: 'String', exact: true }).click();
    await page
      .getByRole('navigation', { name: 'Parts of String' })
      .getByRole('link', { name: 'Bass strings' })
      .click();
    const going = page.getByRole('region', { name: 'Bass strings: which may go on' });
    await expect(going).toContainText('▲ 1 of 50 ordered strings may go on.');
    const taken = going.getByRole('list', { name: 'Differs, and taken by name' });
    await expect(taken.getByRole('listitem')).toHaveText(/^A0 1 .* Taken by Ada: only to try this$/);
    await expect(
      going.getByRole('list', { name: 'Here, not measured yet' }).getByRole('listitem'),
    ).toHaveCount(49);
    await page.getByRole('link', { name: 'Order', exact: true }).click();
  });

  await goTo(page, 'Papers');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Bass string order, CSV' }).click();
  const csv = readFileSync(await (await coming).path(), 'utf8');
  expect(csv.split('\r\n')[0]).toContain('strings_digest_sha256');
  await page.getByRole('button', { name: 'Look at Bass string plan, 1:1' }).click();
  const plan = page.getByRole('dialog', { name: 'Bass string plan, 1:1' });
  await expect(plan.getByText(/^Page 1 of \d+\./)).toBeAttached();
});

test('every place of Order can be used by everybody, on a phone as well', async ({ page, server }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page, server.url);
  for (const part of ['Supplies', 'Bass strings', 'Orders', 'Suppliers and stock', 'Papers']) {
    await goTo(page, part);
    await expect(page.locator('#place').getByRole('heading').nth(1)).toBeVisible();
    if (part === 'Supplies') await expect(page.getByRole('heading', { name: 'What to buy' })).toBeVisible();
    const { violations } = await axe(page).include('#place').analyze();
    expect(violations.map(({ id, nodes }) => `${part}: ${id} ${nodes[0]?.html}`)).toEqual([]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  }
});
