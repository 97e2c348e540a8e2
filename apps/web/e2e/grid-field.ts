import type { Locator, Page } from '@playwright/test';
import { expect } from './server.ts';

/** A cell of the grid by its name: a field, or in a row far from the screen the words that stand for it. */
export const gridCell = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name, exact: true });

/** Goes to a cell of the grid, which has its field by then. */
export async function fieldOf(page: Page, name: string): Promise<Locator> {
  const field = page.locator('input').and(gridCell(page, name));
  await expect(async () => {
    await gridCell(page, name).focus();
    await expect(field).toBeFocused({ timeout: 1000 });
  }).toPass();
  return field;
}
