import { noteName } from '@becket/core';
import { foldJob } from '@becket/journal';
import type { Page } from '@playwright/test';
import { entriesOnServer, lengthOf, seedJob } from './seed-job.ts';
import { expect, test } from './server.ts';

/**
 * What has the focus, and whether it can be seen: WCAG 2.2, 2.4.7 (there is a mark), 2.4.11 (nothing lies over it).
 * The page itself, which a link leads to, has no mark: it is no control.
 */
async function focusNow(page: Page): Promise<{ tag: string; label: string; isSeen: boolean }> {
  return page.evaluate(() => {
    const here = document.activeElement as HTMLElement;
    const { left, top, width, height } = here.getBoundingClientRect();
    const style = getComputedStyle(here.matches('input[type=radio]') ? here.closest('label')! : here);
    const isMarked = style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2;
    const onTop = document.elementFromPoint(left + width / 2, top + height / 2);
    const isInTheClear = onTop !== null && (here.contains(onTop) || onTop.contains(here));
    const isPlace = here.id === 'place';
    return {
      tag: here.tagName,
      label: here.getAttribute('aria-label') ?? here.textContent?.trim() ?? '',
      isSeen: here !== document.body && (isPlace || (isMarked && isInTheClear)),
    };
  });
}

async function press(page: Page, keys: string): Promise<void> {
  await page.keyboard.press(keys);
  const { tag, label, isSeen } = await focusNow(page);
  expect(isSeen, `the focus is seen on ${tag} '${label.slice(0, 60)}' after ${keys}`).toBe(true);
}

/** Goes on with one key until the focus is where it is wanted. */
async function pressUntil(page: Page, keys: string, wanted: RegExp, atMost = 60): Promise<void> {
  for (let count = 0; count < atMost; count += 1) {
    await press(page, keys);
    if (wanted.test((await focusNow(page)).label)) return;
  }
  throw new Error(`no ${wanted} within ${atMost} times ${keys}`);
}

const enter = async (page: Page, text: string) => {
  await page.keyboard.type(text);
  await press(page, 'Enter');
};
const readBack = (page: Page) => page.locator('.read-back-words');

test('a section is recorded by keyboard alone, with a slip, an undo and an answer', async ({
  page,
  server,
}) => {
  const job = await seedJob(server, 'A grand by keys');
  const keys = Array.from({ length: 12 }, (_, index) => 40 + index);
  const wireOf = (key: number) => (key < 46 ? '1.025' : '1.0');
  const slip = 44;
  await page.goto(server.url);
  await expect(page.getByRole('link', { name: /A grand by keys/ })).toBeVisible();

  await test.step('from the jobs into the job, to its sheet', async () => {
    await pressUntil(page, 'Tab', /A grand by keys/);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('table', { name: /Readings of the compass/ })).toBeVisible();
    await expect.poll(async () => (await focusNow(page)).isSeen).toBe(true);
    await pressUntil(page, 'Tab', /whole compass/);
    await page.keyboard.type('high');
    await expect(page.getByRole('textbox', { name: 'C3 wire diameter' })).toHaveCount(0);
    await pressUntil(page, 'Tab', /^C4 wire diameter$/);
  });

  await test.step('the wires: one answered, one undone and typed again', async () => {
    for (const key of keys) {
      expect((await focusNow(page)).label).toBe(`${noteName(key)} wire diameter`);
      if (key === 43) {
        await enter(page, '?');
        await expect(readBack(page)).toContainText('Kept: D#4 wire diameter');
        await expect(readBack(page)).toContainText('unknown');
      } else if (key === 47) {
        await enter(page, '0.95');
        await expect(readBack(page)).toContainText('0.95 mm');
        await press(page, 'Control+z');
        await expect(readBack(page)).toContainText('Taken back: G4 wire diameter');
        await press(page, 'ArrowUp');
        await expect(page.getByRole('textbox', { name: 'G4 wire diameter' })).toHaveValue('');
        await enter(page, wireOf(key));
      } else {
        await enter(page, wireOf(key));
      }
    }
    // At the end of the column there is nowhere to go: the focus stays, and the value is kept all the same.
    await expect(readBack(page)).toContainText('Kept: B4 wire diameter');
    expect((await focusNow(page)).label).toBe('B4 wire diameter');
  });

  await test.step('the lengths, with a decimal slip that is questioned and answered', async () => {
    for (const _ of keys.slice(1)) await press(page, 'ArrowUp');
    await press(page, 'Tab');
    for (const key of keys) {
      expect((await focusNow(page)).label).toBe(`${noteName(key)} speaking length`);
      await enter(page, String(key === slip ? lengthOf(key) / 10 : lengthOf(key)));
    }
    const question = page.getByRole('button', { name: /^It is 5\d\d(\.\d)? mm$/ });
    await expect(question).toBeVisible();
    for (let key = 51; key > slip; key -= 1) await press(page, 'ArrowUp');
    await pressUntil(page, 'Tab', /^It is /, 3);
    await press(page, 'Enter');
    expect((await focusNow(page)).label).toBe('E4 speaking length');
    await expect(question).toHaveCount(0);
    await expect(page.getByRole('textbox', { name: 'E4 speaking length' })).toHaveValue(
      String(Math.round(lengthOf(slip))),
    );
  });

  await test.step('the server has exactly these readings', async () => {
    await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
    const state = foldJob(await entriesOnServer(server, job));
    const read = (quantity: string) =>
      state.readings
        .filter((one) => one.quantity === quantity && (one.place.key ?? 0) >= 40)
        .map(({ place, asRead }) => [place.key, asRead.value])
        .sort(([a], [b]) => a! - b!);
    expect(read('wire-diameter')).toEqual(
      keys.filter((key) => key !== 43).map((key) => [key, Number(wireOf(key))]),
    );
    const lengths = read('speaking-length');
    expect(lengths.map(([key]) => key)).toEqual(keys);
    for (const [key, value] of lengths)
      expect(value).toBeCloseTo(key === slip ? Math.round(lengthOf(slip)) : lengthOf(key!), 5);
    expect(state.absences.map(({ place, answer }) => [place.key, answer])).toEqual([[43, 'unknown']]);
    // What was taken back or corrected is still in the journal, and out of the state.
    expect(state.withdrawnEntries.size).toBe(2);
    expect(state.readings).toHaveLength(24 + 11 + 12);
  });
});
