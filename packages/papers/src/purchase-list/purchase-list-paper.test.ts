import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { renderCsv } from '../render/csv.ts';
import { fontsOnNode } from '../render/fonts-on-node.ts';
import { renderPdf } from '../render/pdf.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { smallJob } from '../testing/small-job.ts';
import type { PurchaseFigures } from './purchase-figures.ts';
import { purchaseListPaper } from './purchase-list-paper.ts';

const figures: PurchaseFigures = {
  scale: 'the chosen scale ‘invented’',
  isChosenScale: true,
  scaleProblem: undefined,
  neededOn: '2026-04-01',
  suppliers: [
    {
      supplier: 'Invented Wire',
      currency: 'EUR',
      total: '29.00',
      orderBy: '2026-03-22',
      rows: [
        {
          what: 'Plain wire 1.041 mm',
          article: 'A-18',
          needed: '63 g',
          covered: '40 g on the shelf',
          packs: 2,
          pack: 'coil of 500 g',
          price: '14.50',
          total: '29.00',
          orderBy: '2026-03-22',
          remark: 'by mass',
          machine: {
            item: 'wire 1.041 mm',
            unit: 'g',
            needed: 63,
            toBuy: 23,
            packHolds: 500,
            price: '14.50',
            total: '29.00',
          },
        },
      ],
    },
  ],
  notListed: [
    { what: 'Felt glue', needed: '1 piece', onHand: 'not counted', toBuy: '1 piece', because: 'a list' },
  ],
  covered: [],
  unknown: [
    { what: 'Punchings', needed: 'unknown', onHand: 'not counted', toBuy: '', because: 'nobody has said' },
  ],
  bySize: [
    { what: 'Plain wire 1.041 mm', needed: '63 g', onHand: '40 g', toBuy: '23 g', because: 'one wire' },
  ],
  notCounted: ['The stringing of D4 is not described.'],
  allowances: ['Wire: 10 % for spoilage.'],
  orders: [],
};
const text = (more: Partial<PurchaseFigures> = {}) =>
  JSON.stringify(purchaseListPaper(smallJob(), testOptions, { ...figures, ...more }));

describe('purchaseListPaper()', () => {
  it('says what to buy from whom, by when, and what it costs', () => {
    expect(text()).toContain('29.00 EUR, to be ordered by 22 March 2026');
    expect(text()).toContain('"A-18","Plain wire 1.041 mm","63 g","40 g on the shelf","2","coil of 500 g"');
  });

  it('leaves a blank where nobody knows in German too', () => {
    const unknown = [{ ...figures.unknown[0]!, what: 'Filzscheiben', needed: 'unbekannt' }];
    const paper = purchaseListPaper(smallJob(), germanOptions, { ...figures, unknown });
    expect(JSON.stringify(paper)).toContain('["Filzscheiben",{"blank":"unbekannt"}');
    expect(paper.title).toBe('Einkaufsliste');
  });

  it('leaves a blank where nobody knows, and says what is not counted', () => {
    expect(text()).toContain('{"blank":"unknown"}');
    expect(text()).toContain('The stringing of D4 is not described.');
  });

  it('warns before a scale is chosen, and when the chosen one has changed', () => {
    expect(text()).not.toContain('No scale has been chosen');
    expect(text({ isChosenScale: false })).toContain('No scale has been chosen');
    expect(text({ scaleProblem: 'It is another now.' })).toContain('It is another now.');
  });

  it('has wire and pins by size in one table whoever sells them, unless no price list has any: then once', () => {
    expect(text()).toContain('Wire and pins by size');
    const unlisted = { suppliers: [], notListed: figures.bySize };
    expect(text(unlisted)).not.toContain('Wire and pins by size');
    expect(text(unlisted)).toContain('Plain wire 1.041 mm');
  });

  it('does not tell a supplier whose piano it is', () => {
    expect(text()).not.toContain('Okafor');
  });

  it('is a PDF that reads back in both sizes, and a CSV with one line a thing to buy', async () => {
    const tree = purchaseListPaper(smallJob(), testOptions, figures);
    for (const size of ['A4', 'Letter'] as const) {
      const { pages } = await readPdf(
        await renderPdf(tree, { size, fonts: await fontsOnNode(), madeAt: new Date(0) }),
      );
      expect(pages.map(({ words }) => words).join('')).toContain(withoutSpaces('coil of 500 g'));
    }
    const { data, errors } = Papa.parse<Record<string, string>>(renderCsv(tree), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    expect(data).toMatchObject([{ article: 'A-18', to_buy: '23', packs: '2', order_by: '2026-03-22' }]);
  });
});
