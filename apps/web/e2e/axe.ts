import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** WCAG 2.2 at level AA and everything below it. */
export const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/**
 * A look at the page by the rules of accessibility, of which only what is broken is wanted.
 *
 * Described in full are the elements that break a rule alone, not the thousands that hold to it; and the page is looked at as a
 * whole, without a second page to put the frames of other sites together: it has none. On the grid of the record that takes a
 * fifth of the time, and finds the same.
 */
export function axe(page: Page): AxeBuilder {
  return new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode(true);
}
