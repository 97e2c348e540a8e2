import { describe, expect, it } from 'vitest';
import { appraisalAnnexPaper } from '../appraisal-annex/appraisal-annex-paper.ts';
import { appraisalReportPaper } from '../appraisal-report/appraisal-report-paper.ts';
import { changeOrderPaper } from '../change-order/change-order-paper.ts';
import { estimatePaper } from '../estimate/estimate-paper.ts';
import type { PageTree, Table } from '../page-tree.ts';
import { allPapers } from '../testing/all-papers.ts';
import { appraisalFigures } from '../testing/appraisal-figures.ts';
import { appraisedJob } from '../testing/appraised-job.ts';
import { changedJob } from '../testing/changed-job.ts';
import { germanOptions } from '../testing/german-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { treeTexts } from '../testing/tree-texts.ts';
import { fontsOnNode } from './fonts-on-node.ts';
import { renderPdf } from './pdf.ts';

const options = { ...germanOptions, isSealIntact: undefined };
const figures = appraisalFigures(options.language);
const papers = {
  'appraisal report': appraisalReportPaper(appraisedJob(), options, figures),
  'appraisal annex': appraisalAnnexPaper(appraisedJob(), options, figures),
  estimate: estimatePaper(appraisedJob(), options),
  'change order': changeOrderPaper(changedJob(), options),
  // On A4 one of its tables ends with its page.
  'scale comparison': allPapers(options).find(({ tree }) => tree.paper === 'scale comparison')!.tree,
};

/** Words that must stand whole: a line may break between them, and after a hyphen or a stroke. */
const wordsOf = (text: string): string[] => text.split(/\s+|(?<=[-/])/u).filter((word) => word !== '');
const headingsOf = ({ blocks }: PageTree): string[] =>
  blocks
    .filter((block): block is Table => block.is === 'table')
    .flatMap(({ columns }) => columns.flatMap(({ heading, group }) => [heading, group ?? '']));

describe.each(Object.entries(papers))('a German PDF read back: %s', (_, tree) => {
  it.each(['A4', 'Letter'] as const)('has every text whole and inside the margins of %s', async (size) => {
    const bytes = await renderPdf(tree, { size, fonts: await fontsOnNode(), madeAt: new Date(0) });
    const { pages, language, title } = await readPdf(bytes);
    expect(language).toBe('de-DE');
    expect(title).toContain(tree.title);
    const all = pages.map(({ words }) => words).join('');
    // What runs over a page has head and foot of the page between its lines.
    const body = pages.map(({ words }) => words.split(withoutSpaces(tree.running.seal))[0]).join('');
    expect(treeTexts(tree).filter((text) => !all.includes(text) && !body.includes(text))).toEqual([]);
    pages.forEach(({ words }, index) => {
      expect(words).toContain(`Seite${index + 1}von${pages.length}`);
      expect(words).toContain('10.März2026');
    });
    expect(pages.map(({ texts, height }) => texts.some(({ y }) => y > 56 && y < height - 58))).toEqual(
      pages.map(() => true),
    );
    for (const { width, texts } of pages)
      for (const { text, x, width: textWidth } of texts)
        expect([text, x >= 39.9, x + textWidth <= width - 39.5]).toEqual([text, true, true]);
    const pieces = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
    const torn = headingsOf(tree)
      .flatMap(wordsOf)
      .filter((word) => !pieces.some((piece) => piece.includes(word)));
    expect(torn).toEqual([]);
  });
});

describe('German letters and marks in a PDF', () => {
  it('come back as they were said', async () => {
    const read = async (tree: PageTree) => {
      const bytes = await renderPdf(tree, { size: 'A4', fonts: await fontsOnNode(), madeAt: new Date(0) });
      return (await readPdf(bytes)).pages.map(({ words }) => words).join('');
    };
    const report = await read(papers['appraisal report']);
    for (const words of ['Frühere Reparaturen', 'Dämpfer', 'einschließlich', '1,75 m (68,9 in)'])
      expect(report).toContain(withoutSpaces(words));
    const estimate = await read(papers.estimate);
    for (const words of ['0,385 kg', '1.003,00', '19 %']) expect(estimate).toContain(withoutSpaces(words));
    expect(await read(papers['change order'])).toContain(withoutSpaces('bei denen oben „ja“ angekreuzt ist'));
  });
});
