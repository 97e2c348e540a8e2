import { beforeAll, describe, expect, it } from 'vitest';
import type { Block, PageTree } from '../page-tree.ts';
import { readPdf } from '../testing/read-pdf.ts';
import type { PaperFonts } from './fonts.ts';
import { fontsOnNode } from './fonts-on-node.ts';
import { renderPdf } from './pdf.ts';
import { wholeMeasures } from './whole-measures.ts';

let fonts: PaperFonts;
beforeAll(async () => {
  fonts = await fontsOnNode();
});

const treeOf = (blocks: readonly Block[]): PageTree => ({
  paper: 'test',
  title: 'Test',
  language: 'en-GB',
  orientation: 'portrait',
  blocks,
  running: { job: 'job', date: 'day', seal: 'seal', origin: 'origin', pageOf: '{page}/{pages}' },
  machineTable: { columns: [], rows: [] },
});

/** The texts between head and foot of each page. */
async function bodiesOf(blocks: readonly Block[]): Promise<string[][]> {
  const bytes = await renderPdf(treeOf(blocks), { size: 'A4', fonts, madeAt: new Date(0) });
  const { pages } = await readPdf(bytes);
  return pages.map(({ texts, height }) =>
    texts.filter(({ y }) => y > 56 && y < height - 58).map(({ text }) => text),
  );
}

describe('the end of a page', () => {
  const paragraph = { is: 'paragraph', text: 'On the next page.' } as const;
  const table = (rows: number): Block => ({
    is: 'table',
    columns: [{ heading: 'row', align: 'left', share: 1 }],
    rows: Array.from({ length: rows }, (_, row) => ({ cells: [`row ${row + 1}`] })),
  });

  // About 46 rows fill a page: one of these tables fills it so that the usual room below has no place on it.
  it('leaves no page blank, however full the table before it is', async () => {
    for (const rows of [45, 46, 47]) {
      for (const lead of [[], [{ is: 'paragraph', text: 'Before it.' } as const]]) {
        const broken = await bodiesOf([...lead, table(rows), { is: 'page break' }, paragraph]);
        expect([rows, broken.map((texts) => texts.length > 0)]).toEqual([rows, broken.map(() => true)]);
        expect(broken.at(-1)).toEqual([paragraph.text]);
        const ended = await bodiesOf([...lead, table(rows)]);
        expect([rows, ended.at(-1)!.length > 0]).toEqual([rows, true]);
      }
    }
  });
});

describe('the name of a run of rows', () => {
  // Long rows before it, so that its place moves over the whole foot of the page.
  it('never stands at the foot of a page without a row of its run', async () => {
    for (const rows of [38, 40, 41, 42, 43, 44, 45]) {
      const runs = Array.from({ length: 3 }, (_, run) => [
        { band: `run ${run + 1}` },
        ...Array.from({ length: rows - run }, (_, row) => ({ cells: [`row ${row + 1}`] })),
      ]);
      const pages = await bodiesOf([
        { is: 'table', columns: [{ heading: 'row', align: 'left', share: 1 }], rows: runs.flat() },
      ]);
      expect([rows, pages.flat().filter((text) => text.startsWith('run'))]).toEqual([
        rows,
        ['run 1', 'run 2', 'run 3'],
      ]);
      expect([rows, pages.map((texts) => texts.at(-1)!.startsWith('row'))]).toEqual([
        rows,
        pages.map(() => true),
      ]);
    }
  });
});

describe('the end of a line', () => {
  it('never stands between a number and its unit', async () => {
    const measures = [
      '28.8 mm',
      '(1.134 in)',
      '4 %',
      '95 % of it',
      '12.5 N·m',
      '120 in·lbf.',
      '1.9 kN',
      '440 Hz',
    ];
    const texts = Array.from(
      { length: 40 },
      (_, letters) =>
        `${'a'.repeat(letters + 1)} ${Array.from({ length: 5 }, () => measures.join(' ')).join(' ')}`,
    );
    const lines = (
      await bodiesOf([
        ...texts.map((text) => ({ is: 'paragraph', text }) as const),
        { is: 'list', marks: 'dots', items: texts },
        { is: 'box', tone: 'note', title: 'Box', texts },
        { is: 'facts', rows: texts.map((value) => ({ name: 'fact', value })) },
        {
          is: 'table',
          columns: [{ heading: 'a', align: 'left', share: 1 }],
          rows: texts.map((text) => ({ cells: [text] })),
        },
      ])
    ).flat();
    expect(lines.length).toBeGreaterThan(400);
    expect(lines.filter((line) => /^(mm|in|%|N·m|in·lbf|kN|Hz)/.test(line.trim()))).toEqual([]);
  });

  it('may do so in a column that has no room for both, rather than tear the number', async () => {
    const columns = Array.from({ length: 24 }, () => ({ heading: 'a', align: 'left', share: 1 }) as const);
    const [texts = []] = await bodiesOf([
      { is: 'table', columns, rows: [{ cells: columns.map(() => '12.34 mm') }] },
    ]);
    expect(texts.filter((text) => text.trim() === 'mm')).toHaveLength(columns.length);
  });

  it('leaves every other text as it is', () => {
    for (const text of ['2 notes', 'mm', 'A4 inside', '5 Nm', 'in 3 mmx'])
      expect(wholeMeasures(text)).toBe(text);
    expect(wholeMeasures('63 mm, 4 %; 1 mm').replaceAll('\u00a0', '~')).toBe('63~mm, 4~%; 1~mm');
  });
});
