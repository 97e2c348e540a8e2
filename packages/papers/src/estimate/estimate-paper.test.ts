import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { BulletList, PageTree, Table } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { appraisedJob } from '../testing/appraised-job.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { estimatePaper } from './estimate-paper.ts';

const options = { ...testOptions, isSealIntact: undefined };
const made = estimatePaper(appraisedJob(), options);
const accepted = estimatePaper(appraisedJob({ estimate: 'accepted' }), options);
const anew = estimatePaper(appraisedJob({ estimate: 'made anew' }), options);
const none = estimatePaper(appraisedJob({ estimate: 'none' }), options);

const tablesOf = ({ blocks }: PageTree) => blocks.filter((block): block is Table => block.is === 'table');
const boxOf = ({ blocks }: PageTree, tone: 'note' | 'seal') =>
  blocks.flatMap((block) => (block.is === 'box' && block.tone === tone ? [block] : []))[0];
const ticksOf = ({ blocks }: PageTree) =>
  blocks.filter((block): block is BulletList => block.is === 'list' && block.marks === 'boxes');
const plain = (text: string | undefined) => text?.replace(/\s/gu, ' ');

describe('estimatePaper()', () => {
  it('makes the trees that were looked at and accepted', async () => {
    for (const [name, tree] of Object.entries({ made, accepted, 'made-anew': anew, none }))
      await expect(JSON.stringify(tree, null, 1)).toMatchFileSnapshot(`../saved-trees/estimate-${name}.json`);
  });

  it('is written in German for who reads German, the same amounts with a comma', async () => {
    const german = estimatePaper(appraisedJob(), { ...germanOptions, isSealIntact: undefined });
    await expect(JSON.stringify(german, null, 1)).toMatchFileSnapshot('../saved-trees/estimate-german.json');
    // The sums of the English paper, worked out by hand below.
    expect(tablesOf(german)[2]!.rows.map((row) => ('cells' in row ? row.cells : []))).toContainEqual([
      'Summe ohne Steuer',
      '1.563,70',
      '2.810,37',
    ]);
    expect(renderCsv(german)).toBe(renderCsv(made));
  });

  it('comes out as by hand', () => {
    const [firm, conditional, totals] = tablesOf(made);
    // 8.5 h · 68 = 578.00; 6.25 h · 68 = 425.00; 24 · 14.90 = 357.60; 0.385 · 59.99 = 23.096 → 23.10; 180.00
    const amounts = firm!.rows.flatMap((row) => ('cells' in row ? [row.cells.at(-1)] : []));
    expect(amounts).toEqual([
      '578.00',
      '425.00',
      '1,003.00',
      '357.60',
      '23.10',
      '380.70',
      '180.00',
      '180.00',
    ]);
    // 16 h · 68 = 1088.00; 2 h 20 min · 68 = 158.666… → 158.67
    expect(conditional!.rows.flatMap((row) => ('cells' in row ? [row.cells.at(-1)] : []))).toEqual([
      '1,088.00',
      '158.67',
    ]);
    // 19 % of 1383.70 = 262.903; of 2630.37 = 499.7703; 7 % of 180 = 12.60
    expect(totals!.rows.map((row) => ('cells' in row ? row.cells : []))).toEqual([
      ['Sum without tax', '1,563.70', '2,810.37'],
      ['Tax at 19 %', '262.90', '499.77'],
      ['Tax at 7 %', '12.60', '12.60'],
      ['Total, tax included', '1,839.20', '3,322.74'],
    ]);
    const short = boxOf(made, 'note')!;
    expect(plain(short.title)).toBe('EUR 1,839.20, tax included');
    expect(plain(short.texts.join(' '))).toContain('between EUR 1,839.20 and EUR 3,322.74');
  });

  it('keeps what is only done if it is found out of the work as planned', () => {
    const [firm, conditional] = tablesOf(made);
    expect(JSON.stringify(firm)).not.toContain('Mend the pin block');
    expect(conditional!.rows.map((row) => ('band' in row ? row.band : ''))).toContain(
      'If found: layers of the pin block part',
    );
  });

  it('leaves room for an answer until there is one, a tick for each thing that can be agreed', () => {
    const [ticks] = ticksOf(made);
    expect(ticks!.items).toHaveLength(4);
    expect(plain(ticks!.items[0])).toBe('I accept version 1 of this estimate: EUR 1,839.20, tax included.');
    expect(plain(ticks!.items[2])).toContain('Shim the board anew (EUR 158.67 without tax)');
    expect(made.blocks.some(({ is }) => is === 'signature lines')).toBe(true);
  });

  it('prints an answer that was recorded, with what was agreed in advance', () => {
    expect(ticksOf(accepted)).toEqual([]);
    const box = boxOf(accepted, 'seal')!;
    expect(box.title).toBe('Version 1 was accepted by Ines Okafor on 6 May 2026');
    // 1563.70 + 158.67 = 1722.37, of which 1542.37 at 19 %: 293.0503; 1722.37 + 293.05 + 12.60 = 2028.02
    expect(box.texts.map(plain)).toEqual([
      'Agreed is EUR 1,839.20, tax included; with what was agreed in advance up to EUR 2,028.02.',
      'Agreed in advance, if it is found: Shim the board anew. The rest is asked for first.',
      '“Please before the autumn term.”',
    ]);
  });

  it('asks for a new answer after a new version, and says what was said to the earlier one', () => {
    expect(ticksOf(anew)).toHaveLength(1);
    const text = plain(JSON.stringify(anew));
    expect(text).toContain(
      'Version 1 of 4 May 2026 by Ada: EUR 1,839.20, tax included; accepted by Ines Okafor on 6 May 2026; that holds for it alone.',
    );
  });

  it('lists both where two devices that were apart made a version of one number', () => {
    const job = appraisedJob({ estimate: 'made anew' });
    const [first, second] = job.estimates;
    const twins = estimatePaper({ ...job, estimates: [first!, { ...second!, by: 'Bo' }, second!] }, options);
    expect(JSON.stringify(twins)).toContain('Version 2 of 4 May 2026 by Bo');
  });

  it('says when its last day has passed', () => {
    const validity = (at: string) => JSON.stringify(estimatePaper(appraisedJob(), { ...options, at }));
    expect(validity('2026-06-30T23:00:00.000Z')).not.toContain('has passed');
    expect(validity('2026-07-01T00:00:00.000Z')).toContain('30 June 2026, which has passed');
  });

  it('says so when no estimate was made', () => {
    expect(boxOf(none, 'note')?.title).toBe('No estimate was made yet');
    expect(renderCsv(none).trim().split('\r\n')).toHaveLength(1);
  });

  it('says whether prices hold tax, and follows it in the words of the totals', () => {
    const job = appraisedJob();
    const estimates = job.estimates.map((one) => ({ ...one, pricesIncludeTax: true }));
    const tree = estimatePaper({ ...job, estimates }, options);
    const text = JSON.stringify(tree);
    expect(text).toContain('The prices of the lines are with tax.');
    // 1383.70 holds 19 %: 1383.70 · 19/119 = 220.926; 180 holds 7 %: 11.776
    expect(tablesOf(tree)[2]!.rows.map((row) => ('cells' in row ? row.cells.slice(0, 2) : []))).toEqual([
      ['Sum without tax', '1,330.99'],
      ['Tax within it at 19 %', '220.93'],
      ['Tax within it at 7 %', '11.78'],
      ['Total, tax included', '1,563.70'],
    ]);
  });

  it('writes a currency without smaller unit without a point', () => {
    const job = appraisedJob();
    const estimates = job.estimates.map((one) => ({ ...one, currency: 'JPY' }));
    expect(plain(boxOf(estimatePaper({ ...job, estimates }, options), 'note')!.title)).toMatch(
      /^JPY 183,9\d\d,/,
    );
  });
});

