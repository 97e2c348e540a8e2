import { newUlid, SHOP_JOURNAL, type StockItem } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { readJob } from '../context.ts';
import { bringInJob } from '../job-file/bring-in-job.ts';
import { saveJob } from '../job-file/save-job.ts';
import { listJobs } from '../list-jobs.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { wireJob } from '../testing/wire-job.ts';
import { readShop } from './shop.ts';
import {
  noteStock,
  releaseReservation,
  reserveForJob,
  takeReserved,
  withdrawStockMove,
} from './stock-commands.ts';
import { coverFromStock, reorderList, shortagesOf } from './stock-cover.ts';
import { suppliesOf } from './supplies.ts';

const thick: StockItem = { kind: 'wire', diameter_m: 0.0010414 };

async function twoJobs() {
  const context = memoryContext();
  const [a, b] = [await wireJob(context, 'Grand upstairs'), await wireJob(context, 'Upright below')];
  const { lines } = suppliesOf(await readJob(context, a));
  return { context, a, b, lines, line: lines.find(({ id }) => id === 'wire 1.041 mm')! };
}

describe('the stock of the shop', () => {
  it('is never among the jobs', async () => {
    const { context } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 500 }]);
    const jobs = await listJobs(context);
    expect(jobs.map(({ title }) => title).sort()).toEqual(['Grand upstairs', 'Upright below']);
    expect((await context.store.entries(SHOP_JOURNAL)).entries).toHaveLength(1);
  });

  it('is carried as a file like a job, to a store that has none', async () => {
    const { context } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 500 }]);
    const { bytes, fileName } = await saveJob(context, SHOP_JOURNAL);
    const other = memoryContext();
    await bringInJob(other, { bytes, fileName });
    expect((await readShop(other)).stock).toEqual((await readShop(context)).stock);
    expect(await listJobs(other)).toEqual([]);
  });

  it('covers a job from the shelf, and says what is left to buy', async () => {
    const { context, a, line } = await twoJobs();
    // 43 + 5 + 15 = 63 g are needed; see the sum in the test of supplies.
    expect(coverFromStock(line, (await readShop(context)).stock, a)).toMatchObject({
      onHand: undefined,
      covered: 0,
      toBuy: 63,
    });
    const { stock } = await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 40 }]);
    expect(coverFromStock(line, stock, a)).toMatchObject({ onHand: 40, covered: 40, toBuy: 23 });
  });

  it('reserves what is free and nothing more, and not twice', async () => {
    const { context, a, b, lines, line } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 100 }]);
    await reserveForJob(context, a, lines);
    const { stock } = await reserveForJob(context, a, lines);
    const shelf = stock.lines.find(({ id }) => id === line.id)!;
    expect(shelf).toMatchObject({ onHand: 100, reserved: 63, free: 37 });
    expect(shelf.reservations).toHaveLength(1);
    const after = await reserveForJob(context, b, lines);
    expect(after.stock.lines.find(({ id }) => id === line.id)).toMatchObject({ reserved: 100, free: 0 });
    expect(coverFromStock(line, after.stock, b)).toMatchObject({ mine: 37, covered: 37, toBuy: 26 });
    expect(shortagesOf(after.stock)).toEqual([]);
  });

  it('says who lacks what once less is there than was set aside', async () => {
    const { context, a, b, lines } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 126 }]);
    await reserveForJob(context, a, lines);
    await reserveForJob(context, b, lines);
    const { stock } = await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 90 }]);
    expect(shortagesOf(stock).map(({ sentence }) => sentence)).toEqual([
      "Plain wire 1.041 mm (0.0410 in; US 18): 90 g on hand, 126 g set aside. 'Upright below' (Ada, 1 March 2026) lacks 36 g; set aside before: 'Grand upstairs' (Ada, 1 March 2026).",
    ]);
    const [again] = reorderList(stock);
    expect(again).toMatchObject({ quantity: 36 });
    expect(again?.because).toContain("set aside for 'Grand upstairs' and 'Upright below'");
  });

  it('keeps what two devices reserved apart from each other, and says so on both once they have met', async () => {
    const { context, a, b, lines, line } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 63 }]);
    const phone = { ...memoryContext(), by: 'Bo', device: 'phone' };
    // Ids of the phone must not be those of the tablet, whose clock stands as well.
    let tick = 0;
    phone.newId = () => newUlid(new Date(1_800_000_000_000 + tick++), () => 0.25);
    for (const journal of [a, b, SHOP_JOURNAL])
      await phone.store.append((await context.store.entries(journal)).entries);
    await reserveForJob(context, a, lines);
    await reserveForJob(phone, b, lines);
    const [here, there] = [
      (await context.store.entries(SHOP_JOURNAL)).entries,
      (await phone.store.entries(SHOP_JOURNAL)).entries,
    ];
    await context.store.append(there);
    await phone.store.append(here);
    const met = [await readShop(context), await readShop(phone)];
    expect(met[0]?.stock).toEqual(met[1]?.stock);
    for (const { stock } of met) {
      expect(stock.lines.find(({ id }) => id === line.id)).toMatchObject({ onHand: 63, reserved: 126 });
      expect(shortagesOf(stock).map(({ sentence }) => sentence)).toEqual([
        expect.stringMatching(
          /63 g on hand, 126 g set aside\. 'Upright below' \(Bo, .*\) lacks 63 g; set aside before: 'Grand upstairs' \(Ada/,
        ),
      ]);
    }
  });

  it('asks to buy again below the minimum, and not what is on its way', async () => {
    const { context } = await twoJobs();
    const pins: StockItem = { kind: 'tuning pin', diameter_m: 0.0071628, length_m: 0.0635 };
    const { stock } = await noteStock(context, [
      { kind: 'stock-received', item: pins, quantity: 30 },
      { kind: 'stock-minimum-set', item: pins, minimum: 50 },
      { kind: 'stock-counted', item: thick, quantity: 10 },
    ]);
    expect(reorderList(stock)).toMatchObject([
      { quantity: 20, because: '30 pieces free; at least 50 pieces wanted' },
    ]);
  });

  it('takes what was set aside off the shelf, and refuses a second time', async () => {
    const { context, a, lines, line } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 100 }]);
    await reserveForJob(context, a, lines);
    const { stock } = await takeReserved(context, a, thick);
    expect(stock.lines.find(({ id }) => id === line.id)).toMatchObject({ onHand: 37, reserved: 0, free: 37 });
    await expect(takeReserved(context, a, thick)).rejects.toThrow('Reserve it first');
  });

  it('takes back what was noted by a slip, and nothing that is not of the stock', async () => {
    const { context, a } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 100 }]);
    const { entries } = await noteStock(context, [{ kind: 'stock-used', item: thick, quantity: 90 }]);
    const { stock } = await withdrawStockMove(context, entries.at(-1)!.id, 'a slip');
    expect(stock.lines[0]).toMatchObject({ onHand: 100, used: 0 });
    await expect(withdrawStockMove(context, a, 'a slip')).rejects.toThrow('something noted of the stock');
  });

  it('releases a reservation once', async () => {
    const { context, a, lines } = await twoJobs();
    await noteStock(context, [{ kind: 'stock-counted', item: thick, quantity: 100 }]);
    const { stock } = await reserveForJob(context, a, lines);
    const { entry } = stock.lines[0]!.reservations[0]!;
    const after = await releaseReservation(context, entry, 'the job was put off');
    expect(after.stock.lines[0]).toMatchObject({ reserved: 0, free: 100 });
    await expect(releaseReservation(context, entry, 'again')).rejects.toThrow('one that still stands');
  });
});
