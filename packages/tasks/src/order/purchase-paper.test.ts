import { english } from '@becket/core';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readPdf, withoutSpaces } from '../../../papers/src/testing/read-pdf.ts';
import { languageFor } from '../language-for.ts';
import { makePaper } from '../make-paper.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { wireJob } from '../testing/wire-job.ts';
import { orderPolicyOf, setAllowance } from './allowances.ts';
import { keepPriceList } from './price-list.ts';
import { allowancesInWords } from './purchase-figures.ts';
import { noteStock } from './stock-commands.ts';

const prices = `article,kind,diameter_mm,sold_by,pack,pack_unit,price
A-18,wire,1.041,coil,500,g,1234.50
`;

async function csvOf(withPrices: boolean) {
  const context = memoryContext();
  const job = await wireJob(context);
  if (withPrices)
    await keepPriceList(context, {
      supplier: 'Invented Wire',
      currency: 'EUR',
      bytes: new TextEncoder().encode(prices),
      fileName: 'prices.csv',
    });
  await noteStock(context, [
    { kind: 'stock-counted', item: { kind: 'wire', diameter_m: 0.0010414 }, quantity: 40 },
  ]);
  const { bytes } = await makePaper(context, job, { paper: 'purchase-list', format: 'csv' });
  return Papa.parse<Record<string, string>>(new TextDecoder().decode(bytes), {
    header: true,
    skipEmptyLines: true,
  });
}

describe('the purchase list in German', () => {
  it('names what is needed, and leaves a blank for an amount that nobody knows', async () => {
    const language = await languageFor('de-DE');
    const context = { ...memoryContext(), language };
    const job = await wireJob(context);
    const wordsIn = async (own: typeof context) => {
      const { pages } = await readPdf((await makePaper(own, job, { paper: 'purchase-list' })).bytes);
      return pages.map(({ words }) => words).join('');
    };
    const words = await wordsIn(context);
    expect(words).toContain('Einkaufsliste');
    expect(words).toContain(withoutSpaces('Blanker Draht 1,041 mm'));
    const blanks = words.match(/____unbekannt/g)?.length ?? 0;
    expect(blanks).toBeGreaterThan(0);
    expect(words).not.toMatch(/unknown|needed|tohave/i);
    // As many as in English: what is unknown is so in every language.
    expect((await wordsIn({ ...context, language: english })).match(/____unknown/g)).toHaveLength(blanks);
  });
});

describe('allowancesInWords()', () => {
  it('says each source of ours, and leaves what the shop typed, where figures of both are told together', async () => {
    const context = memoryContext();
    const shop = await setAllowance(context, { name: 'wire-spares', value: 2, source: 'our last ten jobs' });
    const [wire] = allowancesInWords(orderPolicyOf(shop.allowances), await languageFor('de-DE'));
    expect(wire).toContain('eigene Anfangswerte; our last ten jobs');
  });
});

describe('the purchase list as CSV', () => {
  it('has a line for each thing a supplier sells, less what is on the shelf', async () => {
    const { data, errors } = await csvOf(true);
    expect(errors).toEqual([]);
    // 63 g needed, see the test of supplies; 40 g on the shelf; 23 g to buy, in coils of 500 g.
    expect(data).toEqual([
      {
        supplier: 'Invented Wire',
        article: 'A-18',
        item: 'wire 1.041 mm',
        what: 'Plain wire 1.041 mm (0.0410 in; US 18)',
        unit: 'g',
        needed: '63',
        to_buy: '23',
        packs: '1',
        pack: 'coil of 500 g',
        pack_holds: '500',
        price: '1234.50',
        total: '1234.50',
        currency: 'EUR',
        order_by: '',
      },
    ]);
  });

  it('is empty but for its columns without a price list', async () => {
    const { data, meta } = await csvOf(false);
    expect(data).toEqual([]);
    expect(meta.fields).toContain('pack_holds');
  });
});
