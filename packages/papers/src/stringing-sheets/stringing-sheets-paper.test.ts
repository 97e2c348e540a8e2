import { cutLength, metres, millimetres } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { cutListPaper } from '../cut-list/cut-list-paper.ts';
import { renderCsv } from '../render/csv.ts';
import { fontsOnNode } from '../render/fonts-on-node.ts';
import { renderPdf } from '../render/index.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { smallJob } from '../testing/small-job.ts';
import type { StringingFigures, StringingWire } from './stringing-figures.ts';
import { stringingSheetsPaper } from './stringing-sheets-paper.ts';

const lengths = { front: millimetres(120), back: millimetres(100) };
const common = {
  pinDiameter: millimetres(7),
  hitchPinDiameter: millimetres(4),
  coils: 3,
  becket: millimetres(6),
  waste: millimetres(20),
  tie: millimetres(70),
};

function wire(
  strings: StringingWire['strings'],
  diameter_mm: number,
  speaking_mm: number,
  more: Partial<StringingWire> = {},
): StringingWire {
  return {
    joined: strings.length === 2 ? 'looped' : 'tied',
    strings,
    diameter: millimetres(diameter_mm),
    size: '',
    cut: cutLength({
      ...common,
      wireDiameter: millimetres(diameter_mm),
      strings: strings.map(() => ({ ...lengths, speaking: millimetres(speaking_mm) })),
    }),
    remarks: [],
    ...more,
  };
}

const string = (key: number, note: string, number: number, section = 'treble') => ({
  key,
  note,
  string: number,
  section,
});

const figures: StringingFigures = {
  scale: 'the scale as found; no scale has been chosen yet',
  wires: [
    wire([string(49, 'A4', 1), string(49, 'A4', 2)], 1, 400, { size: 'metric 1.000' }),
    wire([string(49, 'A4', 3)], 1, 400, { size: 'metric 1.000' }),
    wire([string(50, 'A#4', 1), string(50, 'A#4', 2)], 0.95, 380, {
      remarks: ['front: mean of the section'],
    }),
  ],
  wound: [string(1, 'A0', 1, 'bass'), string(2, 'A#0', 1, 'bass'), string(2, 'A#0', 2, 'bass')],
  uncounted: [{ ...string(51, 'B4', 1), needs: 'its diameter is not known' }],
  undescribed: ['C8'],
  allowances: 'Each pin: 3 coils, 6 mm becket, 20 mm cut off; a tied wire 70 mm for its loop (for a test).',
};

/** The same, from whoever works it out for a reader of German: remarks for machines stay as they are. */
const germanFigures: StringingFigures = {
  ...figures,
  scale: 'die vorgefundene Mensur; noch ist keine gewählt',
  uncounted: [{ ...string(51, 'B4', 1), needs: 'ihr Durchmesser ist nicht bekannt' }],
  allowances:
    'Je Wirbel: 3 Windungen, 6 mm Wirbelauge, 20 mm Abfall; ein einzelner Draht 70 mm für seine Öse (zum Prüfen).',
};

const sheets = stringingSheetsPaper(smallJob(), testOptions, figures);
const list = cutListPaper(smallJob(), { ...testOptions, firstUnit: 'in' }, figures);

describe('the papers a piano is strung by', () => {
  it('make the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(sheets, null, 1)).toMatchFileSnapshot('../saved-trees/stringing-sheets.json');
    await expect(JSON.stringify(list, null, 1)).toMatchFileSnapshot('../saved-trees/cut-list-inches.json');
  });

  it('make the German tree that was looked at and accepted, and the same tables for machines', async () => {
    const { machineTable, ...german } = stringingSheetsPaper(smallJob(), germanOptions, germanFigures);
    await expect(JSON.stringify(german, null, 1)).toMatchFileSnapshot(
      '../saved-trees/stringing-sheets-german.json',
    );
    expect(machineTable).toEqual(sheets.machineTable);
    expect(cutListPaper(smallJob(), germanOptions, germanFigures).machineTable).toEqual(list.machineTable);
  });

  it('keep every German word of a sheet whole in its large type', async () => {
    const pdf = await renderPdf(stringingSheetsPaper(smallJob(), germanOptions, germanFigures), {
      size: 'A4',
      madeAt: new Date(testOptions.at),
      fonts: await fontsOnNode(),
    });
    const pieces = (await readPdf(pdf)).pages.flatMap(({ texts }) => texts.map(({ text }) => text.trim()));
    // A word that is too long for its column is broken, and then stands nowhere in one piece.
    for (const word of ['auf', 'Draht', 'Schlaufe', 'einzeln', 'Zuschnitt'])
      expect(
        pieces.some((piece) => withoutSpaces(piece) === word),
        word,
      ).toBe(true);
  });

  it('cut a loop and a tie to the sum of their parts, worked by hand', () => {
    // Loop: 2·(120 + 400 + 100) + 2·(3·π·(7 + 1) + 6 + 20) + (π/2)·(4 + 1) = 1240 + 202.796 + 7.854 = 1450.65 mm.
    // Tie: 120 + 400 + 100 + 3·π·8 + 6 + 20 + 70 = 791.398 mm.
    const rows = renderCsv(sheets)
      .split('\r\n')
      .map((row) => row.split(','));
    const cut = rows[0]!.indexOf('cut_length_mm');
    expect(rows.slice(1, 3).map((row) => row[cut])).toEqual(['1450.7', '791.4']);
    const parts = rows[0]!.indexOf('front_mm');
    const sum = rows[1]!.slice(parts, parts + 8).reduce((total, part) => total + Number(part), 0);
    expect(sum).toBeCloseTo(1450.65, 0);
  });

  it('can be read back from the PDF: every string once, in large type, a section to a sheet', async () => {
    const pdf = await renderPdf(sheets, {
      size: 'A4',
      madeAt: new Date(testOptions.at),
      fonts: await fontsOnNode(),
    });
    const pages = (await readPdf(pdf)).pages.map(({ words }) => words);
    const text = pages.join(' ');
    const plain = (words: string) => words.replaceAll(' ', '');
    for (const words of [
      'A4 / 1',
      'A4 / 3',
      'A#4 / 2',
      '1450.7',
      'Wear eye protection',
      'B4 / 1: its diameter',
    ])
      expect(text).toContain(plain(words));
    expect(pages.findIndex((page) => page.includes('Sectiontreble'))).not.toBe(
      pages.findIndex((page) => page.includes('Sectionbass')),
    );
    expect(text).toContain('A#0:2strings');
  });

  it('adds the wire of each size, and of all', () => {
    const table = list.blocks.find((block) => block.is === 'table')!;
    const last = table.is === 'table' ? table.rows.at(-1) : undefined;
    // 1450.65 + 791.398 mm of 1 mm and a loop of 0.95 mm:
    // 2·(120 + 380 + 100) + 2·(3·π·7.95 + 26) + (π/2)·4.95 = 1200 + 201.854 + 7.775 = 1409.63 mm; together 3.65 m.
    expect(last).toMatchObject({ tone: 'sum', cells: ['all sizes', '2', '1', '3.65', '12.0'] });
    expect(metres(3.65168) / 0.3048).toBeCloseTo(11.98, 2);
  });
});
