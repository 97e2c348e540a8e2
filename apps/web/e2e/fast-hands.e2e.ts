import { foldSettling, isKnownFact } from '@becket/journal';
import type { Locator, Page } from '@playwright/test';
import { fieldOf, holds } from './grid-field.ts';
import { entriesOnServer, seedJob } from './seed-job.ts';
import { expect, test } from './server.ts';

/** A double click before the first of the two could do anything, however fast the machine is. */
const pressTwice = (button: Locator) =>
  button.evaluate((element: HTMLElement) => {
    element.click();
    element.click();
  });

/**
 * Types each value where the focus is by then, with Enter, before anything that was typed could be kept: between two of them
 * the page may draw, and no message of the device's store comes in.
 */
async function typeAhead(page: Page, values: readonly string[]): Promise<void> {
  await page.evaluate(async (all) => {
    const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
    for (const value of all) {
      const field = document.activeElement as HTMLInputElement;
      setValue.call(field, value);
      field.dispatchEvent(new Event('input', { bubbles: true }));
      await Promise.resolve();
      const isTaken = !field.dispatchEvent(
        new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }),
      );
      // As the browser does where the page has no use for the key itself.
      if (!isTaken) field.form?.requestSubmit();
      await Promise.resolve();
    }
  }, values);
}

async function introduce(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
}

