import { type Entry, foldJob, type ReadingQuantityName } from '@becket/journal';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { PageTree, Table } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { smallJob, smallJournal } from '../testing/small-job.ts';
import { asFoundRecordPaper } from './as-found-record-paper.ts';

const sealed = asFoundRecordPaper(smallJob({ sealed: true }), testOptions);
const open = asFoundRecordPaper(smallJob(), {
  ...testOptions,
  firstUnit: 'in',
  address: undefined,
  isSealIntact: undefined,
});

const tableCalled = (tree: PageTree, title: string): Table =>
  tree.blocks.find((block): block is Table => block.is === 'table' && block.title === title)!;
const rowOf = (table: Table, first: string) =>
  table.rows.flatMap((row) => ('cells' in row && row.cells.includes(first) ? [row.cells] : []))[0];

describe('asFoundRecordPaper()', () => {
  it('makes the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(sealed, null, 1)).toMatchFileSnapshot(
      '../saved-trees/as-found-record-sealed.json',
    );
    await expect(JSON.stringify(open, null, 1)).toMatchFileSnapshot(
      '../saved-trees/as-found-record-open.json',
    );
  });

  it('makes the German tree that was looked at and accepted, to the end of its first section', async () => {
    const { blocks, machineTable, ...tree } = asFoundRecordPaper(smallJob({ sealed: true }), germanOptions);
    const secondSection = blocks.findLastIndex(
      (block) => block.is === 'heading' && block.text === 'Abschnitt: tenor',
    );
    expect(secondSection).toBeGreaterThan(0);
    await expect(
      JSON.stringify({ ...tree, blocks: blocks.slice(0, secondSection) }, null, 1),
    ).toMatchFileSnapshot('../saved-trees/as-found-record-german.json');
    expect(machineTable).toEqual(sealed.machineTable);
  });

  it('prints the median, the other unit beside it, the count, the uncertainty, the spread and the nearest sizes', () => {
    // B2 was read as 1.075, 1.070 and 1.085 mm. Median 1.075 mm = 0.04232 in; spread 0.015 mm; MAD 0.005 mm, so with the
    // factors for three readings in core/evidence u = 1.4826 · 1.495 · 0.005 · √0.449 = 0.0074 mm. 18½ US is 0.042 in =
    // 1.0668 mm, 19 US 1.0922 mm; metric 19 is 1.075 mm. Length: 1010 and 1011.5 mm.
    const row = rowOf(tableCalled(sealed, 'Plain strings, section tenor'), 'B2');
    expect(row?.slice(0, 10)).toEqual([
      '27',
      'B2',
      '3',
      '1.075',
      '0.0423',
      '3',
      '0.007',
      '0.015',
      '18½',
      '19',
    ]);
    expect(row?.slice(10, 12)).toEqual(['1010.8', '39.79']);
  });

  it('tells a stamped size from a measured one', () => {
    const row = rowOf(tableCalled(sealed, 'Plain strings, section tenor'), 'C#3');
    expect(row?.slice(3, 6)).toEqual(['1.041', '0.0410', '1s']);
  });

  it('shows unknown, none, does not apply and not read as four different things, and never a zero', () => {
    const table = tableCalled(sealed, 'Wound strings, section bass');
    expect(rowOf(table, 'F#2')).toContainEqual({ absent: 'unknown', across: 2 });
    expect(rowOf(table, 'F#2')).toContainEqual({ absent: 'does not apply', across: 2 });
    expect(rowOf(table, 'G#2')).toContainEqual({ absent: 'none', across: 2 });
    expect(rowOf(table, 'A2')).toContainEqual({ blank: 'not read', across: 2 });
    expect(table.rows.some((row) => 'cells' in row && row.cells.some((cell) => Number(cell) === 0))).toBe(
      false,
    );
  });

  it('puts the unit asked for first', () => {
    const row = rowOf(tableCalled(open, 'Plain strings, section tenor'), 'B2');
    expect(row?.slice(3, 5)).toEqual(['0.0423', '1.075']);
  });

  it('names every accepted gap with who and why, every open one, every amendment and every changed cell', () => {
    const text = JSON.stringify(sealed);
    for (const words of [
      'core-diameter/F#2',
      'cannot be reached without taking the strings off',
      'Bo, 3 March 2026, 15:00 UTC',
      'over-all-diameter/A2',
      'speaking length, D3: 884.5 mm (34.82 in), in place of an earlier reading',
      'read again from the bridge pin marks',
      'none given, from a device that did not know of the seal',
      'decimal point slipped',
      'left out',
    ]) {
      expect(text).toContain(words);
    }
  });

  it('loses no reading, not even of a quantity that the note should not have, or of a note not described', () => {
    const journal = smallJournal();
    const odd = (key: number, quantity: ReadingQuantityName, value: number, more: object = {}): Entry => ({
      ...journal[0]!,
      id: `01SMB${String(key * 100 + value).padStart(21, '0')}`,
      step: 900,
      fact: {
        kind: 'reading',
        v: 1,
        quantity,
        place: { key, ...more },
        value_si: value / 1000,
        asRead: { value, unit: 'mm' },
        origin: 'measured',
        stage: 'as found',
      },
    });
    const tree = asFoundRecordPaper(
      foldJob([
        ...journal,
        odd(28, 'core-diameter', 1), // a core on a plain note
        odd(24, 'inner-layer-diameter', 3), // an inner layer on a note of one layer
        odd(31, 'wire-diameter', 1), // a note that nobody has described
        odd(30, 'front-length', 77, { string: 2 }), // one string alone
      ]),
      testOptions,
    );
    expect(rowOf(tableCalled(tree, 'Further lengths, section tenor'), 'C3')).toContain('1.000');
    expect(rowOf(tableCalled(tree, 'Further lengths, section tenor'), 'D#3')).toContain('1.000');
    expect(rowOf(tableCalled(tree, 'Further lengths, section bass'), 'G#2')).toContain('3.000');
    expect(rowOf(tableCalled(tree, 'Further readings, section tenor'), 'D3, string 2')).toContain(
      '77.0 mm (3.03 in)',
    );
  });

  it('lists what was read of one string at one point, with its instrument, and no photo of the new work', () => {
    const journal = smallJournal();
    const later = (index: number, fact: Entry['fact']): Entry => ({
      ...journal[0]!,
      id: `01SMC${String(index).padStart(21, '0')}`,
      step: 900 + index,
      fact,
    });
    const photo = { kind: 'photo' as const, v: 1 as const, mediaType: 'image/jpeg' as const };
    const picture = { ...photo, bytes: 9, width: 2, height: 2, place: { key: 28 }, marks: [] };
    const tree = asFoundRecordPaper(
      foldJob([
        ...journal,
        later(1, {
          kind: 'instrument-described',
          v: 1,
          instrument: 'micrometer 1',
          unit: 'mm',
          resolution: 0.001,
          stated: { value: 0.003, as: 'limit' },
        }),
        later(2, {
          kind: 'reading',
          v: 1,
          quantity: 'wire-diameter',
          place: { key: 28, string: 2, point: 'near the bridge' },
          value_si: 0.00102,
          asRead: { value: 1.02, unit: 'mm' },
          origin: 'measured',
          stage: 'as found',
          condition: { strings: 'let down', surface: 'cleaned' },
          instrument: 'micrometer 1',
        }),
        later(3, { ...picture, digest: 'a'.repeat(64), stage: 'as strung', shows: 'the new loops' }),
        later(4, { ...picture, digest: 'b'.repeat(64), shows: 'the old loops' }),
      ]),
      testOptions,
    );
    const row = rowOf(tableCalled(tree, 'Further readings, section tenor'), 'C3, string 2, near the bridge');
    expect(row?.slice(1, 4)).toEqual([
      'wire diameter',
      '1.020 mm (0.0402 in)',
      'strings let down, wire cleaned, micrometer 1',
    ]);
    expect(rowOf(tableCalled(tree, 'Instruments'), 'micrometer 1')).toEqual([
      'micrometer 1',
      'mm',
      '0.001',
      '0.003 mm, limit',
      '',
    ]);
    expect(JSON.stringify(tree)).toContain('the old loops');
    expect(JSON.stringify(tree)).not.toContain('the new loops');
  });

  it('keeps torque readings apart by the way the pin was turned, first in the unit they were read in', () => {
    const table = sealed.blocks.filter(
      (block): block is Table => block.is === 'table' && block.title === 'Further readings, section tenor',
    );
    const torques = table.flatMap(({ rows }) =>
      rows.flatMap((row) => ('cells' in row && row.cells[1] === 'pin torque' ? [row.cells] : [])),
    );
    // 0.1129848 N·m to the in·lbf. Source: NIST SP 811 (2008), appendix B.
    expect(torques).toEqual([
      ['B2', 'pin torque', '9.5 N·m (84 in·lbf)', 'strings on, turning sharp', '1'],
      ['B2', 'pin torque', '60 in·lbf (6.8 N·m)', 'strings on, turning flat', '1'],
    ]);
  });

  it('says whether it is sealed, and says so loudly when the seal does not match', () => {
    expect(open.running.seal).toBe('As-found record not sealed: it may still change.');
    expect(sealed.running.seal).toMatch(
      /^As-found record sealed 4 March 2026 by Ada, digest [0-9a-f]{12}\. 2 amended since\.$/,
    );
    const broken = asFoundRecordPaper(smallJob({ sealed: true }), { ...testOptions, isSealIntact: false });
    expect(broken.running.seal).toContain('THE SEAL DOES NOT MATCH');
    expect(JSON.stringify(broken.blocks)).toContain('did not match it');
  });

  it('prints its way back to the job only when there is one', () => {
    expect(sealed.running.code?.address).toBe(testOptions.address);
    expect(open.running.code).toBeUndefined();
  });

  it('can be made of a job that has nothing in it yet', () => {
    const empty = asFoundRecordPaper(foldJob(smallJournal().slice(0, 1)), testOptions);
    expect(JSON.stringify(empty)).toContain('not described yet');
    expect(empty.machineTable.rows).toEqual([]);
  });

  it('says how many entries of a later program it could not print', () => {
    const journal = smallJournal();
    const later = {
      ...journal[5]!,
      id: '01SMA000000000000000099999',
      step: 500,
      fact: { kind: 'holograph', v: 1 },
    };
    const text = JSON.stringify(asFoundRecordPaper(foldJob([...journal, later]), testOptions));
    expect(text).toContain('1 entry of the journal comes from a later version');
  });
});

