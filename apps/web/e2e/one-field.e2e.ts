import type { Page } from '@playwright/test';
import { axe, levels } from './axe.ts';
import { fieldOf, gridCell, holds } from './grid-field.ts';
import { entriesOnServer, seedJob } from './seed-job.ts';
import { expect, test } from './server.ts';

const readBack = (page: Page) => page.locator('.read-back-words');

/** How far the field lies from the cell that it belongs to, and whether it is as large, in CSS pixels. */
const awayFromItsCell = (page: Page, cell: string) =>
  page.evaluate((id) => {
    const field = document.querySelector('.cell-field .cell')!.getBoundingClientRect();
    const words = document.getElementById(id)!.getBoundingClientRect();
    const sides = ['left', 'top', 'right', 'bottom'] as const;
    return Math.max(...sides.map((side) => Math.abs(field[side] - words[side])));
  }, cell);

/** Gives a field the focus once: the driver's own way does so twice. */
const meet = (page: Page, name: string) =>
  page.getByRole('textbox', { name }).evaluate((element: HTMLElement) => element.focus());

test('one field serves the whole grid, and goes where its cell goes', async ({ page, server }) => {
  const job = await seedJob(server, 'One field');
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.goto(`${server.url}/#/job/${job}/record`);
  const field = await fieldOf(page, 'C4 wire diameter');

  await test.step('the focus stays in it while it goes on, and the cell it left says what was typed', async () => {
    await field.evaluate((element) => element.setAttribute('data-mark', 'first'));
    await page.keyboard.type('0,95');
    await page.keyboard.press('Enter');
    await expect(page.locator('[data-mark="first"]')).toBeFocused();
    await expect(page.locator('[data-mark="first"]')).toHaveAccessibleName('C#4 wire diameter');
    await holds(page, 'C4 wire diameter', '0.95');
    await expect(gridCell(page, 'C4 wire diameter')).toHaveCount(1);
    await expect(page.getByText('C#4 wire diameter', { exact: true })).toHaveAttribute('role', 'status');
  });

  await test.step('the keys of a screen for the field before and after lead to the cell before and after', async () => {
    await page.keyboard.type('0.96');
    await meet(page, 'to the next cell');
    await expect(page.locator('[data-mark="first"]')).toBeFocused();
    await expect(page.locator('[data-mark="first"]')).toHaveAccessibleName('D4 wire diameter');
    await expect(readBack(page)).toContainText('Kept: C#4 wire diameter');
    await meet(page, 'to the cell before');
    await expect(page.locator('[data-mark="first"]')).toHaveAccessibleName('C#4 wire diameter');
    await expect(page.locator('[data-mark="first"]')).toHaveValue('0.96');
    await page.keyboard.press('Enter');
  });

  await test.step('what is refused stays in its cell, marked, until it is put right', async () => {
    await page.keyboard.type('0.9.5');
    await page.keyboard.press('Enter');
    await expect(readBack(page)).toContainText('Not kept: D4 wire diameter');
    await holds(page, 'D4 wire diameter', '0.9.5');
    const refused = page.locator('[data-row="42"] [data-refused]');
    await expect(refused).toHaveCount(1);
    await page.keyboard.press('ArrowUp');
    await expect(page.locator('[data-mark="first"]')).toHaveValue('0.9.5');
    await expect(page.locator('[data-mark="first"]')).toHaveAccessibleDescription(/was refused/);
    await page.keyboard.press('Escape');
    await expect(page.locator('[data-mark="first"]')).toHaveValue('');
    await page.keyboard.type('0.95');
    await page.keyboard.press('Enter');
    await expect(readBack(page)).toContainText('Kept: D4 wire diameter');
    await expect(refused).toHaveCount(0);
  });

  await test.step('it lies over its cell when questions come above it, on another width, and far down', async () => {
    await (await fieldOf(page, 'E3 speaking length')).fill('85.1');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('button', { name: /^It is 8/ })).toBeVisible();
    await expect.poll(() => awayFromItsCell(page, 'cell-33-speaking-length')).toBeLessThan(0.6);
    await page.setViewportSize({ width: 412, height: 700 });
    await expect.poll(() => awayFromItsCell(page, 'cell-33-speaking-length')).toBeLessThan(0.6);
    await page.setViewportSize({ width: 820, height: 700 });
    for (let key = 33; key < 51; key += 1) await page.keyboard.press('Enter');
    await expect.poll(() => awayFromItsCell(page, 'cell-51-speaking-length')).toBeLessThan(0.6);
  });

  await test.step('with the field over a cell the grid holds to WCAG 2.2 AA', async () => {
    const { violations } = await axe(page).include('.grid-frame').withTags(levels).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  });

  await test.step('an answer stands for what was typed, which is not kept', async () => {
    await (await fieldOf(page, 'B4 speaking length')).fill('123');
    await page.getByRole('button', { name: 'Unknown' }).click();
    await expect(readBack(page)).toContainText('Kept: B4 speaking length');
    await expect(readBack(page)).toContainText('unknown');
  });

  await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
  const kept = (await entriesOnServer(server, job)).flatMap(({ fact }) => {
    const { kind, place, asRead, answer } = fact as {
      kind: string;
      place?: { key: number };
      asRead?: { value: number };
      answer?: string;
    };
    return place !== undefined && place.key >= 40 ? [[kind, place.key, asRead?.value ?? answer]] : [];
  });
  expect(kept).toEqual([
    ['reading', 40, 0.95],
    ['reading', 41, 0.96],
    ['reading', 42, 0.95],
    ['reading-absent', 51, 'unknown'],
  ]);
});
