import type { Page } from '@playwright/test';
import { expect } from './server.ts';

/** Opens the demo piano on this device and waits until its record is there. */
export async function openDemo(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('button', { name: 'Open the demo job' }).first().click();
  await expect(page.getByRole('navigation', { name: 'Parts of Record' })).toBeVisible();
}

/** Goes to a part of Record. */
export const goTo = (page: Page, part: string) =>
  page
    .getByRole('navigation', { name: 'Parts of Record' })
    .getByRole('link', { name: part, exact: true })
    .click();
