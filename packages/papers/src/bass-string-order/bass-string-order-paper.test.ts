import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { BulletList, Table } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { testOptions } from '../testing/paper-options.ts';
import { smallJob } from '../testing/small-job.ts';
import { wholeCompassJob } from '../testing/whole-compass-job.ts';
import { bassStringOrderPaper } from './bass-string-order-paper.ts';
import { notesInWords } from './to-be-confirmed.ts';

const tree = bassStringOrderPaper(smallJob({ sealed: true }), testOptions);
const strings = tree.blocks.find((block): block is Table => block.is === 'table')!;
const cellsOf = (note: string) =>
  strings.rows.flatMap((row) => ('cells' in row && row.cells[1] === note ? [row.cells] : []))[0]!;
const toConfirm = tree.blocks.find((block): block is BulletList => block.is === 'list')!.items;

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

  it('orders the wound notes, as many strings as the unison has, and nothing else', () => {
    const ordered = strings.rows.flatMap((row) => ('cells' in row ? [row.cells.slice(0, 4)] : []));
    expect(ordered).toEqual([
      ['20', 'E2', '1', '2'],
      ['21', 'F2', '1', '2'],
      ['22', 'F#2', '2', '1'],
      ['23', 'G2', '2', '1'],
      ['24', 'G#2', '2', '1'],
      ['25', 'A2', '2', '1'],
      ['26', 'A#2', '2', '1'],
    ]);
  });

  it('prints the median readings, and a tension that comes out by hand', () => {
    // A#2: L = 1021.75 mm, core 1.055 mm, over all 1.47 mm, f = 440 · 2^(-23/12) = 116.541 Hz.
    // μ = 7850·(π/4)·1.055² + 8930·(π/4)²·(1.47² − 1.055²) = 6862 + 5772 = 12 634 mg/m; 4·L²·f²·μ = 716.6 N. The bare
    // ends of 18.5 and 17 mm lie where the string hardly moves: they take away less than 0.1 %.
    expect(cellsOf('A#2').slice(4, 8)).toEqual(['1021.8', '40.23', '1.055', '0.0415']);
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
    // F2: 1091.75 − 18.5 − 14.5 = 1058.75 mm, and 1030 mm was read. E2: 1105.75 − 18.5 − 14 = 1073.25, and 1073 was.
    expect(toConfirm.filter((item) => item.includes('winding length is'))).toEqual([
      'F2: the winding length is 1030.0 mm (40.55 in), but speaking length less bare ends is 1058.8 mm (41.68 in). Read them again.',
    ]);
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

  it('reads back one line a wound note, each length with its unit in the column name and a state', () => {
    expect(errors).toEqual([]);
    expect(data).toHaveLength(7);
    expect(meta.fields).toContain('core_diameter_mm');
    expect(data[6]).toMatchObject({
      note: 'A#2',
      number_wanted: '2',
      core_diameter_mm: '1.055',
      core_diameter_in: '0.0415',
      core_diameter_state: 'read',
      inner_layer_diameter_state: 'does not apply',
      strength_table: 'ASTM A228 minimum',
    });
    expect(Number(data[6]?.tension_n)).toBeCloseTo(716.6, 0);
  });

  it('leaves an empty cell and a state where there is no figure', () => {
    const [, , fSharp, , gSharp, a] = data;
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
    const words = (...keys: number[]) => notesInWords(keys.map((key) => ({ note: { key } })));
    expect(words(1, 2, 3, 5, 7, 8)).toBe('A0 to B0, C#1, D#1 to E1');
    expect(words(88)).toBe('C8');
  });
});
