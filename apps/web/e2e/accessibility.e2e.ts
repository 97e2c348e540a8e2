import type { Page } from '@playwright/test';
import { axe, levels } from './axe.ts';
import { places } from './places.ts';
import { expect, test } from './server.ts';

/**
 * Targets that WCAG 2.2, 2.5.8 lets be smaller: links in a sentence (inline), and what the browser draws itself and a
 * label around it makes larger (equivalent). The cells of a drawing are reached through its own keys and its list.
 */
const mayBeSmaller = 'p a, li > a:not(.button), td a, dd a, [aria-hidden="true"] *, .unseen, .skip, svg *';

interface SmallTarget {
  readonly what: string;
  readonly width: number;
  readonly height: number;
}

/** Controls in sight whose smaller side is below the target of the look: 48 px, which is 12.7 mm at 96 px to the inch. */
async function smallTargets(page: Page): Promise<SmallTarget[]> {
  return page.evaluate((exceptions) => {
    const target = Number.parseFloat(getComputedStyle(document.documentElement).getPropertyValue('--target'));
    const controls = document.querySelectorAll<HTMLElement>(
      'button, a[href], input, select, textarea, summary, [role="button"], [role="slider"], [role="textbox"]',
    );
    return [...controls].flatMap((control) => {
      // A label that holds its control is a target with it.
      const whole = control.closest('label') ?? control;
      const { width, height } = whole.getBoundingClientRect();
      const isInSight = control.checkVisibility({ visibilityProperty: true }) && width > 0 && height > 0;
      if (!isInSight || control.matches(exceptions)) return [];
      // Half a pixel of the layout's own rounding.
      if (Math.min(width, height) >= target - 0.5) return [];
      const what = `${control.tagName.toLowerCase()}.${control.className} '${
        control.getAttribute('aria-label') ?? control.textContent?.trim().slice(0, 40) ?? ''
      }'`;
      return [{ what, width: Math.round(width), height: Math.round(height) }];
    });
  }, mayBeSmaller);
}

/**
 * True when a target that stood half under a bar at the edge of the screen is large enough once it is scrolled into the
 * middle: where a page happens to be scrolled to is no fault of it.
 */
async function isOnlyHalfScrolled(page: Page, target: string): Promise<boolean> {
  await page.locator(target).evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const { violations } = await axe(page).include(target).withRules(['target-size']).analyze();
  return violations.length === 0;
}

/** What is wrong where, in words that can be looked for. */
async function faultsOf(page: Page): Promise<string[]> {
  const { violations } = await axe(page).withTags(levels).analyze();
  const broken: string[] = [];
  for (const { id, help, nodes } of violations) {
    for (const { target, any } of nodes.slice(0, 8)) {
      const where = target.join(' ');
      const message = any[0]?.message ?? '';
      const isObscured = id === 'target-size' && message.includes('obscured');
      if (isObscured && (await isOnlyHalfScrolled(page, where))) continue;
      broken.push(`${id}: ${help}: ${where} ${message}`);
    }
  }
  const small = (await smallTargets(page)).map(
    ({ what, width, height }) => `target of ${width} × ${height} px: ${what}`,
  );
  return [...broken, ...[...new Set(small)].slice(0, 12)];
}

const screens = {
  phone: { width: 390, height: 844 },
  tablet: { width: 820, height: 1180 },
} as const;

for (const [screen, viewport] of Object.entries(screens)) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`every place holds to WCAG 2.2 AA, and its targets are 12 mm: ${screen}, ${colorScheme}`, async ({
      browser,
      server,
    }) => {
      test.setTimeout(400_000);
      const context = await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' });
      const page = await context.newPage();
      const faults: Record<string, string[]> = {};
      const look = async (place: string) => {
        const found = await faultsOf(page);
        if (found.length > 0) faults[place] = found;
      };
      await page.goto(server.url);
      await page.getByRole('heading', { name: 'Jobs' }).waitFor();
      await look('jobs');
      await page.getByLabel('Your name').fill('Ada');
      await page.getByRole('button', { name: 'Keep the name' }).click();
      await page.getByRole('button', { name: 'Open the demo job' }).first().click();
      await page.getByRole('navigation', { name: 'Parts of Record' }).waitFor();
      const job = /#\/job\/([^/]+)/.exec(page.url())?.[1];
      for (const place of places) {
        await page.goto(`${server.url}/#/job/${job}/${place}`);
        await page.locator('main#place').waitFor();
        await expect(page.getByText('Opening …')).toHaveCount(0);
        await look(place);
      }
      await page.goto(`${server.url}/#/settings`);
      await page.getByRole('heading', { name: 'Settings' }).waitFor();
      await look('settings');
      await context.close();
      expect(faults).toEqual({});
    });
  }
}
