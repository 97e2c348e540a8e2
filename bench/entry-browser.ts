/*
 * Readings typed into the real program in a real browser, and the time until the screen shows each of them kept.
 */
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from '@playwright/test';
import { BecketServer } from '../apps/web/e2e/server.ts';

/** What the page notes of one reading, in ms of its own clock. */
export interface EntryTimes {
  /** From the Enter key to the end of the page's work on the frame that shows the value read back. */
  readonly toPicture: number;
  /** From the Enter key to the end of the page's work on the frame that says that it is kept: it is on the disk by then. */
  readonly toKept: number;
  /** The time stamp of the key. */
  readonly pressed: number;
}

export interface EntryBrowser {
  readonly page: Page;
  /** Makes the page's processor so many times slower; 1 is as fast as it is. */
  slowDown(rate: number): Promise<void>;
  close(): Promise<void>;
}

/** The screens that readings are typed on, in CSS pixels; both are touched, so that no pointer rests on the page. */
export const screens = { tablet: { width: 820, height: 1180 }, phone: { width: 412, height: 915 } } as const;

/** A server of its own, built screens, one page on such a screen. */
export async function openEntryBrowser(screen: keyof typeof screens): Promise<EntryBrowser> {
  const server = new BecketServer();
  let browser: Browser | undefined;
  let context: BrowserContext;
  try {
    await server.start();
    browser = await chromium.launch({
      executablePath: process.env.BECKET_CHROMIUM ?? '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
    });
    context = await browser.newContext({ locale: 'en-IE', viewport: screens[screen], hasTouch: true });
  } catch (error) {
    await browser?.close();
    await server.stop();
    server.remove();
    throw error;
  }
  const page = await context.newPage();
  await page.addInitScript({ path: join(import.meta.dirname, 'entry-watch.js') });
  await page.goto(server.url);
  const devtools = await context.newCDPSession(page);
  return {
    page,
    slowDown: async (rate) => void (await devtools.send('Emulation.setCPUThrottlingRate', { rate })),
    async close() {
      await browser.close();
      await server.stop();
      server.remove();
    },
  };
}

/** Opens the demo piano and waits for its grid. */
export async function openDemoGrid(page: Page): Promise<void> {
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('button', { name: 'Open the demo job' }).first().click();
  await page.getByRole('table', { name: /Readings of the compass/ }).waitFor();
}

/** The least that could be asked of this browser: a page with one field and what is read back of it, and no program. */
export async function openPlainPage(page: Page): Promise<void> {
  await page.goto('about:blank');
  await page.evaluate(() => {
    document.body.innerHTML =
      '<input><p class="read-back" data-is="saved"><output class="read-back-value"></output></p>';
    const field = document.querySelector('input')!;
    const readBack = document.querySelector('output')!;
    field.addEventListener('keydown', ({ key }) => {
      if (key !== 'Enter') return;
      readBack.textContent = field.value;
      field.select();
    });
  });
}

/**
 * Types a value and Enter, and waits until the read-back says that it is kept.
 * What is timed is timed inside the page: driving it from here adds nothing to the figures.
 */
export async function enterReading(page: Page, text: string): Promise<EntryTimes> {
  await page.keyboard.type(text);
  await page.evaluate((expected) => window.entryWatch.expect(expected), text);
  await page.keyboard.down('Enter');
  const times = await page.evaluate(() =>
    Promise.race([
      window.entryWatch.shown(),
      new Promise<undefined>((resolve) => setTimeout(resolve, 20_000)),
    ]),
  );
  // A hand lets go of a key some 80 ms after it is down, and not within the frame of its picture.
  await page.keyboard.up('Enter');
  if (times === undefined)
    throw new Error(
      `Cannot time this reading: '${text}' was not read back within 20 s, but '${await page.locator('.read-back').textContent()}'. Look whether the value was refused, or stood there already.`,
    );
  return times;
}

/** The time from each of these keys to the display of what it changed, by the Event Timing API (W3C): in steps of 8 ms. */
export const untilDisplay = (page: Page, keys: readonly number[]): Promise<number[]> =>
  page.evaluate((pressed) => window.entryWatch.untilDisplay(pressed), [...keys]);

interface EntryWatch {
  untilDisplay(keys: readonly number[]): number[];
  expect(text: string): void;
  shown(): Promise<EntryTimes>;
}
declare global {
  interface Window {
    entryWatch: EntryWatch;
  }
}
