import { english } from '@becket/core';
import { bassOrder, type Order } from '@becket/journal';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import type { BulletList, Table } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { fontsOnNode } from '../render/fonts-on-node.ts';
import { renderPdf } from '../render/pdf.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { smallJob } from '../testing/small-job.ts';
import { wholeCompassJob } from '../testing/whole-compass-job.ts';
import { bassStringOrderPaper } from './bass-string-order-paper.ts';
import { notesInWords } from './to-be-confirmed.ts';

const tree = bassStringOrderPaper(smallJob({ sealed: true }), testOptions);
const strings = tree.blocks.find((block): block is Table => block.is === 'table')!;
const cellsOf = (note: string) =>
  strings.rows.flatMap((row) => ('cells' in row && row.cells[0] === note ? [row.cells] : []))[0]!;
const lists = tree.blocks.filter((block): block is BulletList => block.is === 'list');
const [toConfirm, checks] = lists.map(({ items }) => items) as [readonly string[], readonly string[]];

const invented: Order = {
  id: '01SMA000000000000000000998',
  journal: '01SMA000000000000000000001',
  what: 'bass strings',
  supplier: 'Invented Strings',
  currency: undefined,
  lines: [],
  state: 'sent',
  draftedAt: '2026-03-01T10:00:00.000Z',
  by: 'Ines',
  neededOn: undefined,
  sentOn: '2026-03-02',
  expectedOn: undefined,
  scaleDigest: undefined,
  bassStrings: [],
  note: undefined,
  moves: [],
  deliveries: [],
  measured: [],
};

describe('bassStringOrderPaper()', () => {
  it('makes the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(tree, null, 1)).toMatchFileSnapshot(
      '../saved-trees/bass-string-order-sealed.json',
    );
    const inInches = bassStringOrderPaper(smallJob(), {
      ...testOptions,
      firstUnit: 'in',
      isSealIntact: undefined,
    });
    await expect(JSON.stringify(inInches, null, 1)).toMatchFileSnapshot(
      '../saved-trees/bass-string-order-open.json',
    );
  });

  it('makes the German tree that was looked at and accepted, and the same table for machines', async () => {
    const german = bassStringOrderPaper(smallJob({ sealed: true }), germanOptions);
    const { machineTable, ...rest } = german;
    await expect(JSON.stringify(rest, null, 1)).toMatchFileSnapshot(
      '../saved-trees/bass-string-order-german.json',
    );
    expect(machineTable).toEqual(tree.machineTable);
    expect(renderCsv(german)).toBe(renderCsv(tree));
  });

  it('can be read back from its German PDF: trade words, umlauts, quotation marks and decimal commas', async () => {
    const german = bassStringOrderPaper(smallJob({ sealed: true }), germanOptions);
    const pdf = await renderPdf(german, { size: 'A4', madeAt: new Date(0), fonts: await fontsOnNode() });
    const { language, pages } = await readPdf(pdf);
    const text = pages.map(({ words }) => words).join('');
    expect(language).toBe('de-DE');
    for (const words of [
      'Basssaitenbestellung',
      'Kerndraht',
      'Außen-Ø',
      'Öse bis Umspinnung',
      'vorn blank',
      'am Steg blank',
      'G2: Bemerkt wurde „left string is a replacement“.',
      'Durchmesser des Anhangstifts nicht angegeben: F2 bis A#2.',
      // E2: speaking length 1105.75 mm, core 1.205 mm.
      '1105,8',
      '1,205',
    ])
      expect(text).toContain(withoutSpaces(words));
    expect(text).not.toMatch(/\d\.\d{3}(?!\d)/);
  });

  it('orders every string of the wound notes by its side, and nothing else', () => {
    const ordered = strings.rows.flatMap((row) => ('cells' in row ? [row.cells.slice(0, 3)] : []));
    const pair = (note: string) => [
      [note, 'left', '1'],
      [note, 'right', '1'],
    ];
    expect(ordered).toEqual([
      ['E2', 'single', '2'],
      ['F2', 'single', '2'],
      ...['F#2', 'G2', 'G#2', 'A2', 'A#2'].flatMap(pair),
    ]);
  });

  it('prints the median readings, and a tension that comes out by hand', () => {
    // A#2: L = 1021.75 mm, core 1.055 mm, over all 1.47 mm, f = 440 · 2^(-23/12) = 116.541 Hz.
    // μ = 7850·(π/4)·1.055² + 8930·(π/4)²·(1.47² − 1.055²) = 6862 + 5772 = 12 634 mg/m; 4·L²·f²·μ = 716.6 N. The bare
    // ends of 18.5 and 17 mm lie where the string hardly moves: they take away less than 0.1 %.
    expect(cellsOf('A#2').slice(3, 7)).toEqual(['1021.8', '40.23', '1.055', '0.0415']);
    expect(cellsOf('A#2').slice(-4, -2)).toEqual(['717', '161']);
  });

  it('leaves a blank with its reason where a figure is missing, and computes no tension from it', () => {
    expect(cellsOf('F#2')).toContainEqual({ blank: 'unknown', across: 2 });
    expect(cellsOf('A2')).toContainEqual({ blank: 'not read', across: 2 });
    for (const note of ['F#2', 'A2'])
      expect(cellsOf(note).at(-1)).toEqual({ absent: 'not computed', across: 4 });
  });

  it('keeps none and does not apply as answers, not blanks', () => {
    expect(cellsOf('G#2')).toContainEqual({ absent: 'none', across: 2 });
    expect(cellsOf('G#2')).toContainEqual({ absent: 'does not apply', across: 2 });
  });

  it('lists what must be confirmed: blanks, figures that disagree, and what the record cannot say', () => {
    expect(toConfirm).toContain('Core: F#2 unknown (somebody looked and could not read it).');
    expect(toConfirm).toContain('Over all: A2 not read.');
    expect(toConfirm).toContain('Loop style not stated: F2 to A#2.');
  });

  it('lists the checks that do not pass, with who answers for them', () => {
    // F2: 18.5 + 1030 + 14.5 = 1063 mm against 1091.75 read. E2: 18.5 + 1073 + 14 = 1105.5 against 1105.75: within 3 mm.
    const lengths = checks.filter((item) => item.includes('but the speaking length is'));
    expect(lengths).toEqual([
      'NOT SIGNED: F2: bare front 18.5 mm, winding 1030.0 mm and bare back 14.5 mm make 1063.0 mm, but the speaking length is 1091.8 mm: 28.8 mm missing. Measure again.',
    ]);
    const [open] = bassOrder(smallJob({ sealed: true })).checks.filter(({ id }) => !id.includes('/missing/'));
    const signedTree = bassStringOrderPaper(smallJob({ sealed: true }), {
      ...testOptions,
      orders: {
        orders: [],
        signed: [
          {
            kind: 'order-check-signed',
            v: 1,
            check: open!.id,
            sentence: open!.sentence,
            name: 'Ines',
            reason: 'seen on the string',
            at: '2026-03-09T10:00:00.000Z',
            entry: '01SMA000000000000000000999',
          },
        ],
      },
    });
    expect(JSON.stringify(signedTree)).toContain('Signed by Ines on 9 March 2026: seen on the string');
  });

  it('prints the digest of the strings, and warns when they are no longer those of an order', () => {
    const job = smallJob({ sealed: true });
    const { digest } = bassOrder(job);
    expect(JSON.stringify(tree)).toContain(`SHA-256 ${digest}`);
    const ordered = (scaleDigest: string): PaperOptions => ({
      ...testOptions,
      orders: { signed: [], orders: [{ ...invented, scaleDigest }] },
    });
    expect(JSON.stringify(bassStringOrderPaper(job, ordered(digest)))).not.toContain('have changed since');
    expect(JSON.stringify(bassStringOrderPaper(job, ordered('a'.repeat(64))))).toContain(
      'The strings have changed since the order to Invented Strings was drafted on 1 March 2026',
    );
  });

  it('passes on what was remarked of a wound note', () => {
    expect(toConfirm).toContain('G2: it was remarked “left string is a replacement”.');
    expect(toConfirm.join()).not.toContain('kinked at the pin');
  });

  it('names the strength table and says what it is worth', () => {
    const remarks = strings.remarks?.join(' ');
    expect(remarks).toContain('ASTM A228 minimum');
    expect(remarks).toContain('usually tests above');
  });

  it('does not tell a maker of strings whose piano it is', () => {
    expect(JSON.stringify(tree)).not.toContain('Okafor');
  });

  it('warns when some notes are not described, and when there is nothing to order', () => {
    expect(JSON.stringify(tree)).toContain('This order may not be whole');
    const none = bassStringOrderPaper({ ...smallJob(), unisons: new Map() }, testOptions);
    expect(JSON.stringify(none)).toContain('no note of this record is described as wound');
  });

  it('counts the strings of a whole compass: 8 single and 18 double notes', () => {
    expect(JSON.stringify(bassStringOrderPaper(wholeCompassJob(), testOptions))).toContain('44 for 26 notes');
  });
});

