import { SHOP_JOURNAL } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { readJob } from '../context.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { wireJob } from '../testing/wire-job.ts';
import { draftSupplyOrder, moveOrder, readOrders, receiveGoods, undoDelivery } from './orders.ts';
import { keepPriceList, priceListExample } from './price-list.ts';
import { daysBefore, purchaseForShelf, purchaseList } from './purchase-list.ts';
import { readShop } from './shop.ts';
import { noteStock } from './stock-commands.ts';
import { suppliesOf } from './supplies.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const list = (text: string, supplier = 'Invented Wire') => ({
  supplier,
  currency: 'EUR',
  bytes: bytesOf(text),
  fileName: 'prices.csv',
  leadTime_days: 10,
});
const head = 'article,kind,diameter_mm,sold_by,pack,pack_unit,price';

describe('keepPriceList()', () => {
  it('reads its own example', async () => {
    const context = memoryContext();
    const { stock } = await keepPriceList(context, list(priceListExample));
    expect(stock.suppliers).toMatchObject([{ supplier: 'Invented Wire', leadTime_days: 10 }]);
    expect(stock.priceLists[0]?.lines).toMatchObject([
      {
        article: 'W-0991',
        pack: { by: 'coil mass', mass_kg: 0.5 },
        priceMinorUnits: 1450,
        leadTime_days: 10,
      },
      { article: 'W-1041', item: { kind: 'wire', diameter_m: expect.closeTo(0.001041, 9) } },
      { article: 'P-716', item: { kind: 'tuning pin', length_m: 0.0635 }, pack: { by: 'count', count: 50 } },
      { article: 'F-4R', item: { name: 'Felt, 4.0 mm, red', unit: 'mm' }, pack: { count: 1000 } },
    ]);
  });

  it('reads semicolons, a decimal comma and a diameter in inches', async () => {
    const context = memoryContext();
    const text = 'article;kind;diameter_in;sold_by;pack;pack_unit;price\nA;wire;0,039;coil;25;m;1.234,50\n';
    const { stock } = await keepPriceList(context, list(text));
    expect(stock.priceLists[0]?.lines[0]).toMatchObject({
      pack: { by: 'coil length', length_m: 25 },
      priceMinorUnits: 123450,
    });
    expect(stock.priceLists[0]?.lines[0]?.item).toMatchObject({ diameter_m: 0.0009906 });
  });

  it.each([
    [`${head}\nA,wire,0.991,coil,500,g,14.505\nB,wire,1,coil,500,g,1.00`, /row 2 .*at most 2 digits/],
    [
      `${head}\nA,wire,thin,coil,500,g,14.50`,
      /row 2 .*diameter_mm a diameter in millimetres is needed, 'thin'/,
    ],
    [`${head}\nA,wire,0.991,coil,500,g,1\nA,wire,1.041,coil,500,g,1`, /row 3 .*'A' stands in row 2/],
    [`${head}\nA,wire,0.991,bucket,500,g,1`, /sold_by coil, piece or pack is needed, 'bucket'/],
    [`${head}\nA,wire,0.991,coil,0,g,1`, /pack a number above 0/],
    [`${head}\nA,wire,0.991,coil,500,piece,1`, /pack_unit for wire g, kg, m or mm/],
    ['article,kind,price\nA,wire,1', /sold_by, pack were not found/],
  ])('refuses %j with one sentence and keeps nothing', async (text, words) => {
    const context = memoryContext();
    await expect(keepPriceList(context, list(text))).rejects.toThrow(words);
    expect((await context.store.entries(SHOP_JOURNAL)).entries).toEqual([]);
  });
});

describe('purchaseList()', () => {
  async function withPrices(text: string, more?: string) {
    const context = memoryContext();
    const job = await wireJob(context);
    await keepPriceList(context, list(text));
    if (more !== undefined) await keepPriceList(context, list(more, 'Other, also invented'));
    const { stock } = await readShop(context);
    const supplies = suppliesOf(await readJob(context, job));
    return { context, job, stock, supplies };
  }

  it('buys coils that every wire comes out of whole, and sums in minor units', async () => {
    // 1.0414 mm: the longest wire is 2.115 m, so that a piece of 3 m gives one each: four pieces with the spare, and
    // the tenth for spoilage, 0.632 m, is there in what is left over.
    const { supplies, stock, job } = await withPrices(
      `${head}\nA,wire,1.0414,piece,3,m,2.40\nB,wire,0.991,coil,500,g,14.50`,
    );
    const { suppliers } = purchaseList({ supplies, stock, job, neededOn: '2026-04-01' });
    expect(suppliers).toHaveLength(1);
    expect(
      suppliers[0]!.lines.map(({ article, packs, packWords, total }) => [article, packs, packWords, total]),
    ).toEqual([
      ['A', 4, 'piece of 3 m', 960],
      ['B', 1, 'coil of 500 g', 1450],
    ]);
    expect(suppliers[0]).toMatchObject({ total: 2410, currency: 'EUR', orderBy: '2026-03-22' });
  });

  it('takes the cheaper of two suppliers for this quantity', async () => {
    const { supplies, stock, job } = await withPrices(
      `${head}\nA,wire,1.041,coil,1000,g,20.00`,
      `${head}\nZ,wire,1.041,coil,250,g,9.00`,
    );
    const { suppliers, notListed } = purchaseList({ supplies, stock, job });
    expect(suppliers.map(({ supplier }) => supplier)).toEqual(['Other, also invented']);
    expect(notListed.map(({ line }) => line.id)).toContain('wire 0.991 mm');
  });

  it('keeps a bass set and unknown quantities in sight', async () => {
    const { supplies, stock, job } = await withPrices(`${head}\nA,wire,1.041,coil,500,g,14.50`);
    const { unknown, notListed } = purchaseList({ supplies, stock, job });
    expect(notListed.map(({ line }) => line.group)).toContain('bass strings');
    expect(unknown.map(({ line }) => line.what)).toContain('Tuning pins, size not settled');
  });

  it('counts days back over the end of a month and of a leap year', () => {
    // From memory: 2028 is a leap year.
    expect(daysBefore('2028-03-01', 1)).toBe('2028-02-29');
    expect(daysBefore('2026-01-05', 10)).toBe('2025-12-26');
  });
});