describe('the as-found record as CSV', () => {
  const { data, errors } = Papa.parse<Record<string, string>>(renderCsv(sealed), {
    header: true,
    skipEmptyLines: true,
  });
  const line = (note: string, quantity: string) =>
    data.find((row) => row.note === note && row.quantity === quantity);

  it('reads back without an error and with every needed figure of every note', () => {
    expect(errors).toEqual([]);
    // Two notes of 6 quantities, five of 5, four of 2, one not described; and the further lengths that were read:
    // winding length twice, loop to winding, hitch pin and pin diameter.
    expect(data).toHaveLength(2 * 6 + 5 * 5 + 4 * 2 + 1 + 5);
  });

  it('has a value only beside the state read, in both units', () => {
    for (const row of data) {
      if (row.state === 'read') {
        expect(Number(row.value_in) * 25.4).toBeCloseTo(Number(row.value_mm), 0);
        expect(Number(row.readings)).toBeGreaterThan(0);
      } else {
        expect([row.value_mm, row.value_in, row.standard_uncertainty_mm, row.readings]).toEqual([
          '',
          '',
          '',
          '',
        ]);
      }
    }
  });

  it('keeps the states apart', () => {
    expect(line('F#2', 'core-diameter')?.state).toBe('unknown');
    expect(line('G#2', 'bare-front')?.state).toBe('none');
    expect(line('A2', 'over-all-diameter')?.state).toBe('not read');
    expect(line('B2', 'wire-diameter')).toMatchObject({
      state: 'read',
      value_mm: '1.075',
      readings: '3',
      origin: 'measured',
    });
  });
});
