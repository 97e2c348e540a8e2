import type { Locator, Page } from '@playwright/test';
import { expect } from './server.ts';

/** A cell of the grid by its name: the field where it is typed into, or else the words that stand for it. */
export const gridCell = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name, exact: true });

/** Goes to a cell of the grid, which has the field by then. */
export async function fieldOf(page: Page, name: string): Promise<Locator> {
  const field = page.locator('input').and(gridCell(page, name));
  await expect(async () => {
    await gridCell(page, name).focus();
    await expect(field).toBeFocused({ timeout: 1000 });
  }).toPass();
  return field;
}

/** Waits until a value stands there, in the field or in what stands for it. */
export const holds = (page: Page, name: string, value: string, within: { timeout?: number } = {}) =>
  expect
    .poll(
      () =>
        gridCell(page, name).evaluate((at) =>
          at instanceof HTMLInputElement ? at.value : (at.textContent ?? ''),
        ),
      within,
    )
    .toBe(value);
