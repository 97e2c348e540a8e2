import type { Page } from '@playwright/test';
import {
  type EntryTimes,
  enterReading,
  openDemoGrid,
  openEntryBrowser,
  openPlainPage,
  type screens,
  untilDisplay,
} from './entry-browser.ts';
import type { BenchTopic, Figure } from './harness.ts';

/** So many times slower than this machine, as a tablet in the shop may be. */
const SLOWER = 4;
/** Between one reading and the next the hand moves the gauge; the exchange with the server goes on meanwhile. */
const HAND_MS = 300;
/** A machine that others share is faster in one minute than in the next: so many runs make one figure. */
const RUNS = 3;

const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);
const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.max(0, Math.ceil(share * values.length) - 1)]!;

/** A share of all the entries of several runs, and the same share of the fastest and of the slowest run. */
function figureOf(name: string, share: number, runs: readonly (readonly number[])[], aim?: string): Figure {
  const ofEach = runs.map((times) => quantile(times, share));
  return {
    name: `${name}, p${share * 100}`,
    value: quantile(runs.flat(), share),
    unit: 'ms',
    ...(runs.length > 1 && { range: [Math.min(...ofEach), Math.max(...ofEach)], runs: runs.length }),
    ...(aim !== undefined && share === 0.95 ? { aim } : {}),
  };
}

const figuresOf = (name: string, runs: readonly (readonly number[])[], aim?: string): Figure[] =>
  [0.5, 0.95].map((share) => figureOf(name, share, runs, aim));

/** A further reading of every note's speaking length: each a little off the first, as a further reading is. */
async function lengthsToType(page: Page): Promise<string[]> {
  const cells = page.locator('[data-cell="speaking-length"]');
  const first = await cells.evaluateAll((all) => all.map((one) => one.textContent ?? ''));
  return first.map((text, index) => String(Number(text || '500') + 0.5 + (index % 3) / 10));
}

async function typeAll(page: Page, texts: readonly string[]): Promise<EntryTimes[]> {
  const times: EntryTimes[] = [];
  for (const text of texts) {
    times.push(await enterReading(page, text));
    await page.waitForTimeout(HAND_MS);
  }
  return times;
}

interface Typed {
  readonly pictures: number[];
  readonly signs: number[];
  readonly displays: number[];
  readonly keys: number;
  readonly seconds: number;
  /** The same values and the same keys on a page without a program: what this browser takes for itself. */
  readonly plainPictures: number[];
}

/** One whole compass typed on one screen at one speed of the processor, in a browser and a server of its own. */
async function compassOn(screen: keyof typeof screens, rate: number): Promise<Typed> {
  const browser = await openEntryBrowser(screen);
  try {
    const { page } = browser;
    await openDemoGrid(page);
    const texts = await lengthsToType(page);
    // No note of the demo has four readings: every value is a new one.
    await page.getByText('4th', { exact: true }).tap();
    await page.waitForTimeout(2000);
    await browser.slowDown(rate);
    await page.locator('[data-cell="speaking-length"]').first().focus();
    const start = performance.now();
    const times = await typeAll(page, texts);
    const seconds = (performance.now() - start - HAND_MS * texts.length) / 1000;
    const displays = await untilDisplay(
      page,
      times.map(({ pressed }) => pressed),
    );
    await openPlainPage(page);
    await page.locator('input').focus();
    const plain = await typeAll(page, texts);
    return {
      pictures: times.map(({ toPicture }) => toPicture),
      signs: times.map(({ toKept }) => toKept),
      displays,
      keys: texts.reduce((sum, text) => sum + text.length + 1, 0),
      seconds,
      plainPictures: plain.map(({ toPicture }) => toPicture),
    };
  } finally {
    await browser.close();
  }
}

export const topic: BenchTopic = {
  name: 'entry',
  run: async () => {
    const unslowed = [await compassOn('tablet', 1)];
    const tablet: Typed[] = [];
    const phone: Typed[] = [];
    for (let run = 0; run < RUNS; run += 1) {
      tablet.push(await compassOn('tablet', SLOWER));
      phone.push(await compassOn('phone', SLOWER));
    }
    const aim = 'p95 under 50 ms';
    const on = (name: string, runs: readonly Typed[], wanted?: string): Figure[] => [
      ...figuresOf(
        `Enter to the picture of the value, ${name}`,
        runs.map(({ pictures }) => pictures),
        wanted,
      ),
      ...figuresOf(
        `the same to its display by Event Timing (steps of 8 ms), ${name}`,
        runs.map(({ displays }) => displays),
        wanted,
      ),
      ...figuresOf(
        `the same on a page of one field without a program, ${name}`,
        runs.map(({ plainPictures }) => plainPictures),
      ),
      ...figuresOf(
        `Enter to the sign that it is kept, ${name}`,
        runs.map(({ signs }) => signs),
      ),
    ];
    return [
      { name: `keys to enter ${unslowed[0]!.pictures.length} notes`, value: unslowed[0]!.keys, unit: 'keys' },
      { name: 'the program and its driver, without the hand', value: unslowed[0]!.seconds, unit: 's' },
      ...on('tablet', unslowed),
      ...on(`tablet ${SLOWER} times slower`, tablet, aim),
      ...on(`phone ${SLOWER} times slower`, phone, aim),
    ];
  },
};
