import type { Ulid } from '@becket/journal';
import { describeSections, describeUnisons, openJob } from '@becket/tasks';
import { axe, levels } from './axe.ts';
import { entriesOnServer, seed } from './seed-job.ts';
import { type BecketServer, expect, test } from './server.ts';

/** A grand of 88 notes of which nothing is read yet. */
const seedUnread = (server: BecketServer): Promise<Ulid> =>
  seed(server, async (context) => {
    const { id } = await openJob(context, {
      title: 'Nothing read yet',
      piano: { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 },
    });
    await describeSections(context, id, [
      { section: 'bass', firstKey: 1, lastKey: 28, bridge: 'bass', frontTermination: 'agraffe' },
      { section: 'tenor', firstKey: 29, lastKey: 52, bridge: 'long', frontTermination: 'agraffe' },
      { section: 'treble', firstKey: 53, lastKey: 88, bridge: 'long', frontTermination: 'pressure bar' },
    ]);
    await describeUnisons(context, id, [
      { firstKey: 1, lastKey: 28, strings: 2, winding: 'wound', layers: 1 },
      { firstKey: 29, lastKey: 88, strings: 3, winding: 'plain', layers: 0 },
    ]);
    return { id };
  });

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

test('on a phone the check of an unread piano is told by kind, and one tap leads to the cell that fills a gap', async ({
  page,
  server,
}) => {
  const job = await seedUnread(server);
  await page.goto(server.url);
  await page.getByLabel('Your name').fill('Ada');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  const check = `${server.url}/#/job/${job}/record/strip`;
  const open = page.getByRole('status').filter({ hasText: 'gaps are open' });
  const field = page.locator('.cell-field .cell');

  await test.step('three hundred gaps are some twenty lines with their count; the notes come at a tap', async () => {
    await page.goto(check);
    await expect(open).toContainText(
      'Not passed. 316 gaps are open: 269 lost for ever, 27 costly, 20 convenient.',
    );
    const wires = page.getByRole('listitem').filter({ hasText: 'wire diameter: 60 open' });
    await expect(wires).toContainText('only its neighbours can say what size it was');
    const note = wires.getByRole('checkbox', { name: 'E4', exact: true });
    await expect(note).toHaveCount(0);
    await wires.getByText('C#3 to C8').click();
    await expect(note).toBeVisible();
  });

  await test.step('from a note to its cell, though another section and another column were looked at', async () => {
    await page.goto(`${server.url}/#/job/${job}/record`);
    await page.getByLabel('Show', { exact: true }).selectOption({ value: 'bass' });
    await page.goto(check);
    await page
      .getByRole('listitem')
      .filter({ hasText: 'wire diameter: 60 open' })
      .getByText('C#3 to C8')
      .click();
    await page.getByRole('link', { name: 'Go to wire-diameter/E4' }).click();
    await expect(field).toBeFocused();
    await expect(field).toHaveAccessibleName('E4 wire diameter');
    await page.keyboard.type('0.95');
    await page.keyboard.press('Enter');
    await expect(page.locator('.read-back-words')).toContainText('Kept: E4 wire diameter');
    await page.goto(check);
    await expect(open).toContainText('315 gaps are open');
  });

  await test.step('a reading that a section wants once opens its column; a thing its own line', async () => {
    await page.getByRole('link', { name: 'Go to back-length/tenor' }).click();
    await expect(field).toBeFocused();
    await expect(field).toHaveAccessibleName('C#3 back length');
    await page.goto(check);
    await page.getByRole('link', { name: 'Go to dampers/treble' }).click();
    const note = page.getByRole('button', { name: 'Note damper order, section treble' });
    await expect(note).toBeFocused();
    await expect(note).toBeInViewport();
  });

  await test.step('a kind is ticked as a whole, one note of it is left out, and the rest is accepted by name', async () => {
    await page.goto(check);
    const cores = page.getByRole('listitem').filter({ hasText: 'core diameter: 28 open' });
    await cores.getByRole('checkbox').first().check();
    await cores.getByText('A0 to C3').click();
    await cores.getByRole('checkbox', { name: 'D1', exact: true }).uncheck();
    expect(
      await cores
        .getByRole('checkbox')
        .first()
        .evaluate((box: HTMLInputElement) => box.indeterminate),
    ).toBe(true);
    const { violations } = await axe(page).withTags(levels).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    await page.getByLabel('Reason for accepting the ticked gaps').fill('the old wire goes to the maker');
    await page.getByRole('button', { name: 'Accept 27 gaps by name' }).click();
    await expect(open).toContainText('288 gaps are open');
    await expect(page.getByText('Accepted by name: 27')).toBeVisible();
    await expect(page.getByRole('button', { name: 'All sent' })).toBeVisible();
    const accepted = (await entriesOnServer(server, job)).flatMap(({ fact }) =>
      fact.kind === 'gap-accepted' ? [(fact as { gap: string }).gap] : [],
    );
    expect(accepted).toHaveLength(27);
    expect(accepted).not.toContain('core-diameter/D1');
  });
});
