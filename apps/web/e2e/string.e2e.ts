import { expect, type Page } from '@playwright/test';
import { entriesOnServer, seedJob } from './seed-job.ts';
import { test } from './server.ts';

/** The card of the wire that goes on next, by the strings it serves. */
const card = (page: Page, strings: string) => page.getByRole('region', { name: strings, exact: true });

test('wires are ticked off with one key, one breaks and is strung again, and undo takes the last one back', async ({
  page,
  server,
}) => {
  const job = await seedJob(server, 'Stringing in the back room');
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.goto(`${server.url}/#/job/${job}/string`);

  await test.step('the first wire is told with its size, its cut length and how it lies', async () => {
    // By hand: twelve notes of three strings are 36, two to a wire: 18 wires; of the upper section nothing is read.
    await expect(page.getByText('0 of 18 wires are on')).toBeVisible();
    const first = card(page, 'C3 / 1 – C3 / 2');
    await expect(first).toContainText('1.075 mm');
    await expect(first).toContainText('one wire round the hitch pin');
    await expect(first.getByRole('button', { name: 'It is on' })).toBeFocused();
  });

  await test.step('one key a wire: each is read back, and the next one stands there', async () => {
    await page.keyboard.press('Enter');
    await expect(card(page, 'C3 / 3 – C#3 / 1')).toBeVisible();
    await expect(page.getByText('On: C3 / 1 – C3 / 2')).toBeVisible();
    await page.keyboard.press('Enter');
    await expect(card(page, 'C#3 / 2 – C#3 / 3')).toBeVisible();
    await expect(page.getByText('2 of 18 wires are on')).toBeVisible();
  });

  await test.step('a wire left out comes back at the end, and can be wanted at once', async () => {
    await page.getByRole('button', { name: 'Leave it out for now' }).click();
    await expect(card(page, 'D3 / 1 – D3 / 2')).toBeVisible();
    await page.getByRole('button', { name: 'Next: C#3 / 2 – C#3 / 3' }).click();
    await expect(card(page, 'C#3 / 2 – C#3 / 3')).toBeVisible();
  });

  await test.step('a note that is chosen on the plan is wanted next', async () => {
    const plan = page.getByRole('slider', { name: 'Drawn plan of the strings: note' });
    await plan.focus();
    await page.keyboard.press('End');
    // Of the upper section nothing is read: its last note has no wire to string, and what was wanted stays.
    await expect(card(page, 'C#3 / 2 – C#3 / 3')).toBeVisible();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect(card(page, 'D3 / 1 – D3 / 2')).toBeVisible();
    await expect(plan).toBeFocused();
    await page.getByRole('button', { name: 'Next: C#3 / 2 – C#3 / 3' }).click();
  });

  await test.step('another size is kept as it is, and stands beside the plan', async () => {
    await page.getByText('Another size went on', { exact: true }).click();
    const size = page.getByLabel('Diameter of the wire (mm)');
    await size.fill('25');
    await size.press('Enter');
    await expect(page.getByText('Cannot keep this size: a diameter from 0.300 mm')).toBeVisible();
    await size.fill('1.05');
    await size.press('Enter');
    await expect(page.getByText('▲ 1.050 mm went on')).toBeVisible();
    await expect(page.getByText('3 of 18 wires are on')).toBeVisible();
  });

  await test.step('undo takes the last one back and wants it again', async () => {
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByText('2 of 18 wires are on')).toBeVisible();
    await expect(card(page, 'C#3 / 2 – C#3 / 3')).toBeVisible();
  });

  await test.step('a wire that breaks leaves both its strings bare; it is strung again', async () => {
    await page.getByText('Something went wrong with a wire', { exact: true }).click();
    const form = page.getByRole('form', { name: 'Something went wrong with a wire' });
    await form.getByLabel('Note', { exact: true }).fill('B3');
    await form.getByRole('button', { name: 'Note it' }).click();
    await expect(page.getByRole('alert')).toContainText('Cannot note that this wire came off');
    await form.getByLabel('Note', { exact: true }).fill('C3');
    await form.getByText('2', { exact: true }).click();
    await form.getByLabel('In words').fill('at the becket');
    await form.getByRole('button', { name: 'Note it' }).click();
    await expect(page.getByText('C3 / 2: broke, came off (at the becket)')).toBeVisible();
    await expect(page.getByText('1 of 18 wires are on')).toBeVisible();
    await page.getByRole('button', { name: 'Next: C3 / 1 – C3 / 2' }).click();
    const again = card(page, 'C3 / 1 – C3 / 2');
    await expect(again).toContainText('Once more: a wire came off here.');
    // A double click notes one wire, and not the one that has come to the same place by its second press.
    await again.getByRole('button', { name: 'It is on' }).dblclick();
    await expect(page.getByText('2 of 18 wires are on')).toBeVisible();
  });

  await test.step('all of it reaches the server, nothing twice', async () => {
    const kinds = async () =>
      (await entriesOnServer(server, job)).map(({ fact }) => fact.kind).filter((kind) => kind !== 'reading');
    await expect.poll(async () => (await kinds()).filter((kind) => kind === 'wire-on').length).toBe(4);
    expect((await kinds()).filter((kind) => kind === 'stringing-mishap')).toHaveLength(1);
    expect((await kinds()).filter((kind) => kind === 'withdrawn')).toHaveLength(1);
  });
});
