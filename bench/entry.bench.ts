import type { Page } from '@playwright/test';
import {
  type EntryTimes,
  enterReading,
  openDemoGrid,
  openEntryBrowser,
  type screens,
  untilDisplay,
} from './entry-browser.ts';
import type { BenchTopic, Figure } from './harness.ts';

/** So many times slower than this machine, as a tablet in the shop may be. */
const SLOWER = 4;
/** Between one reading and the next the hand moves the gauge; the exchange with the server goes on meanwhile. */
const HAND_MS = 300;

const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);
const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.max(0, Math.ceil(share * values.length) - 1)]!;

function figuresOf(name: string, times: readonly number[], aim?: string): Figure[] {
  const range = [Math.min(...times), Math.max(...times)] as const;
  const figure = (share: number): Figure => ({
    name: `${name}, p${share * 100}`,
    value: quantile(times, share),
    unit: 'ms',
    range,
    runs: times.length,
    ...(aim !== undefined && share === 0.95 ? { aim } : {}),
  });
  return [figure(0.5), figure(0.95)];
}

/** A further reading of every note's speaking length: each a little off the first, as a further reading is. */
async function lengthsToType(page: Page): Promise<string[]> {
  const cells = page.locator('[data-cell="speaking-length"]');
  const first = await cells.evaluateAll((all) => all.map((one) => one.textContent ?? ''));
  return first.map((text, index) => String(Number(text || '500') + 0.5 + (index % 3) / 10));
}

async function typeAll(page: Page, texts: readonly string[]): Promise<EntryTimes[]> {
  await page.locator('[data-cell="speaking-length"]').first().focus();
  const times: EntryTimes[] = [];
  for (const text of texts) {
    times.push(await enterReading(page, text));
    await page.waitForTimeout(HAND_MS);
  }
  return times;
}

/** One whole compass typed on one screen at one speed of the processor, in a browser and a server of its own. */
async function compassOn(
  screen: keyof typeof screens,
  rate: number,
): Promise<{ times: EntryTimes[]; displays: number[]; keys: number; seconds: number }> {
  const browser = await openEntryBrowser(screen);
  try {
    const { page } = browser;
    await openDemoGrid(page);
    const texts = await lengthsToType(page);
    // No note of the demo has four readings: every value is a new one.
    await page.getByText('4th', { exact: true }).tap();
    await page.waitForTimeout(2000);
    await browser.slowDown(rate);
    const start = performance.now();
    const times = await typeAll(page, texts);
    const seconds = (performance.now() - start - HAND_MS * texts.length) / 1000;
    const displays = await untilDisplay(
      page,
      times.map(({ pressed }) => pressed),
    );
    return { times, displays, keys: texts.reduce((sum, text) => sum + text.length + 1, 0), seconds };
  } finally {
    await browser.close();
  }
}

export const topic: BenchTopic = {
  name: 'entry',
  run: async () => {
    const plain = await compassOn('tablet', 1);
    const slowed = await compassOn('tablet', SLOWER);
    const slowedPhone = await compassOn('phone', SLOWER);
    const pictures = (run: typeof plain) => run.times.map(({ toPicture }) => toPicture);
    const signs = (run: typeof plain) => run.times.map(({ toKept }) => toKept);
    const slow = `processor ${SLOWER} times slower`;
    const aim = 'p95 under 50 ms';
    return [
      { name: `keys to enter ${plain.times.length} notes`, value: plain.keys, unit: 'keys' },
      { name: 'the program and its driver, without the hand', value: plain.seconds, unit: 's' },
      ...figuresOf('Enter to the picture of the value, tablet', pictures(plain)),
      ...figuresOf(`the same, ${slow}`, pictures(slowed), aim),
      ...figuresOf(`the same on a phone, ${slow}`, pictures(slowedPhone), aim),
      ...figuresOf('Enter to its display by Event Timing (steps of 8 ms), tablet', plain.displays),
      ...figuresOf(`the same, ${slow}`, slowed.displays, aim),
      ...figuresOf(`the same on a phone, ${slow}`, slowedPhone.displays, aim),
      ...figuresOf('Enter to the sign that it is kept, tablet', signs(plain)),
      ...figuresOf(`the same, ${slow}`, signs(slowed)),
      ...figuresOf(`the same on a phone, ${slow}`, signs(slowedPhone)),
    ];
  },
};
