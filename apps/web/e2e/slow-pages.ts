import type { Browser, BrowserContext, Page } from '@playwright/test';

/** How many times slower than this machine every page runs: 1 unless `BECKET_SLOW` says otherwise. */
export function slownessOf(env: Record<string, string | undefined>): number {
  const asked = env.BECKET_SLOW ?? '';
  const times = asked === '' ? 1 : Number(asked);
  if (!Number.isFinite(times) || times < 1)
    throw new RangeError(
      `Cannot slow the pages down: BECKET_SLOW needs how many times slower, such as 4; '${asked}' was found.`,
    );
  return times;
}

async function slowDown(page: Page, times: number): Promise<void> {
  const client = await page.context().newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: times });
}

/**
 * Makes every page of this browser run as on a device that is so many times slower, from before its first address.
 *
 * The browser slows the page itself down; workers, the store and the server stay as fast as the machine.
 */
export function slowEveryPage(browser: Browser, times: number): void {
  const slowIn = (context: BrowserContext) => {
    const newPage = context.newPage.bind(context);
    context.newPage = async () => {
      const page = await newPage();
      await slowDown(page, times);
      return page;
    };
  };
  const newContext = browser.newContext.bind(browser);
  browser.newContext = async (options) => {
    const context = await newContext(options);
    slowIn(context);
    return context;
  };
}
