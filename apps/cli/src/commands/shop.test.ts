import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { failureOf } from '../failure.ts';
import { becketProgram } from '../program.ts';

const folder = mkdtempSync(join(tmpdir(), 'becket-cli-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs a command as main.ts does, but in this process: these are dozens, and each would load the program anew. */
async function becket(...args: string[]): Promise<{ status: number; out: string; talk: string }> {
  const said = { out: '', talk: '' };
  const to = (where: 'out' | 'talk') => (chunk: unknown) => {
    said[where] += String(chunk);
    return true;
  };
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation(to('out')),
    vi.spyOn(process.stderr, 'write').mockImplementation(to('talk')),
  ];
  const before = process.exitCode;
  try {
    const all = ['--data', join(folder, 'data'), '--by', 'Ada', ...args];
    await (await becketProgram(all)).parseAsync(all, { from: 'user' });
    return { status: Number(process.exitCode ?? 0), ...said };
  } catch (error) {
    const { sentence, status } = failureOf(error);
    return { status, ...said, talk: said.talk + sentence };
  } finally {
    process.exitCode = before;
    for (const spy of spies) spy.mockRestore();
  }
}
/** What a command that must go well says as JSON. */
async function told(...args: string[]) {
  const { status, out, talk } = await becket('--json', ...args);
  expect({ args, status, talk }).toEqual({ args, status: 0, talk: '' });
  return JSON.parse(out);
}

describe('becket stock, prices and orders', () => {
  it('count, set aside, buy and take in what a job needs', async () => {
    const { job } = await told('demo');
    expect((await becket('stock')).out).toContain('Nothing was ever noted');

    const example = (await becket('prices', 'example')).out;
    const file = join(folder, 'prices.csv');
    writeFileSync(file, example);
    expect(
      await told('prices', 'keep', 'Invented Wire', file, '--currency', 'eur', '--lead-time-days', '10'),
    ).toMatchObject({ supplier: 'Invented Wire', articles: 4 });
    expect((await becket('prices')).out).toMatch(/Invented Wire\s+4\s+EUR\s+10/);
    expect((await becket('prices', 'list', 'Invented Wire')).out).toMatch(
      /W-0991\s+wire 0\.991 mm\s+coil of 500 g/,
    );

    const counted = await told('stock', 'count', 'wire 0.991 mm', '0.5 kg', '--note', 'the open coil');
    expect(counted).toMatchObject({ item: 'wire 0.991 mm', unit: 'g', onHand: 500, free: 500 });
    expect(await told('stock', 'use', 'wire .991mm', '20 g')).toMatchObject({ onHand: 480 });
    const slip = await told('stock', 'take-in', 'wire 0.991 mm', '9 kg');
    await told('stock', 'undo', slip.entry, '--reason', 'a slip of the pen');
    await told('stock', 'minimum', 'wire 0.991 mm', '250');

    const [mine] = await told('stock', 'reserve', job);
    expect(mine).toMatchObject({ item: 'wire 0.991 mm', job });
    const shelf = await told('stock', 'list');
    expect(shelf.lines).toEqual([
      expect.objectContaining({ onHand: 480, reserved: mine.open, free: 480 - mine.open, minimum: 250 }),
    ]);
    const cover = await becket('--json', 'stock', 'cover', job);
    expect(cover.status).toBe(1);
    const covered = JSON.parse(cover.out).find(({ id }: { id: string }) => id === 'wire 0.991 mm');
    expect(covered).toMatchObject({ covered: mine.open, mine: mine.open });

    const drafted = await told('orders', 'draft', job, 'Invented Wire', '--needed-on', '2027-03-20');
    expect(drafted).toMatchObject({ supplier: 'Invented Wire', state: 'drafted', neededOn: '2027-03-20' });
    const early = await becket('orders', 'receive', job, drafted.order, '--all');
    expect(early.status).toBe(3);
    expect(early.talk).toContain('Note it as sent first');
    await told('orders', 'sent', job, drafted.order, '--on', '2027-03-01', '--expected-on', '2027-03-12');
    const come = await told('orders', 'receive', job, drafted.order, '--all', '--on', '2027-03-11');
    expect(come.state).toBe('delivered');
    const [{ delivery }] = come.deliveries;
    expect(
      await told('orders', 'undo-receipt', job, drafted.order, delivery, '--reason', 'another parcel'),
    ).toMatchObject({
      state: 'sent',
    });
    expect((await becket('orders', 'list', job)).out).toContain('sent, promised for 12 March 2027');

    await told('stock', 'release', mine.reservation, '--reason', 'the job waits');
    expect((await told('stock', 'list')).reservations).toEqual([]);
  });

  it('sign, order and check a bass set', async () => {
    const { job } = await told('demo');
    expect((await becket('orders', 'bass-checks', job)).status).toBe(1);
    expect((await becket('orders', 'draft-bass', job, 'Invented Strings')).status).toBe(5);
    await told('orders', 'sign', job, '--all', '--name', 'Ada', '--reason', 'the old strings go along');
    const { order } = await told('orders', 'draft-bass', job, 'Invented Strings');
    await told('orders', 'sent', job, order);
    await told('orders', 'receive', job, order, '--all', '--measured', 'A0/1 core-diameter 1.5 mm');
    const checked = await becket('orders', 'check', job, order);
    expect(checked.status).toBe(1);
    expect(checked.out).toContain('Do not string it before it is settled with the maker');
    await told(
      ...['orders', 'accept', job, order, 'received/A0/1/core-diameter'],
      ...['--name', 'Ada', '--reason', 'measured at a kink'],
    );
    expect((await becket('orders', 'check', job, order)).out).toContain('Taken by Ada: measured at a kink');
  });

  it('refuse in one sentence, with the status that fits', async () => {
    const refused = async (...args: string[]) => {
      const { status, out, talk } = await becket(...args);
      expect(out).toBe('');
      return { status, talk };
    };
    expect(await refused('stock', 'count', 'string', '5')).toMatchObject({
      status: 3,
      talk: expect.stringMatching(/^Cannot tell what 'string' is/),
    });
    expect((await refused('stock', 'count', 'wire 0.991 mm', '5 pieces')).status).toBe(3);
    expect((await refused('prices', 'list', 'Nobody')).status).toBe(3);
    expect(
      (await refused('prices', 'keep', 'Nobody', join(folder, 'no.csv'), '--currency', 'EUR')).status,
    ).toBe(4);
    expect((await refused('orders', 'list', '01ARZ3NDEKTSV4RRFFQ69G5FAV')).status).toBe(4);
    expect(
      (await refused('orders', 'receive', 'shop', '01ARZ3NDEKTSV4RRFFQ69G5FAV', '--line', 'two')).status,
    ).toBe(2);
    expect((await refused('orders', 'sign', 'shop', '--name', 'Ada', '--reason', 'none')).status).toBe(2);
  });
});
