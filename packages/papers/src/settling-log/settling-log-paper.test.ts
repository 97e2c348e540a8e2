import { english } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { renderCsv } from '../render/csv.ts';
import { fontsOnNode } from '../render/fonts-on-node.ts';
import { renderPdf } from '../render/index.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { settledFigures, settledJob } from '../testing/settled-job.ts';
import { smallJournal } from '../testing/small-job.ts';
import { treeTexts } from '../testing/tree-texts.ts';
import { offsetText } from './offset-text.ts';
import { settlingLogPaper } from './settling-log-paper.ts';

const paper = settlingLogPaper(settledJob(), testOptions, settledFigures());
const empty = settlingLogPaper(
  settledJob(smallJournal()),
  { ...testOptions, isSealIntact: undefined },
  settledFigures(smallJournal()),
);

describe('the settling log', () => {
  it('makes the trees that were looked at and accepted', async () => {
    await expect(JSON.stringify(paper, null, 1)).toMatchFileSnapshot('../saved-trees/settling-log.json');
    await expect(JSON.stringify(empty, null, 1)).toMatchFileSnapshot(
      '../saved-trees/settling-log-empty.json',
    );
    const german = settlingLogPaper(settledJob(), germanOptions, settledFigures());
    await expect(JSON.stringify(german, null, 1)).toMatchFileSnapshot(
      '../saved-trees/settling-log-german.json',
    );
  });

  // By hand. Tenor, pass 1: before (−60 − 64)/2 = −62, left at 8, raised by 70, found at −10: 18/70 = 25.7 %.
  // Bass, pass 1: −40 to 0, found at −6: 6/40 = 15 %.
  it('prints the raise and the share that was lost, worked by hand', () => {
    const rows = paper.blocks.flatMap((block) => (block.is === 'table' ? block.rows : []));
    const cells = rows.flatMap((row) => ('cells' in row ? [row.cells] : []));
    expect(cells[0]).toEqual(['1', 'tenor', '−62.0 (2)', '+8.0', '+8.0', '+70.0', '−10.0', '26 %']);
    expect(cells[1]).toEqual(['2', 'bass', '−40.0', { absent: 'none said' }, '0.0', '+40.0', '−6.0', '15 %']);
  });

  it('says what is not known: air that was not read, a section that was not left anywhere yet', () => {
    const texts = treeTexts(paper).join('\n');
    for (const words of [
      'Pass 1, 5 March 2026, A4 = 440 Hz; 20.5 °C, 48 % relative humidity; by Ada',
      'Pass 2, 7 March 2026, A4 = 440 Hz; 21 °C, humidity not read; by Ada',
      'Pass 1: C#3, string 2: broke (“at the pin; a new wire is on”)',
    ])
      expect(texts).toContain(withoutSpaces(words));
    const late = treeTexts(
      settlingLogPaper(settledJob(), testOptions, { ...settledFigures(), today: '2026-05-01' }),
    );
    expect(late.some((text) => text.includes('8April2026tuninglate'))).toBe(true);
    expect(treeTexts(empty).join('\n')).toContain(withoutSpaces('No pass is recorded yet.'));
  });

  it('says whose limit it goes by, and what it started from', () => {
    const figures = settledFigures();
    const of = (limits: typeof figures.plan.limits) =>
      JSON.stringify(
        settlingLogPaper(settledJob(), testOptions, { ...figures, plan: { ...figures.plan, limits } }),
      );
    const starting = of(figures.plan.limits);
    expect(starting).toContain('65 % of its break load (common practice; ASTM A228 minimum)');
    expect(starting).not.toContain('The limit was set for this job');
    const own = of({
      ...figures.plan.limits,
      highestBreakShare: 0.575,
      source: 'our own trials',
      strengthTable: 'ASTM A228 maximum',
      set: { entry: '01SET000000000000000000099', by: 'Ada', at: '2026-03-09T10:00:00.000Z' },
    });
    expect(own).toContain('57.5 % of its break load (our own trials; ASTM A228 maximum)');
    expect(own).toContain(
      'The limit was set for this job by Ada on 9 March 2026; it started as 65 % (common practice; ASTM A228 minimum).',
    );
  });

  it('can be read back from the PDF in both sizes, with the rows to fill in on a page of their own', async () => {
    for (const size of ['A4', 'Letter'] as const) {
      const pdf = await renderPdf(paper, {
        size,
        madeAt: new Date(testOptions.at),
        fonts: await fontsOnNode(),
      });
      const { pages } = await readPdf(pdf);
      const text = pages.map(({ words }) => words).join('');
      for (const words of treeTexts(paper)) expect(text).toContain(words);
      expect(pages.at(-1)!.words).toContain('Tobefilledinatthepiano');
    }
  });

  it('is a table for machines, a row for each section of a pass', () => {
    const rows = renderCsv(paper)
      .trimEnd()
      .split('\r\n')
      .map((row) => row.split(','));
    expect(rows).toHaveLength(1 + 6);
    const row = Object.fromEntries(rows[0]!.map((name, index) => [name, rows[1]![index]]));
    expect(row).toMatchObject({
      pass: '1',
      on: '2026-03-05',
      section: 'tenor',
      before_cents: '-62',
      before_notes: '2',
      after_cents: '8',
      later_cents: '-10',
      broke: '1',
    });
  });
});

describe('offsetText()', () => {
  it('has a sign for what is off pitch, and none for what is not', () => {
    expect([-7.25, 4, 0, -0.04].map((offset) => offsetText(offset, english))).toEqual([
      '−7.3',
      '+4.0',
      '0.0',
      '0.0',
    ]);
  });
});
