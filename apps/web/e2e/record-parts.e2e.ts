import { goTo, openDemo } from './demo-record.ts';
import { fieldOf } from './grid-field.ts';
import { expect, test } from './server.ts';

test('a stamp changes the inferred sizes, and the numbering can be fixed', async ({ page, server }) => {
  await openDemo(page, server.url);
  await goTo(page, 'Sizes');
  await expect(page.getByText(/The readings and stamps speak for US numbers/)).toBeVisible();
  await expect(page.getByRole('slider', { name: /inferred sizes/ })).toBeVisible();

  // G#6 was never read: the string to measure next, a tap from its cell.
  const doubtful = page.getByRole('listitem').filter({ hasText: 'G#6' });
  await expect(doubtful).toBeVisible();
  const form = page.getByRole('form', { name: 'Add a stamp' });
  await form.getByLabel('Note it stands at').fill('G#6');
  await form.getByLabel('What is stamped').fill('14');
  await form.getByText('US', { exact: true }).click();
  await form.getByRole('button', { name: 'Keep the stamp' }).click();
  await expect(page.getByText(/G#6 “14” starts here, on the bridge, US number/)).toBeVisible();
  const runs = page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: '14', exact: true }) });
  await expect(runs).toContainText('G#6 to');

  await page.getByText('metric', { exact: true }).first().click();
  await expect(page.getByText('You fixed the metric numbering')).toBeVisible();

  await page.getByText('let the readings say', { exact: true }).click();
  const next = page.getByRole('button', { name: /^Go to / });
  const note = /Go to (\S+)/.exec((await next.textContent()) ?? '')![1]!;
  await next.click();
  // One tap: the next key is typed into the cell.
  const field = page.locator('.cell-field .cell');
  await expect(field).toBeFocused();
  await expect(field).toHaveAccessibleName(`${note} wire diameter`);
});

