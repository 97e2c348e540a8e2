import type { Page } from '@playwright/test';
import { axe, levels } from './axe.ts';
import { expect, test } from './server.ts';

/** Opens the demo piano on this device and goes to Scale. */
async function openScale(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('button', { name: 'Open the demo job' }).first().click();
  await expect(page.getByRole('navigation', { name: 'Parts of Record' })).toBeVisible();
  await page
    .getByRole('navigation', { name: 'Tasks of this job' })
    .getByRole('link', { name: 'Scale' })
    .click();
}
const goTo = (page: Page, part: string) =>
  page
    .getByRole('navigation', { name: 'Parts of Scale' })
    .getByRole('link', { name: part, exact: true })
    .click();

/** What the page breaks of WCAG 2.2 AA, as the tool sees it. */
async function violations(page: Page): Promise<string[]> {
  const found = await axe(page).include('#place').withTags(levels).analyze();
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`);
}

test('a scale is computed, nudged, kept, compared, chosen, heard without a network, and laid out in loops', async ({
  page,
  server,
}) => {
  await openScale(page, server.url);
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));

  await test.step('several answers, from kept to smooth', async () => {
    await goTo(page, 'Propose');
    await page.getByRole('button', { name: 'Compute scales' }).click();
    await expect(page.getByRole('button', { name: /^as it was, tidied/ })).toBeVisible({ timeout: 100_000 });
    const smooth = page.getByRole('button', { name: /^as smooth as it goes/ });
    await smooth.click();
    await expect(smooth).toHaveAttribute('aria-pressed', 'true');
    await expect(page.getByText(/^Proved: of all the strings that were offered/)).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Draft, from “as smooth as it goes”' })).toBeVisible();
    expect(await violations(page)).toEqual([]);
  });

  await test.step('one note a size thicker pulls harder at once', async () => {
    const chart = page.getByRole('slider', { name: /How hard does each string pull/ });
    await chart.focus();
    // From the lowest note up to a plain one.
    for (let octave = 0; octave < 4; octave += 1) await page.keyboard.press('PageUp');
    await page.keyboard.press('PageUp');
    const note = page.getByRole('region', { name: / in the draft$/ });
    const tension = async () =>
      Number(/(\d+) (?:N|lbf)/.exec((await note.getByRole('status').textContent()) ?? '')?.[1]);
    const before = await tension();
    await note.getByRole('button', { name: 'one size thicker' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(tension).toBeGreaterThan(before);
  });

  await test.step('kept, compared and chosen with a reason', async () => {
    await page.getByLabel('Name of this proposal').fill('smoother tenor');
    await page.getByRole('button', { name: 'Keep this as a proposal' }).click();
    await expect(page.getByRole('heading', { name: 'Compare', exact: true })).toBeVisible();
    await expect(page.getByLabel('After', { exact: true })).toHaveValue(/.{26}/);
    await expect(page.getByText(/notes of \d+ get another size/)).toBeVisible();
    await expect(page.getByRole('table').filter({ hasText: 'all strings' })).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await goTo(page, 'Propose');
    await page.getByRole('button', { name: 'Choose “smoother tenor”' }).click();
    await expect(page.getByRole('button', { name: 'Choose it' })).toBeDisabled();
    await page.getByLabel('Why').fill('evener across the break');
    await page.getByRole('button', { name: 'Choose it' }).click();
    await expect(page.getByText(/Chosen for stringing: smoother tenor/)).toBeVisible();
  });

  await test.step('heard by keys alone, offline', async () => {
    await page.context().setOffline(true);
    await goTo(page, 'Hear');
    const a = page.getByRole('button', { name: 'A as found' });
    const b = page.getByRole('button', { name: 'B smoother tenor' });
    await a.focus();
    await page.keyboard.press('b');
    await expect(b).toHaveAttribute('aria-pressed', 'true');
    await page.keyboard.press('a');
    await expect(a).toHaveAttribute('aria-pressed', 'true');
    await expect(b).toHaveAttribute('aria-pressed', 'false');
    await page.keyboard.press('s');
    await expect(a).toHaveAttribute('aria-pressed', 'false');
    await expect(page.getByText(/Turn the volume down/)).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.context().setOffline(false);
  });

  await test.step('loops with the fewest tied strings, and a cut list', async () => {
    await goTo(page, 'Loops and cuts');
    await expect(page.getByText(/plain wires, of which \d+ tied/)).toBeVisible();
    await page.getByText('Cut list of tenor').click();
    await expect(
      page.getByRole('region', { name: 'Cut list of tenor' }).getByRole('row').nth(1),
    ).toContainText(/\d{3,4}\.\d/);
    expect(await violations(page)).toEqual([]);
  });
});

test('the load of one bridge can be limited, and the one that nothing keeps is named', async ({
  page,
  server,
}) => {
  await openScale(page, server.url);
  await goTo(page, 'Propose');
  await page.getByText('What counts, and what no scale may break').click();
  await page.getByText('Highest load of single bridges and sections').click();
  await page.getByRole('button', { name: 'No bridge above as found' }).click();
  const bridges = page.getByLabel(/^Bridge “.*”, highest load \(kN\)$/);
  expect(Number(await bridges.last().inputValue())).toBeGreaterThan(10);
  expect(await violations(page)).toEqual([]);
  await bridges.last().fill('5');
  await page.getByRole('button', { name: 'Compute scales' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'cannot be kept' })).toContainText(
    /5\.0 kN is allowed/,
    {
      timeout: 60_000,
    },
  );
  await page.getByText('choose anew', { exact: true }).click();
  await expect(page.getByRole('group', { name: 'Wound strings may stand on' })).toBeVisible();
});

test('planning can be stopped, and limits that clash are named', async ({ page, server }) => {
  await openScale(page, server.url);
  await goTo(page, 'Propose');
  await page.getByText('What counts, and what no scale may break').click();
  await page.getByText('choose anew', { exact: true }).click();
  await page.getByRole('button', { name: 'Compute scales' }).click();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(page.getByText('Stopped. Nothing was changed.')).toBeVisible();

  // By hand: one note far too thick, pinned, leaves nothing that fits.
  await page.getByText('keep as found', { exact: true }).click();
  await page.getByRole('button', { name: 'Start by hand from as found' }).click();
  await page.getByRole('slider', { name: /How hard does each string pull/ }).focus();
  for (let octave = 0; octave < 6; octave += 1) await page.keyboard.press('PageUp');
  const note = page.getByRole('region', { name: / in the draft$/ });
  for (let size = 0; size < 9; size += 1)
    await note.getByRole('button', { name: 'one size thicker' }).click();
  await note.getByRole('checkbox').check();
  await page.getByRole('button', { name: 'Compute scales' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'pinned' })).toContainText(/breaks the highest/, {
    timeout: 60_000,
  });
});
