import { hertz } from '@becket/core';
import { scaleComparison, scaleNotesOf } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { readJob } from '../context.ts';
import { keepPriceList } from '../order/price-list.ts';
import { readShop } from '../order/shop.ts';
import { noteStock } from '../order/stock-commands.ts';
import { suppliesOf } from '../order/supplies.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { wireJob } from '../testing/wire-job.ts';
import { analysedScale } from './analysed-scale.ts';
import { costOfScale, jobWithScale } from './cost-of-scale.ts';

const notes = [40, 41, 42, 43].map((key) => ({
  winding: 'plain' as const,
  key,
  gauge_m: 0.0010414,
  from: 'by hand' as const,
}));

async function costNow(context: ReturnType<typeof memoryContext>, id: Awaited<ReturnType<typeof wireJob>>) {
  const job = await readJob(context, id);
  const { stock } = await readShop(context);
  const found = analysedScale(job, 'as found', { uncertainties: 'left out' });
  return costOfScale({
    supplies: suppliesOf(jobWithScale(job, 'one size', notes)),
    stock,
    job: id,
    comparison: scaleComparison(found.analysis, found.analysis, hertz(440)),
  });
}

describe('costOfScale()', () => {
  it('counts the wire of a scale that is not kept, and prices it as its purchase would be', async () => {
    const context = memoryContext();
    const id = await wireJob(context);
    const job = await readJob(context, id);
    // One size where the chosen scale has two: twelve strings on one line, and the job is as it was.
    const lines = suppliesOf(jobWithScale(job, 'one size', notes)).lines.filter(
      ({ group }) => group === 'plain wire',
    );
    expect(lines.map(({ from }) => from.length)).toEqual([12]);
    expect(scaleNotesOf(job, job.chosenScale!.scale).name).toBe('two sizes');

    expect(await costNow(context, id)).toEqual([
      expect.stringMatching(/^Plain wire: \d+ g in 1 size, /),
      'No price list is kept yet, so no price of wire is told.',
      'Wound strings: 2 to be made, all as they were found. What their maker asks is not known here.',
    ]);
    const csv = 'article,kind,diameter_mm,sold_by,pack,pack_unit,price\nW-18,wire,1.0414,coil,500,g,14.50\n';
    await keepPriceList(context, {
      supplier: 'Invented Wire',
      currency: 'EUR',
      bytes: new TextEncoder().encode(csv),
      fileName: 'prices.csv',
      leadTime_days: undefined,
    });
    // One coil of 500 g holds it.
    expect((await costNow(context, id))[1]).toBe(
      'Wire to buy beside what the shelf has: EUR\u00a014.50 in whole coils.',
    );
    await noteStock(context, [
      { kind: 'stock-counted', item: { kind: 'wire', diameter_m: 0.0010414 }, quantity: 500 },
    ]);
    expect((await costNow(context, id))[1]).toBe('The shelf and what is on order cover all of it.');
  });
});
