import { english } from '@becket/core';
import { digestOf, foldJob } from '@becket/journal';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { FactList, PageTree, Photos, Table } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { changedJob, changedJournal, changePhotoBytes, changePhotos } from '../testing/changed-job.ts';
import { testOptions } from '../testing/paper-options.ts';
import { smallJob } from '../testing/small-job.ts';
import { changeOrderPaper } from './change-order-paper.ts';
import { changeOrderTotals } from './change-totals.ts';
import { priceText } from './price-text.ts';

const waiting = changeOrderPaper(changedJob(), testOptions);
const answered = changeOrderPaper(changedJob({ isAnswered: true }), { ...testOptions, firstUnit: 'in' });

const factsOf = (tree: PageTree): Map<string, string> =>
  new Map(
    tree.blocks
      .filter((block): block is FactList => block.is === 'facts')
      .flatMap(({ rows }) => rows.map(({ name, value }) => [name, value] as const)),
  );
const tableOf = (tree: PageTree): Table => tree.blocks.find((block): block is Table => block.is === 'table')!;
/** Amounts are set with a space that does not break. */
const plain = (text: unknown): string => JSON.stringify(text).replaceAll('\u00a0', ' ');

describe('changeOrderPaper()', () => {
  it('makes the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(waiting, null, 1)).toMatchFileSnapshot(
      '../saved-trees/change-order-waiting.json',
    );
    await expect(JSON.stringify(answered, null, 1)).toMatchFileSnapshot(
      '../saved-trees/change-order-answered.json',
    );
  });

  it('prints a price in its currency with the digits it has, nothing as nothing, and what is not priced as such', () => {
    // ISO 4217: the euro is counted in hundredths, the yen in nothing smaller.
    const prices = tableOf(waiting).rows.map((row) => ('cells' in row ? row.cells[3] : undefined));
    expect(plain(prices)).toBe(plain(['EUR 450.50', 'EUR 0.00', { blank: 'not priced yet' }, 'JPY 1,200']));
    const days = tableOf(waiting).rows.map((row) => ('cells' in row ? row.cells[4] : undefined));
    expect(days).toEqual(['3', '0.5', { blank: 'not said yet' }, { blank: 'not said yet' }]);
  });

  it('adds up by currency, and says what is not in the sum', () => {
    expect(plain(factsOf(waiting).get('Together'))).toBe(
      plain(
        'EUR 450.50 and JPY 1,200; 1 line is not priced yet and not in this sum; 3.5 working days; for 2 lines the days are not said yet and not among these (4 lines)',
      ),
    );
  });

  it('adds up what is agreed, declined and waiting apart, once the customer has answered', () => {
    const facts = factsOf(answered);
    expect(plain(facts.get('Agreed'))).toBe(plain('EUR 450.50; 3 working days (1 line)'));
    expect(plain(facts.get('Declined'))).toBe(plain('EUR 0.00; 0.5 working days (1 line)'));
    expect(facts.get('Still to be decided')).toMatch(/^JPY.1,200; 1 line is not priced yet .* \(2 lines\)$/);
    expect(facts.has('Together')).toBe(false);
    expect(plain(answered)).toContain('agreed by Ines Okafor, 9 March 2026');
    expect(plain(answered)).toContain('please keep the old cap for me');
  });

  it('leaves room to decide, to name the day and to sign, as long as a line waits', () => {
    expect(waiting.blocks).toContainEqual({ is: 'signature lines', names: ['name', 'day', 'signature'] });
    const all = changedJournal({ isAnswered: true });
    const job = foldJob(all);
    const whole = {
      ...job,
      changeAnswers: job.damages.map(({ entry }) => ({ ...job.changeAnswers[0]!, damage: entry })),
    };
    expect(changeOrderPaper(whole, testOptions).blocks.some(({ is }) => is === 'signature lines')).toBe(
      false,
    );
  });

  it('says of each line where, how grave, what to do, why it was not seen, and who noted it when', () => {
    const text = plain(waiting);
    for (const words of [
      'section bass, along the front row of bridge pins',
      'C3, string 2',
      'second web from the left',
      'stop the work',
      'New cap over the whole section, pinned to the old holes',
      'It lay under the strings, and closed under their load',
      '8 March 2026 by Bo',
    ])
      expect(text).toContain(words);
  });

  it('stops and defers to a specialist where a line stops the work, and only there', () => {
    const cautions = (tree: PageTree) => tree.blocks.filter((block) => block.is === 'box');
    expect(plain(cautions(waiting))).toContain('Line 3 has to be settled before anything else');
    expect(plain(cautions(waiting))).toContain('specialist trade');
    const job = changedJob();
    const calm = { ...job, damages: job.damages.filter(({ gravity }) => gravity !== 'stop the work') };
    expect(cautions(changeOrderPaper(calm, testOptions))).toEqual([]);
  });

  it('shows the photo of a line by its digest, with its marks and lengths ready to be set', () => {
    const [first, second, third] = waiting.blocks.filter((block): block is Photos => block.is === 'photos');
    expect(first?.photos[0]?.digest).toBe(digestOf(changePhotos[0]!));
    // By similarity: the bar is 0.3 of the width and 100 mm, the other length 0.6 of it, so 200 mm.
    expect(first?.photos[0]?.marks.map(({ mark, words }) => [mark, words])).toEqual([
      ['arrow', 'begins here'],
      ['label', 'cap lifts'],
      ['scale bar', '100.0 mm'],
      ['distance', '≈ 200.0 mm'],
    ]);
    expect(second?.photos[0]?.title).toBe('nothing said of what it shows');
    expect(changePhotoBytes(third!.photos[0]!.digest)).toBeUndefined();
  });

  it('says that a photo was taken out of the job, and that a line has none', () => {
    const job = changedJob();
    const without = changeOrderPaper({ ...job, photos: [] }, testOptions);
    expect(plain(without)).toContain('one was named, and taken out of the job since');
    expect(factsOf(waiting).get('Photo')).toBe('none');
  });

  it('says that nothing was found, and that a record was not sealed', () => {
    const tree = changeOrderPaper(smallJob(), { ...testOptions, isSealIntact: undefined });
    expect(plain(tree)).toContain('Nothing was noted as found after the strip so far.');
    expect(factsOf(tree).get('As-found record')).toMatch(/^not sealed/);
    expect(tree.machineTable.rows).toEqual([]);
    const broken = changeOrderPaper(changedJob(), { ...testOptions, isSealIntact: false });
    expect(factsOf(broken).get('As-found record')).toContain('CAREFUL');
  });

  it('as CSV has a price only beside "priced", in whole minor units', () => {
    const { data } = Papa.parse<Record<string, string>>(renderCsv(answered).trim(), { header: true });
    expect(data.map((row) => [row.price_minor_units, row.currency, row.price_state])).toEqual([
      ['45050', 'EUR', 'priced'],
      ['0', 'EUR', 'priced'],
      ['', '', 'not priced'],
      ['1200', 'JPY', 'priced'],
    ]);
    expect(data.map((row) => [row.working_days, row.working_days_state, row.answer])).toEqual([
      ['3', 'said', 'agreed'],
      ['0.5', 'said', 'declined'],
      ['', 'not said', 'waiting'],
      ['', 'not said', 'waiting'],
    ]);
    expect(data[1]).toMatchObject({ key: '28', note: 'C3', string: '2', section: '' });
    expect(data[0]?.record_digest_sha256).toMatch(/^[0-9a-f]{64}$/);
  });
});