test('a button that is pressed twice keeps one entry', async ({ page, server }) => {
  await introduce(page, server.url);
  await page.getByLabel('Title').fill('A grand on trestles');
  await page.getByText('grand', { exact: true }).click();
  await page.getByLabel('Lowest note').fill('A0');
  await page.getByLabel('Highest note').fill('C8');
  await pressTwice(page.getByRole('button', { name: 'Open the job' }));
  await expect(page.getByRole('heading', { name: 'A grand on trestles' })).toBeVisible();
  const job = /#\/job\/([^/]+)/.exec(page.url())![1]!;
  const goTo = (place: string) => page.goto(`${server.url}/#/job/${job}/${place}`);

  await test.step('a form', async () => {
    await goTo('settle/follow-ups');
    await page.getByLabel('On', { exact: true }).fill('2031-03-04');
    await pressTwice(page.getByRole('button', { name: 'Plan it' }));
    await expect(page.getByText(/^○ tuning,/)).toHaveCount(1);
    await expect(page.getByRole('alert')).toHaveCount(0);
  });

  await test.step('a button of its own', async () => {
    await goTo('appraise/survey');
    await pressTwice(page.getByRole('button', { name: 'Sound', exact: true }).first());
    await expect(page.getByRole('button', { name: '✓ Sound' })).toHaveCount(1);
  });

  await test.step('a sheet above the page', async () => {
    await goTo('record/instruments');
    await page.getByRole('button', { name: 'Describe an instrument' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Its name in the shop').fill('micrometer 1');
    await sheet.getByLabel('Smallest step').fill('0.01');
    await pressTwice(sheet.getByRole('button', { name: 'Keep the instrument' }));
    await expect(sheet).toBeHidden();
    await expect(page.getByText('micrometer 1 shows')).toHaveCount(1);
  });

  await test.step('a form for one value after the other', async () => {
    await goTo('appraise/torque');
    await page.getByLabel(/^Torque \(/).fill('96');
    await pressTwice(page.getByRole('button', { name: 'Keep and go on' }));
    await expect(page.getByText(/^Kept: /)).toContainText('96 in·lbf');
    await expect(page.getByRole('alert')).toHaveCount(0);
  });

  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  const jobs = (await (await page.request.get(`${server.url}/jobs`)).json()) as { jobs: unknown[] };
  expect(jobs.jobs).toHaveLength(1);
  const kinds = (await entriesOnServer(server, job)).map(({ fact }) => fact.kind);
  for (const kind of ['follow-up-planned', 'finding', 'instrument-described', 'reading'])
    expect(kinds.filter((one) => one === kind)).toEqual([kind]);
});

test('values typed faster than they are kept go each to its own place', async ({ page, server }) => {
  const job = await seedJob(server, 'Fast hands');
  await introduce(page, server.url);

  await test.step('a pass, from its first step to its last', async () => {
    await page.goto(`${server.url}/#/job/${job}/settle`);
    await page.getByLabel('Relative humidity (%)').press('Enter');
    await expect(page.getByRole('textbox', { name: 'low cents' })).toBeFocused();
    await typeAhead(page, ['-60', '-40', '8', '2', '8', '1']);
    await expect(page.getByText('Every section was left: pass 1 is finished.')).toBeVisible();
    // The last one is where it was typed, and the hand with it.
    await expect(page.getByRole('textbox', { name: 'high cents' })).toBeFocused();
    await expect(page.getByRole('textbox', { name: 'high cents' })).toHaveValue('1');
  });

  await test.step('torque, pin after pin', async () => {
    await page.goto(`${server.url}/#/job/${job}/appraise/torque`);
    await page.getByLabel(/^Torque \(/).focus();
    await typeAhead(page, ['142', '92', '150']);
    await expect(page.getByText(/^Kept: /)).toContainText('150 in·lbf');
    await expect(page.getByLabel(/^Torque \(/)).toHaveValue('');
  });

  await test.step('on the server stands what was typed, once each', async () => {
    await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
    const entries = await entriesOnServer(server, job);
    const [pass] = foldSettling(entries).passes;
    const offsets = (step: 'before' | 'aimed' | 'after') =>
      pass!.sections.map((section) => section[step].map(({ offset_cents }) => offset_cents));
    expect([offsets('before'), offsets('aimed'), offsets('after')]).toEqual([
      [[-60], [-40]],
      [[8], [2]],
      [[8], [1]],
    ]);
    expect(entries.filter(({ fact }) => fact.kind === 'pass-read')).toHaveLength(6);
    const torques = entries.flatMap(({ fact }) =>
      isKnownFact(fact) && fact.kind === 'reading' && fact.quantity === 'pin-torque'
        ? [[fact.place.key, fact.asRead.value]]
        : [],
    );
    expect(torques.map(([, value]) => value)).toEqual([142, 92, 150]);
    expect(new Set(torques.map(([key]) => key)).size).toBe(3);
  });
});

test('what is typed into a finding stays there when its photo is kept meanwhile', async ({
  page,
  server,
}) => {
  const job = await seedJob(server, 'A finding');
  await introduce(page, server.url);
  await page.goto(`${server.url}/#/job/${job}/appraise/survey`);
  // A note is being looked at, as it is after any work on it.
  await page.getByRole('slider', { name: /^Drawn plan/ }).press('Home');
  await expect(page.getByRole('region', { name: /^String card/ })).toBeVisible();
  await page.getByRole('button', { name: 'Something seen' }).first().click();
  const form = page.getByRole('form', { name: /^Finding/ });
  await form.getByLabel('Near note').fill('C4');
  await form.getByLabel('Choose photos').setInputFiles({
    name: 'bridge.png',
    mimeType: 'image/png',
    buffer: Buffer.from(
      'iVBORw0KGgoAAAANSUhEUgAAAAIAAAACCAIAAAD91JpzAAAAEElEQVR4nGPYkGAARAwQCgAlDgUBU5bxwAAAAABJRU5ErkJggg==',
      'base64',
    ),
  });
  await expect(form.getByText('The photo is kept on this device.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  await expect(form.getByLabel('Near note')).toHaveValue('C4');
});

test('a value taken back at once does not stand on in its cell', async ({ page, server }) => {
  const job = await seedJob(server, 'Second thoughts');
  await introduce(page, server.url);
  await page.goto(`${server.url}/#/job/${job}/record`);
  await expect(await fieldOf(page, 'C4 wire diameter')).toHaveValue('');
  // Both keys before anything could be kept or drawn.
  await page.evaluate(async () => {
    const typed = document.activeElement as HTMLInputElement;
    typed.value = '0.95';
    const press = (at: Element, init: KeyboardEventInit) =>
      at.dispatchEvent(new KeyboardEvent('keydown', { bubbles: true, cancelable: true, ...init }));
    press(typed, { key: 'Enter' });
    await Promise.resolve();
    press(document.activeElement!, { key: 'z', ctrlKey: true });
  });
  await expect(page.locator('.read-back-words')).toContainText('Taken back: C4 wire diameter');
  await holds(page, 'C4 wire diameter', '');
});
