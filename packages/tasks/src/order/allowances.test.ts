import { SHOP_JOURNAL, STARTING_BASS_ALLOWANCES } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { memoryContext } from '../testing/memory-context.ts';
import {
  allowanceNames,
  allowances,
  bassAllowancesOf,
  orderPolicyOf,
  receivedTolerancesOf,
  setAllowance,
  takeBackAllowance,
} from './allowances.ts';
import { STARTING_ORDER_POLICY } from './order-policy.ts';
import { STARTING_RECEIVED_TOLERANCES } from './received-tolerances.ts';
import { readShop } from './shop.ts';
import { suppliesOf } from './supplies.ts';

describe('allowances of the shop', () => {
  it('are the starting figures while nobody has set one', () => {
    expect(orderPolicyOf(new Map())).toEqual(STARTING_ORDER_POLICY);
    expect(receivedTolerancesOf(new Map())).toEqual(STARTING_RECEIVED_TOLERANCES);
    expect(bassAllowancesOf(new Map())).toEqual(STARTING_BASS_ALLOWANCES);
  });

  it('hold for every job once they are set, with their source, and are taken back one by one', async () => {
    const context = memoryContext();
    await setAllowance(context, { name: 'wire-spoilage-share', value: 0.05, source: 'our last ten pianos' });
    await setAllowance(context, { name: 'wire-spoilage-share', value: 0.2, source: 'an apprentice strings' });
    const policy = async () => orderPolicyOf((await readShop(context)).allowances);
    expect((await policy()).wire).toEqual({
      source: 'an apprentice strings; our own starting figures',
      spoilageShare: 0.2,
      spareWires: 1,
    });
    const reason = 'typed by a slip';
    await takeBackAllowance(context, { name: 'wire-spoilage-share', reason });
    expect((await policy()).wire.spoilageShare).toBe(0.05);
    await takeBackAllowance(context, { name: 'wire-spoilage-share', reason });
    expect(await policy()).toEqual(STARTING_ORDER_POLICY);
    await expect(takeBackAllowance(context, { name: 'wire-spoilage-share', reason })).rejects.toThrow(
      /^Cannot take this figure back/,
    );
    // Nothing is rubbed out: two figures and two withdrawals stand in the journal.
    expect((await context.store.entries(SHOP_JOURNAL)).entries).toHaveLength(4);
  });

  it('change the quantities of a job as far as they say, and no others', async () => {
    const context = memoryContext();
    const job = await openDemoJob(context);
    const before = suppliesOf(job);
    const more = suppliesOf(job, orderPolicyOf(new Map([['wire-spares', { value: 3, source: 'x' }]])));
    for (const line of more.lines) {
      const same = before.lines.find(({ id }) => id === line.id)!;
      if (line.group !== 'plain wire') expect(line).toEqual(same);
      else expect(line.total!).toBeGreaterThan(same.total!);
      expect(line.needed).toBe(same.needed);
    }
  });

  it.each([
    ['no-such-figure', 1, 'x', /one of wire-spoilage-share, /],
    ['wire-spoilage-share', 1.01, 'x', /a share from 0 to 100 % is needed, 101 was found/],
    ['wire-spares', 1.5, 'x', /a whole number from 0 to 50 is needed, 1.5 was found/],
    ['becket_m', 6, 'x', /a length from 0 to 100 mm is needed, 6000 was found/],
    ['becket_m', Number.NaN, 'x', /NaN was found/],
    ['becket_m', 0.006, '  ', /where it comes from is needed/],
  ])('refuses %s = %d from %j and keeps nothing', async (name, value, source, why) => {
    const context = memoryContext();
    await expect(setAllowance(context, { name, value, source })).rejects.toThrow(why);
    expect((await context.store.entries(SHOP_JOURNAL)).entries).toEqual([]);
  });

  it('leave alone what a later program has set', () => {
    expect(orderPolicyOf(new Map([['a-figure-of-tomorrow', { value: 3, source: 'x' }]]))).toEqual(
      STARTING_ORDER_POLICY,
    );
  });

  it('have names that say the unit of a length', () => {
    for (const name of allowanceNames) expect(allowances[name].is === 'length').toBe(name.endsWith('_m'));
  });
});