test('lengths that were not read are filled and never shown as read', async ({ page, server }) => {
  await openDemo(page, server.url);
  await goTo(page, 'Lengths');
  const filled = page.getByRole('listitem').filter({ hasText: /G#2 filled/ });
  await expect(filled).toContainText(/mm \(\d+\.\d+ in\), 95 %:/);
  await expect(filled.getByRole('button', { name: 'Measure G#2' })).toBeVisible();
});

test('a section is looped by keyboard alone, and undone', async ({ page, server }) => {
  await openDemo(page, server.url);
  await goTo(page, 'Loops');
  await page.getByText('tenor', { exact: true }).last().click();
  const said = page.locator('[data-loops]');
  await expect(said).toHaveText(/^\d+ strings: 0 looped, 0 tied/);
  const count = Number(/^\d+/.exec((await said.textContent()) ?? '')?.[0]);

  // From here on nothing but keys: to the board, one wire, one tie, the pattern to the end.
  await page.locator('.loop-string[tabindex="0"]').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('t');
  await expect(said).toContainText('0 looped, 1 tied');
  await page.keyboard.press('f');
  await expect(said).toContainText(', 0 not said');
  await page.keyboard.press('u');
  await expect(said).toContainText(`0 looped, 1 tied, ${count - 1} not said`);
  await page.keyboard.press('f');
  await expect(said).toContainText(', 0 not said');
  // An odd count of plain strings is left with one tied; wound strings are tied.
  const [, looped, tied] = /(\d+) looped, (\d+) tied/.exec((await said.textContent()) ?? '')!.map(Number);
  expect(looped! % 2).toBe(0);
  expect(looped! + tied!).toBe(count);

  await goTo(page, 'Strip check');
  await expect(page.getByRole('link', { name: 'Go to loops/low treble' })).toBeVisible();
  await expect(page.getByRole('link', { name: 'Go to loops/tenor' })).toHaveCount(0);
});

test('an instrument is described, and each string is read with it at its point', async ({ page, server }) => {
  await openDemo(page, server.url);
  const sheet = page.getByRole('dialog');
  await test.step('the instrument says its unit, its step and what is stated of it', async () => {
    await goTo(page, 'Instruments');
    await page.getByRole('button', { name: 'Describe an instrument' }).click();
    await sheet.getByLabel('Its name in the shop').fill('micrometer 1');
    await sheet.getByLabel('Unit it shows').selectOption('in');
    await sheet.getByRole('button', { name: 'Keep the instrument' }).click();
    await expect(sheet.getByRole('alert')).toContainText('smallest step is needed');
    await sheet.getByLabel('Smallest step').fill('0.0001');
    await sheet.getByLabel('Stated uncertainty').fill('0.0002');
    await sheet.getByRole('button', { name: 'Keep the instrument' }).click();
    await expect(page.getByText('micrometer 1 shows inch, step 0.0001, ± 0.0002')).toBeVisible();
  });

  const field = (name: string) => page.getByRole('textbox', { name, exact: true });
  await test.step('the one in hand sets the unit; Enter goes from string to string', async () => {
    await goTo(page, 'By string');
    await page.getByRole('radio', { name: 'tenor', exact: true }).check({ force: true });
    await page.getByLabel('Instrument', { exact: true }).selectOption('micrometer 1');
    await page.getByLabel('Point').fill('near the bridge');
    await page.getByLabel('The wire is').selectOption('cleaned');
    const names = await page
      .locator('input[data-string]')
      .evaluateAll((all) => all.slice(0, 3).map((one) => one.getAttribute('data-string')!));
    expect(names.map((name) => name.split('·')[1])).toEqual(['1', '2', '3']);
    await field(`${names[0]} wire diameter`).focus();
    await page.keyboard.type('.0405');
    await page.keyboard.press('Enter');
    await expect(field(`${names[1]} wire diameter`)).toBeFocused();
    await page.keyboard.type('.0410');
    await page.keyboard.press('Enter');
    await page.keyboard.type('?');
    await page.keyboard.press('Enter');
    await expect(
      page.getByRole('button', { name: `Take back 0.0405 in, near the bridge, cleaned, ${names[0]}` }),
    ).toBeVisible();
    await expect(
      page.getByRole('button', { name: `Take back 0.0410 in, near the bridge, cleaned, ${names[1]}` }),
    ).toBeVisible();
    await expect(field(`${names[2]} wire diameter`)).toHaveAttribute('placeholder', 'unknown');
    await expect(page.locator('[data-strings]')).toContainText('read in inch by micrometer 1');

    // A second reading of one string; then it is taken back, and the taking back undone.
    await field(`${names[0]} wire diameter`).fill('.0406');
    await page.keyboard.press('Enter');
    const second = page.getByRole('button', { name: /^Take back 0\.0406 in/ });
    await second.click();
    await expect(second).toHaveCount(0);
    await page.getByRole('button', { name: /^Undo the taking back of 0\.0406 in/ }).click();
    await expect(second).toBeVisible();

    // One that is far from its neighbours is doubted beside it, and Control Z takes it back.
    await field(`${names[0]} wire diameter`).fill('.0300');
    await page.keyboard.press('Enter');
    const far = page.getByRole('button', { name: /^Take back 0\.0300 in/ });
    await expect(far).toBeVisible();
    const doubt = page
      .locator('.string-question')
      .filter({ hasText: '0.03 in is far from the wire diameter of its neighbours' });
    await expect(doubt).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(far).toHaveCount(0);
    await expect(doubt).toHaveCount(0);
  });

  await test.step('the grid takes and shows what it measures in its unit, and all else in that of the screen', async () => {
    await goTo(page, 'Readings');
    await expect(page.locator('thead [data-quantity="wire-diameter"]')).toContainText('in');
    await expect(page.locator('thead [data-quantity="speaking-length"]')).toContainText('mm');
    const cell = await fieldOf(page, 'A3 wire diameter');
    await cell.fill('.0400');
    await page.keyboard.press('Enter');
    await expect(page.locator('.read-back[data-is="saved"]')).toContainText('0.0400 in = 1.016 mm');
    await page.keyboard.press('Control+z');
    await expect(page.locator('.read-back')).toContainText('Taken back');
    await goTo(page, 'By string');
  });

  await test.step('a value that cannot be comes back into its field with a sentence', async () => {
    const first = page.locator('input[data-string]').first();
    await first.fill('41');
    await page.keyboard.press('Enter');
    await expect(page.locator('.read-back')).toContainText(
      /Cannot record this wire diameter: a value from .* in is needed/,
    );
    await expect(first).toHaveValue('41');
    // Left in its field it would be kept as a length of 41 mm once another quantity is read.
    await page.getByLabel('What is read').selectOption('back-length');
    await expect(first).toHaveValue('');
    await expect(page.getByRole('button', { name: /^Take back 41/ })).toHaveCount(0);
  });

  await test.step('pins have their length and coils', async () => {
    await page.getByLabel('What is read').selectOption('pin-coils');
    const first = page.locator('input[data-string]').first();
    await first.fill('3.25');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('button', { name: /^Take back 3\.25 turns/ })).toBeVisible();
  });
});

test('wires say their hitch pins, and what cannot be is asked about', async ({ page, server }) => {
  await openDemo(page, server.url);
  const sheet = page.getByRole('dialog');
  await goTo(page, 'Loops');
  await page.getByRole('radio', { name: 'tenor', exact: true }).check({ force: true });
  await page.locator('.loop-string[tabindex="0"]').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('f');
  await expect(page.locator('[data-loops]')).toContainText(', 0 not said');
  await page.keyboard.press('Home');
  await page.keyboard.press('w');
  await sheet.getByLabel('Hitch pin', { exact: true }).fill('1');
  await sheet.getByRole('button', { name: 'Number the pins on from here' }).click();
  await expect(page.locator('.loop-string').first()).toContainText('pin 1');
  const questions = page.getByRole('list', { name: 'Questions' });
  await expect(questions.getByText(/hitch pin/i)).toHaveCount(0);

  await page.locator('.loop-string').last().click();
  await page.getByRole('button', { name: 'This wire' }).click();
  await sheet.getByLabel('Hitch pin', { exact: true }).fill('2');
  await sheet.getByRole('button', { name: "It is a predecessor's repair" }).click();
  await sheet.getByRole('button', { name: 'Keep the wire' }).click();
  await expect(questions).toContainText(/Hitch pin 2 is noted for .* and for /);
  await expect(questions).toContainText("Noted of it: a predecessor's repair.");
  await goTo(page, 'Strip check');
  await expect(page.getByRole('region', { name: /^Does not add up/ })).toContainText('Hitch pin 2 is noted');
});

test('a wound string that does not add up is told in the strip check and where it is typed, in the unit of the screen', async ({
  page,
  server,
}) => {
  await openDemo(page, server.url);
  await goTo(page, 'Strip check');
  // D#2 of the demo: 15.0 + 1116.0 + 10.9 mm against 1145.0 mm.
  const doubt = page
    .getByRole('region', { name: /^Does not add up/ })
    .getByRole('listitem')
    .filter({ hasText: /^◇ D#2: bare front 15\.0 mm, winding 1116\.0 mm/ });
  await doubt.getByRole('link', { name: 'Go there' }).click();
  const here = page.getByRole('status').filter({ hasText: 'D#2: bare front 15.0 mm' });
  await expect(here).toContainText('but the speaking length is 1145.0 mm: 3.1 mm missing');
  await page.getByRole('radio', { name: 'inches' }).check({ force: true });
  // 1145.0 / 25.4 = 45.079; what is missing is 3.05 to 3.15 mm, 0.120 to 0.124 in.
  await expect(page.getByRole('status').filter({ hasText: 'D#2: bare front 0.591 in' })).toContainText(
    /but the speaking length is 45\.079 in: 0\.12[0-4] in missing/,
  );
});

test('things seen are answered with a tap, and the three answers stay apart', async ({ page, server }) => {
  await openDemo(page, server.url);
  await goTo(page, 'Seen');
  const open = page.locator('[data-open][role="status"]');
  await page.getByRole('radio', { name: /^low treble, \d+ open/ }).check({ force: true });
  const before = Number(/^\d+/.exec((await open.textContent()) ?? '')?.[0]);
  await page.getByRole('button', { name: 'damper order: none' }).click();
  await expect(open).toHaveText(new RegExp(`^${before - 1} of`));
  await page.getByRole('button', { name: 'string spacing: does not apply' }).click();
  await expect(open).toHaveText(new RegExp(`^${before - 2} of`));
  // Unknown is an answer, and leaves the thing open.
  await page.getByRole('button', { name: 'hitch pins: unknown' }).click();
  await expect(page.getByRole('button', { name: 'hitch pins: unknown' })).toHaveCount(0);
  await expect(open).toHaveText(new RegExp(`^${before - 2} of`));
  await expect(page.getByRole('radio', { name: `low treble, ${before - 2} open` })).toBeChecked();
  // An answer given with the wrong finger is taken back, and the thing is open again.
  await page.getByRole('button', { name: 'Change damper order, section low treble' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Take it back' }).click();
  await expect(open).toHaveText(new RegExp(`^${before - 1} of`));
});

test('measured parts close their gaps; the let-down plan shows; after the seal damage becomes a change order', async ({
  page,
  server,
}) => {
  await openDemo(page, server.url);

  await test.step('a felt, the windings and the bearing are said, each with what belongs to it', async () => {
    await goTo(page, 'Strip check');
    for (const gap of ['felts/high treble', 'windings/bass', 'bearing/bass', 'bars/low treble'])
      await expect(page.getByRole('link', { name: `Go to ${gap}` })).toBeVisible();
    await goTo(page, 'Seen');
    await page.getByRole('radio', { name: /^high treble, \d+ open/ }).check({ force: true });
    await page.getByRole('button', { name: 'Measure felt, section high treble' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Thickness').fill('2.5');
    await sheet.getByLabel('Colour').fill('red');
    await sheet.getByRole('button', { name: 'Keep it' }).click();
    await expect(page.getByText('thick 2.5 mm (0.098 in), red')).toBeVisible();

    await page.getByRole('radio', { name: /^bass, \d+ open/ }).check({ force: true });
    await page.getByRole('button', { name: 'Say a winding' }).click();
    await sheet.getByRole('button', { name: 'Keep the windings' }).click();
    await expect(page.getByText('single loop, twist right')).toBeVisible();

    await page.getByRole('button', { name: 'Add a reading' }).click();
    await sheet.getByLabel('Value').fill('1.5');
    await sheet.getByLabel('Note', { exact: true }).fill('C2');
    await sheet.getByRole('button', { name: 'Keep the reading' }).click();
    await expect(sheet.getByRole('alert')).toContainText('pressing on the board');
    await sheet.getByText('loaded', { exact: true }).click();
    await sheet.getByLabel('Span it was read over').fill('120');
    await sheet.getByRole('button', { name: 'Keep the reading' }).click();
    await expect(page.getByText(/over a span of 120.0 mm/)).toBeVisible();

    await page.getByRole('radio', { name: /^low treble, \d+ open/ }).check({ force: true });
    await page.getByRole('button', { name: 'Add a piece' }).click();
    await sheet.getByLabel('Its name').fill('bar 1');
    await expect(sheet.getByLabel('Section')).toHaveValue('low treble');
    await sheet.getByLabel('Distance 1').fill('41');
    await sheet.getByLabel('From which point (1)').fill('the strut');
    await sheet.getByRole('button', { name: 'Keep the piece' }).click();
    await expect(page.getByText(/41.0 mm \(1.614 in\) from the strut/)).toBeVisible();

    await goTo(page, 'Strip check');
    for (const gap of ['felts/high treble', 'windings/bass', 'bearing/bass', 'bars/low treble'])
      await expect(page.getByRole('link', { name: `Go to ${gap}` })).toHaveCount(0);
  });

  await test.step('the plan takes the load off in as many passes as are chosen', async () => {
    const plan = page.getByRole('region', { name: 'Letting the strings down' });
    await expect(plan.getByText(/Never cut a string under tension/)).toBeVisible();
    await expect(plan.getByRole('table')).toHaveCount(4);
    await plan.getByText('6', { exact: true }).click();
    await expect(plan.getByRole('table')).toHaveCount(6);
    await expect(plan.getByRole('table').first()).toContainText(/\d+° \(\d+\.\d eighths\)/);
    await expect(plan.getByRole('table').last().getByRole('row').last()).toContainText('0.0 kN');
    // On a phone the load of the plate is in sight beside the turn of the pins.
    const wide = page.viewportSize()!;
    await page.setViewportSize({ width: 390, height: 844 });
    await expect
      .poll(() =>
        plan
          .locator('.table-frame')
          .first()
          .evaluate((frame) => frame.scrollWidth - frame.clientWidth),
      )
      .toBe(0);
    await page.setViewportSize(wide);
  });

  await test.step('gaps are accepted, the record is sealed, damage goes on the change order', async () => {
    await expect(page.getByRole('link', { name: 'After the strip' })).toHaveCount(0);
    for (const box of await page.getByLabel(/^tick all/).all()) await box.check();
    for (const box of await page.getByRole('checkbox').all()) await box.check();
    await page.getByLabel('Reason for accepting the ticked gaps').fill('an exercise');
    await page.getByRole('button', { name: /^Accept \d+ gaps? by name/ }).click();
    await page.getByRole('button', { name: 'Seal the as-found record' }).click();
    await expect(page.getByText(/Seal [0-9a-f]{64}/)).toBeVisible();

    await goTo(page, 'After the strip');
    const form = page.getByRole('form', { name: 'Note damage' });
    await form.getByLabel('What was found').fill('a crack along the bridge pins');
    await form.getByLabel('Section').selectOption('bass');
    await form.getByLabel('What to do about it').fill('recap the bass bridge');
    await form.getByRole('button', { name: 'Put it on the change order' }).click();
    await expect(page.getByText(/why it did not show before the strip is needed/).first()).toBeVisible();
    await form.getByLabel('Why it did not show before the strip').fill('it lay under the strings');
    await form.getByLabel('Price', { exact: true }).fill('450,50');
    await form.getByLabel('Working days it adds').fill('3');
    await form.getByRole('button', { name: 'Put it on the change order' }).click();
    await expect(page.locator('[data-sum]')).toHaveText('Together: EUR 450.50, 3 working days.');
  });

  await test.step('a photo of the new work needs no reason; one of the piano as found does', async () => {
    await goTo(page, 'Photos');
    // The place before it takes photos as well: only what stands here now is meant.
    await expect(page.locator('.photo-add')).toBeVisible();
    const picture = {
      name: 'loops.png',
      mimeType: 'image/png',
      buffer: Buffer.from(
        'iVBORw0KGgoAAAANSUhEUgAAAAIAAAACCAIAAAD91JpzAAAAEElEQVR4nGPYkGAARAwQCgAlDgUBU5bxwAAAAABJRU5ErkJggg==',
        'base64',
      ),
    };
    await page.getByLabel('Choose photos').setInputFiles(picture);
    await expect(page.getByRole('alert')).toContainText('before it is said what it shows');
    await page.getByRole('radio', { name: 'the piano as found' }).check({ force: true });
    await page.getByLabel('Choose photos').setInputFiles(picture);
    await expect(page.getByRole('alert')).toContainText('without a reason');
    await page.getByRole('radio', { name: 'the new work' }).check({ force: true });
    await page.getByLabel('Choose photos').setInputFiles(picture);
    await expect(page.getByRole('list', { name: 'Photos of this job' })).toContainText('as strung');
    await expect(page.getByText(/1 amendment since/)).toHaveCount(0);
  });

  await test.step('a change of the sealed record needs its reason', async () => {
    await goTo(page, 'Seen');
    await page.getByRole('radio', { name: /^tenor, \d+ open/ }).check({ force: true });
    await page.getByRole('button', { name: 'Measure punchings, section tenor' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Colour').fill('white');
    await sheet.getByRole('button', { name: 'Keep it' }).click();
    await expect(sheet.getByRole('alert')).toContainText('reason is needed');
    await sheet.getByLabel('Reason for changing the sealed record').fill('seen when the felt came off');
    await sheet.getByRole('button', { name: 'Keep it' }).click();
    await expect(page.getByText(/1 amendment since/)).toBeVisible();
  });
});