describe('the bass string order as CSV', () => {
  const { data, errors, meta } = Papa.parse<Record<string, string>>(renderCsv(tree), {
    header: true,
    skipEmptyLines: true,
  });

  it('reads back one line a string, each length with its unit in the column name and a state', () => {
    expect(errors).toEqual([]);
    expect(data).toHaveLength(12);
    expect(meta.fields).toContain('core_diameter_mm');
    expect(data[11]).toMatchObject({
      note: 'A#2',
      string: '2',
      side: 'right',
      core_diameter_mm: '1.055',
      core_diameter_in: '0.0415',
      core_diameter_state: 'read',
      inner_layer_diameter_state: 'does not apply',
      strength_table: 'ASTM A228 minimum',
    });
    expect(Number(data[11]?.tension_n)).toBeCloseTo(716.6, 0);
  });

  it('leaves an empty cell and a state where there is no figure', () => {
    const [fSharp, gSharp, a] = ['F#2', 'G#2', 'A2'].map((note) => data.find((row) => row.note === note));
    expect(fSharp).toMatchObject({ core_diameter_mm: '', core_diameter_state: 'unknown', tension_n: '' });
    expect(gSharp).toMatchObject({ bare_front_mm: '', bare_front_state: 'none' });
    expect(a).toMatchObject({
      over_all_diameter_mm: '',
      over_all_diameter_state: 'not read',
      strength_table: '',
    });
  });

  it('carries the digest of the record that it was made from', () => {
    expect(new Set(data.map((row) => row.record_digest_sha256))).toEqual(
      new Set([smallJob({ sealed: true }).seal?.digest]),
    );
  });
});

describe('notesInWords()', () => {
  it('draws runs of neighbours together', () => {
    const words = (...keys: number[]) =>
      notesInWords(
        keys.map((key) => ({ note: { key } })),
        english,
      );
    expect(words(1, 2, 3, 5, 7, 8)).toBe('A0 to B0, C#1, D#1 to E1');
    expect(words(88)).toBe('C8');
  });
});