describe('the estimate as CSV', () => {
  const { data, errors } = Papa.parse<Record<string, string>>(renderCsv(made), {
    header: true,
    skipEmptyLines: true,
  });

  it('reads back lines, taxes and totals that add up', () => {
    expect(errors).toEqual([]);
    const cents = (text: string | undefined) => Math.round(Number(text) * 100);
    const sum = (rows: readonly Record<string, string>[], column: string) =>
      rows.reduce((total, row) => total + cents(row[column]), 0);
    const of = (name: string) => data.filter(({ row }) => row === name);
    const [total] = of('total, as planned');
    const [all] = of('total, if all is found');
    expect(sum(of('line'), 'amount')).toBe(cents(total?.net));
    expect(sum([...of('line'), ...of('conditional line')], 'amount')).toBe(cents(all?.net));
    for (const column of ['net', 'tax', 'gross'])
      expect(sum(of('tax, as planned'), column)).toBe(cents(total?.[column]));
    expect(total).toMatchObject({
      gross: '1839.20',
      currency: 'EUR',
      prices_include_tax: 'no',
      version: '1',
    });
    expect(data[0]).toMatchObject({
      line_id: 'stringing',
      minutes: '510',
      quantity: '',
      price_each: '68.00',
      tax_rate_percent: '19',
      amount: '578.00',
    });
  });
});