describe('an order for the shelf', () => {
  it('brings an item back to its minimum, stands in the journal of the shop, and comes in there', async () => {
    const context = memoryContext();
    await keepPriceList(context, list(`${head}\nA,wire,1.041,coil,500,g,14.50`));
    const item = { kind: 'wire', diameter_m: 0.0010414 } as const;
    await noteStock(context, [
      { kind: 'stock-counted', item, quantity: 100 },
      { kind: 'stock-minimum-set', item, minimum: 700 },
    ]);
    // 600 g are lacking: two coils of 500 g.
    const [purchase] = purchaseForShelf((await readShop(context)).stock).suppliers;
    expect(purchase?.lines.map(({ packs }) => packs)).toEqual([2]);
    const { orders } = await draftSupplyOrder(context, SHOP_JOURNAL, { purchase: purchase! });
    const order = orders[0]!.id;
    await moveOrder(context, SHOP_JOURNAL, { order, to: 'sent', on: '2026-03-02' });
    const sent = await readShop(context);
    expect(purchaseForShelf(sent.stock, sent.orders.orders).suppliers).toEqual([]);
    await receiveGoods(context, SHOP_JOURNAL, {
      order,
      on: '2026-03-12',
      lines: [{ line: 1, quantity: 2 }],
      measured: [],
    });
    const { stock, orders: after } = await readShop(context);
    expect(after.orders[0]?.state).toBe('delivered');
    expect(stock.lines[0]).toMatchObject({ onHand: 1100, free: 1100 });
  });
});

describe('an order of supplies', () => {
  async function ordered() {
    const context = memoryContext();
    const job = await wireJob(context);
    await keepPriceList(
      context,
      list(`${head}\nA,wire,1.041,coil,500,g,14.50\nB,wire,0.991,coil,500,g,14.50`),
    );
    const supplies = suppliesOf(await readJob(context, job));
    const { stock } = await readShop(context);
    const [purchase] = purchaseList({ supplies, stock, job }).suppliers;
    const { orders } = await draftSupplyOrder(context, job, { purchase: purchase!, neededOn: '2026-04-01' });
    return { context, job, supplies, order: orders[0]!.id };
  }

  it('goes on the shelf when it comes, in parts, and then covers the job', async () => {
    const { context, job, supplies, order } = await ordered();
    await moveOrder(context, job, { order, to: 'sent', on: '2026-03-02' });
    const before = purchaseList({
      supplies,
      stock: (await readShop(context)).stock,
      job,
      orders: (await readOrders(context, job)).orders,
    });
    expect(before.suppliers).toEqual([]);
    const part = await receiveGoods(context, job, {
      order,
      on: '2026-03-12',
      lines: [{ line: 1, quantity: 1 }],
      measured: [],
    });
    expect(part.orders[0]?.state).toBe('partly delivered');
    const { stock } = await readShop(context);
    expect(stock.lines).toMatchObject([{ id: 'wire 1.041 mm', onHand: 500 }]);
    const whole = await receiveGoods(context, job, {
      order,
      on: '2026-03-14',
      lines: [{ line: 2, quantity: 1 }],
      measured: [],
    });
    expect(whole.orders[0]?.state).toBe('delivered');
  });

  it('is taken back whole when it was noted by a slip: from the order and from the shelf', async () => {
    const { context, job, order } = await ordered();
    await moveOrder(context, job, { order, to: 'sent', on: '2026-03-02' });
    const lines = [
      { line: 1, quantity: 1 },
      { line: 2, quantity: 1 },
    ];
    const { orders } = await receiveGoods(context, job, { order, on: '2026-03-12', lines, measured: [] });
    const delivery = orders[0]!.deliveries[0]!.entry;
    await expect(undoDelivery(context, job, { order, delivery, reason: ' ' })).rejects.toThrow(
      'a reason is needed',
    );
    const after = await undoDelivery(context, job, { order, delivery, reason: 'another order' });
    expect(after.orders[0]?.state).toBe('sent');
    expect((await readShop(context)).stock.lines).toEqual([]);
    await expect(undoDelivery(context, job, { order, delivery, reason: 'again' })).rejects.toThrow(
      'one that stands is needed',
    );
  });

  it('refuses what cannot be, and leaves both journals as they were', async () => {
    const { context, job, order } = await ordered();
    const count = async () => [
      (await context.store.entries(job)).entries.length,
      (await context.store.entries(SHOP_JOURNAL)).entries.length,
    ];
    const before = await count();
    await expect(moveOrder(context, job, { order, to: 'confirmed', on: '2026-03-02' })).rejects.toThrow(
      'this one is drafted',
    );
    const goods = { order, on: '2026-03-12', lines: [{ line: 1, quantity: 1 }], measured: [] };
    await expect(receiveGoods(context, job, goods)).rejects.toThrow('Note it as sent first');
    await moveOrder(context, job, { order, to: 'sent', on: '2026-03-02' });
    await expect(receiveGoods(context, job, { ...goods, lines: [{ line: 9, quantity: 1 }] })).rejects.toThrow(
      'line 9 was found',
    );
    expect(await count()).toEqual([before[0]! + 1, before[1]]);
  });
});
