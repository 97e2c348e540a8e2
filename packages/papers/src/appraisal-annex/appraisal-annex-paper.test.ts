import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { Chart, PageTree, Table } from '../page-tree.ts';
import { renderCsv } from '../render/csv.ts';
import { appraisalFigures } from '../testing/appraisal-figures.ts';
import { appraisedJob } from '../testing/appraised-job.ts';
import { testOptions } from '../testing/paper-options.ts';
import { appraisalAnnexPaper } from './appraisal-annex-paper.ts';

const options = { ...testOptions, isSealIntact: undefined };
const tree = appraisalAnnexPaper(appraisedJob(), options, appraisalFigures());
const inInches = appraisalAnnexPaper(appraisedJob(), { ...options, firstUnit: 'in' }, appraisalFigures());
const empty = appraisalAnnexPaper(appraisedJob({ isEmpty: true }), { ...options, address: undefined });
const tableOf = ({ blocks }: PageTree, title: string) =>
  blocks.find((block): block is Table => block.is === 'table' && block.title === title)!;
const chartOf = ({ blocks }: PageTree) => blocks.find((block): block is Chart => block.is === 'chart')!;
const rowsOf = (table: Table) => table.rows.flatMap((row) => ('cells' in row ? [row.cells] : []));

describe('appraisalAnnexPaper()', () => {
  it('makes the trees that were looked at and accepted', async () => {
    for (const [name, one] of Object.entries({ '': tree, '-inches': inInches, '-empty': empty }))
      await expect(JSON.stringify(one, null, 1)).toMatchFileSnapshot(
        `../saved-trees/appraisal-annex${name}.json`,
      );
  });

  it('prints every line of the survey with its answer, and what nobody looked at', () => {
    const rows = rowsOf(tableOf(tree, 'Survey'));
    expect(rows[0]?.slice(0, 8)).toEqual([
      'cracks at the bridge pins',
      'section treble, C4',
      'a crack runs through the pins of three notes',
      'grave',
      'before stringing',
      '62.0',
      '2.44',
      '1',
    ]);
    const found = rows.map((row) => row[2]);
    expect(found).toContain('sound: looked at with a lamp');
    expect(found).toContainEqual({ absent: 'could not be seen: the plate covers it' });
    expect(found).toContainEqual({ absent: 'does not apply' });
    expect(found).toContainEqual({ absent: 'not looked at' });
  });

  it('prints the torque map by section in both units, with interval, lowest pin and what may be missed', () => {
    const [bass] = rowsOf(tableOf(tree, 'Grip by section'));
    // Grips 9, 10.5, 14, 15.5, 16 and 14.5 N·m: mean 13.25; in in·lbf 13.25 / 0.112985 = 117.3.
    expect(bass?.slice(0, 7)).toEqual(['bass', '24', '6', '6', '2', '13.3', '117']);
    expect(bass?.[7]).toMatch(/^\d+\.\d to \d+\.\d$/);
    expect(bass?.slice(8)).toEqual(
      ['9.0 at key 21 string 1', '12 %', 'E3 string 2'].map((text) => text.replace('E3', 'C3')),
    );
    const [inPounds] = rowsOf(tableOf(inInches, 'Grip by section'));
    expect(inPounds?.slice(5, 7)).toEqual(['117', '13.3']);
  });

  it('draws as many pins as have a grip, bars side by side that fill the axis', () => {
    for (const one of [tree, inInches]) {
      const { series, x, y } = chartOf(one);
      const [bars] = series;
      expect(bars!.points.reduce((sum, [, count]) => sum + count, 0)).toBe(12);
      expect(bars!.points.length * bars!.barWidth!).toBeCloseTo(x.to - x.from, 2);
      expect(Math.max(...bars!.points.map(([, count]) => count))).toBeLessThanOrEqual(y.to);
    }
  });

  it('says what is unknown and what would settle it, and who decided beside what speaks for it', () => {
    const text = JSON.stringify(tree);
    expect(text).toContain('Look for cracks in the pin block, with a light');
    expect(text).toContain('Decided on 4 May 2026 by Ada: go with conditions.');
    expect(text).not.toContain('The reasons of the program came to');
    const job = appraisedJob();
    const decisions = job.decisions.map((one) => ({ ...one, advised: 'stop' as const }));
    expect(JSON.stringify(appraisalAnnexPaper({ ...job, decisions }, options))).toContain(
      'The reasons of the program came to: stop.',
    );
  });

  it('says that nothing was read where nothing was', () => {
    const text = JSON.stringify(empty);
    for (const words of [
      'No pin torque was read',
      'No pin was measured',
      'Nothing is decided yet',
      'Not read: pitch',
    ])
      expect(text).toContain(words);
    expect(text).not.toMatch(/undefined|NaN/);
  });

  it('gives the torque map to machines, one row a pin', () => {
    const { data, errors } = Papa.parse<Record<string, string>>(renderCsv(tree), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    expect(data).toHaveLength(12);
    expect(data[0]).toMatchObject({ key: '21', grip_n_m: '9.000', low: 'yes', pull_n_m: '', feel: 'spongy' });
  });
});
