import { goTo, openDemo } from './demo-record.ts';
import { expect, test } from './server.ts';

test.use({ viewport: { width: 390, height: 844 } });

test('what was noted is changed in place, with all that was said of it, and after a reload it stands so', async ({
  page,
  server,
}) => {
  await openDemo(page, server.url);
  const sheet = page.getByRole('dialog');

  await test.step('a movable piece: one distance of two', async () => {
    await goTo(page, 'Seen');
    await page.getByRole('radio', { name: /^low treble, \d+ open/ }).check({ force: true });
    await page.getByRole('button', { name: 'Add a piece' }).click();
    await sheet.getByLabel('Its name').fill('bar 1');
    await sheet.getByLabel('Distance 1').fill('41');
    await sheet.getByLabel('From which point (1)').fill('the strut');
    await sheet.getByLabel('Distance 2').fill('87.5');
    await sheet.getByLabel('From which point (2)').fill('the first agraffe');
    await sheet.getByRole('button', { name: 'Keep the piece' }).click();
    await expect(page.getByText(/41.0 mm \(1.614 in\) from the strut/)).toBeVisible();
    await page.getByRole('button', { name: 'Change bar 1' }).click();
    await expect(sheet.getByLabel('Distance 2')).toHaveValue('87.5 mm');
    await sheet.getByLabel('Distance 1').fill('44');
    await sheet.getByRole('button', { name: 'Keep the piece' }).click();
    await expect(page.getByText(/44.0 mm \(1.732 in\) from the strut; 87.5 mm/)).toBeVisible();

    // Taken back by a slip of the hand, it is one tap away.
    await page.getByRole('button', { name: 'Take back bar 1' }).click();
    await expect(page.getByText(/44.0 mm/)).toHaveCount(0);
    const bringBack = page.getByRole('button', { name: 'Bring back bar 1' });
    await expect(bringBack).toBeInViewport({ ratio: 1 });
    await bringBack.click();
    await expect(page.getByText(/44.0 mm \(1.732 in\) from the strut; 87.5 mm/)).toBeVisible();
    await expect(bringBack).toHaveCount(0);

    // A further piece of that name would take its place.
    await page.getByRole('button', { name: 'Add a piece' }).click();
    await sheet.getByLabel('Its name').fill('bar 1');
    await sheet.getByLabel('Distance 1').fill('5');
    await sheet.getByLabel('From which point (1)').fill('the strut');
    await sheet.getByRole('button', { name: 'Keep the piece' }).click();
    await expect(sheet.getByRole('alert')).toContainText('a name of its own is needed');
    await sheet.getByRole('button', { name: 'Close' }).click();
  });

  await test.step('a reading here and there, then no reading at all', async () => {
    await page.getByRole('button', { name: 'Add a reading' }).click();
    await sheet.getByLabel('Value').fill('1.5');
    await sheet.getByLabel('Note', { exact: true }).fill('C5');
    await sheet.getByText('loaded', { exact: true }).click();
    await sheet.getByLabel('Span it was read over').fill('120');
    await sheet.getByRole('button', { name: 'Keep the reading' }).click();
    const line = page.getByRole('listitem').filter({ hasText: 'bearing rise, C5' });
    await expect(line).toContainText('1.5 mm');
    await line.getByRole('button', { name: 'Change bearing rise, C5' }).click();
    await expect(sheet.getByLabel('Span it was read over')).toHaveValue('120.0 mm');
    await sheet.getByLabel('Value').fill('1.7');
    await sheet.getByRole('button', { name: 'Keep the reading' }).click();
    await expect(line).toContainText(/1.7 mm .* over a span of 120.0 mm .* loaded/);
    await expect(line).toHaveCount(1);
    await line.getByRole('button', { name: 'Change bearing rise, C5' }).click();
    await sheet.getByText('unknown', { exact: true }).click();
    await sheet.getByLabel('Why, if there is something to say').fill('the feet do not fit');
    await sheet.getByRole('button', { name: 'Keep the reading' }).click();
    await expect(line).toContainText('unknown: the feet do not fit');
    await expect(line).not.toContainText('mm');
  });

  await test.step('pressure bar and crown are answered where there is none to read', async () => {
    await page.getByRole('radio', { name: 'the whole piano' }).check({ force: true });
    await page.getByRole('button', { name: 'Add a reading' }).click();
    await sheet.getByLabel('What is read').selectOption('soundboard-crown');
    await sheet.getByText('does not apply', { exact: true }).click();
    await sheet.getByRole('button', { name: 'Keep the reading' }).click();
    await expect(page.getByRole('listitem').filter({ hasText: 'soundboard crown' })).toContainText(
      'the whole piano: does not apply',
    );
  });

  await test.step('a stamp', async () => {
    await goTo(page, 'Sizes');
    const form = page.locator('form').filter({ has: page.getByLabel('What is stamped') });
    await form.getByLabel('Note it stands at').fill('G#6');
    await form.getByLabel('What is stamped').fill('14');
    await form.getByRole('button', { name: 'Keep the stamp' }).click();
    await page.getByRole('button', { name: 'Change the stamp 14 at G#6' }).click();
    await expect(form.getByLabel('Note it stands at')).toHaveValue('G#6');
    await form.getByText('plate', { exact: true }).click();
    await form.getByText('ends here', { exact: true }).click();
    await form.getByText('US', { exact: true }).click();
    await form.getByRole('button', { name: 'Keep the change' }).click();
    await expect(page.getByText(/G#6 “14” ends here, on the plate, US number/)).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Size stamps: 1' })).toBeVisible();
    await page.getByRole('button', { name: 'Take back the stamp 14 at G#6' }).click();
    await page.getByRole('button', { name: 'Bring back the stamp 14 at G#6' }).click();
  });

  await page.reload();
  await expect(page.getByText(/G#6 “14” ends here, on the plate, US number/)).toBeVisible();
  await goTo(page, 'Seen');
  await page.getByRole('radio', { name: /^low treble, \d+ open/ }).check({ force: true });
  await expect(page.getByText(/44.0 mm \(1.732 in\) from the strut; 87.5 mm/)).toBeVisible();
});

test('an answer by string takes the reading of that string back, and undo brings it again', async ({
  page,
  server,
}) => {
  await openDemo(page, server.url);
  await goTo(page, 'By string');
  await page.getByRole('radio', { name: 'tenor', exact: true }).check({ force: true });
  const first = page.locator('.string-row').first();
  const field = first.getByRole('textbox');
  await field.fill('1.085');
  await page.keyboard.press('Enter');
  await expect(first.getByRole('button', { name: /^Take back 1\.085 mm/ })).toBeVisible();
  await field.focus();
  await page.keyboard.type('-');
  await page.keyboard.press('Enter');
  await expect(first.getByRole('button', { name: /^Take back/ })).toHaveCount(0);
  await expect(field).toHaveAttribute('placeholder', 'none');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(first.getByRole('button', { name: /^Take back 1\.085 mm/ })).toBeVisible();
  await expect(field).not.toHaveAttribute('placeholder', 'none');
});

test('by string, Enter goes on in the order that is chosen, and from one section into the next', async ({
  page,
  server,
}) => {
  await openDemo(page, server.url);
  await goTo(page, 'By string');
  await page.getByRole('radio', { name: 'tenor', exact: true }).check({ force: true });
  await page.getByLabel('What is read').selectOption('wire-diameter');
  await page.getByLabel('Enter goes to').selectOption('every-second');
  const names = await page
    .locator('input[data-string]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('data-string')!));
  // The second strings of the last two notes of the tenor.
  const seconds = names.filter((name) => name.endsWith('·2'));
  const [from, to] = [seconds.at(-4)!, seconds.at(-2)!];
  const field = (name: string) => page.locator(`input[data-string="${name}"]`);
  await field(from).focus();
  await page.keyboard.type('.96');
  await page.keyboard.press('Enter');
  await expect(field(to)).toBeFocused();
  await page.keyboard.type('.95');
  await page.keyboard.press('Enter');
  // Two notes on is the first of the low treble: the section changes, and the value was kept.
  await expect(page.getByRole('radio', { name: 'low treble', exact: true })).toBeChecked();
  await expect(page.locator('input[data-string="B4·2"]')).toBeFocused();
  await page.keyboard.press('Shift+Enter');
  await expect(page.getByRole('radio', { name: 'tenor', exact: true })).toBeChecked();
  await expect(field(to)).toBeFocused();
  await expect(page.getByRole('button', { name: `Take back 0.950 mm, ${to}` })).toBeVisible();
});

test('what does not add up leads to the column to measure again', async ({ page, server }) => {
  await openDemo(page, server.url);
  await goTo(page, 'Lengths');
  const doubt = page
    .getByRole('listitem')
    .filter({ hasText: '◇ D#2: bare front 15.0 mm, winding 1116.0 mm' });
  await doubt.getByRole('button', { name: 'Measure D#2' }).click();
  await expect(page.getByLabel('Column')).toHaveValue('winding-length');
  await page
    .getByRole('navigation', { name: 'Parts of Record' })
    .getByRole('link', { name: 'Lengths' })
    .click();
  await page.getByRole('button', { name: 'Measure G#2' }).click();
  await expect(page.getByLabel('Column')).toHaveValue('speaking-length');
});

test('of the strings on the board only those in question bear the mark', async ({ page, server }) => {
  await openDemo(page, server.url);
  await goTo(page, 'Loops');
  await page.getByRole('radio', { name: 'tenor', exact: true }).check({ force: true });
  const strings = page.locator('.loop-string');
  const said = page.locator('[data-loops]');
  // Two that share a wire without being neighbours: a predecessor's work.
  await strings.nth(2).click();
  await strings.nth(4).click();
  await expect(said).toContainText('2 looped');
  await strings.nth(0).click();
  await strings.nth(1).click();
  await expect(said).toContainText('4 looped');
  await expect(page.getByRole('list', { name: 'Questions' })).toContainText('which are not neighbours');
  await expect(page.locator('.loop-string[data-asked]')).toHaveCount(2);
  await expect(strings.nth(2)).toHaveAttribute('data-asked');
  await expect(strings.nth(4)).toHaveAttribute('data-asked');
});