describe('changeOrderTotals()', () => {
  it('adds exactly, whatever the order, and counts every line once as priced or not', () => {
    const [damage] = changedJob().damages;
    const priced = fc.option(
      fc.record({
        priceMinorUnits: fc.integer({ min: 0, max: 2 ** 40 }),
        currency: fc.constantFrom('EUR', 'JPY', 'KWD'),
      }),
      { nil: {} },
    );
    fc.assert(
      fc.property(fc.array(priced, { maxLength: 30 }), fc.nat(), (prices, turn) => {
        const { priceMinorUnits: _, currency: __, ...bare } = damage!;
        const lines = prices.map((price) => ({ ...bare, ...price }));
        const cut = lines.length === 0 ? 0 : turn % lines.length;
        const turned = [...lines.slice(cut), ...lines.slice(0, cut)];
        const byCurrency = (all: typeof lines) =>
          new Map(changeOrderTotals(all).prices.map(({ currency, minorUnits }) => [currency, minorUnits]));
        expect(byCurrency(turned)).toEqual(byCurrency(lines));
        // An independent sum, in integers without a limit.
        for (const [currency, sum] of byCurrency(lines))
          expect(BigInt(sum)).toBe(
            prices
              .filter((price) => 'currency' in price)
              .filter((price) => price.currency === currency)
              .reduce((all, { priceMinorUnits }) => all + BigInt(priceMinorUnits), 0n),
          );
        expect(changeOrderTotals(lines).withoutPrice).toBe(
          prices.filter((price) => !('currency' in price)).length,
        );
      }),
    );
  });
});

describe('priceText()', () => {
  it('leaves an amount in a currency nobody knows in its smallest units', () => {
    expect(priceText(1250, 'QQQ', english)).toBe('1250 smallest units of QQQ');
  });
});
