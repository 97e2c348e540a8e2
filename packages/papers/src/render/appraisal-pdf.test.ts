import { beforeAll, describe, expect, it } from 'vitest';
import { appraisalAnnexPaper } from '../appraisal-annex/appraisal-annex-paper.ts';
import { appraisalReportPaper } from '../appraisal-report/appraisal-report-paper.ts';
import { estimatePaper } from '../estimate/estimate-paper.ts';
import type { PageTree } from '../page-tree.ts';
import { appraisalFigures } from '../testing/appraisal-figures.ts';
import { appraisedJob } from '../testing/appraised-job.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { treeTexts } from '../testing/tree-texts.ts';
import type { PaperFonts } from './fonts.ts';
import { fontsOnNode } from './fonts-on-node.ts';
import { renderPdf } from './pdf.ts';

const madeAt = new Date('2026-03-10T12:00:00.000Z');
let fonts: PaperFonts;
beforeAll(async () => {
  fonts = await fontsOnNode();
});

const options = { ...testOptions, isSealIntact: undefined };
const trees: readonly (readonly [string, PageTree])[] = [
  ['appraisal report', appraisalReportPaper(appraisedJob(), options, appraisalFigures())],
  ['technical annex', appraisalAnnexPaper(appraisedJob(), options, appraisalFigures())],
  ['estimate', estimatePaper(appraisedJob(), options)],
  ['estimate, accepted', estimatePaper(appraisedJob({ estimate: 'accepted' }), options)],
  ['empty report', appraisalReportPaper(appraisedJob({ isEmpty: true }), options)],
  ['empty annex', appraisalAnnexPaper(appraisedJob({ isEmpty: true }), options)],
];
const made = async (tree: PageTree, size: 'A4' | 'Letter') =>
  readPdf(await renderPdf(tree, { size, fonts, madeAt }));

describe('the appraisal papers as PDF', () => {
  it.each(trees)('%s: every text can be read back, on A4 and Letter, inside the margins', async (_, tree) => {
    for (const size of ['A4', 'Letter'] as const) {
      const { pages } = await made(tree, size);
      const words = pages.map((page) => page.words).join('');
      expect(treeTexts(tree).filter((text) => !words.includes(text))).toEqual([]);
      for (const { width, texts } of pages)
        for (const { text, x, y, width: textWidth } of texts)
          expect([text, x >= 39.9, x + textWidth <= width - 39.5, y > 20]).toEqual([text, true, true, true]);
    }
  });

  it.each(trees)('%s: no heading is the last line of a page', async (_, tree) => {
    const headings = tree.blocks.flatMap((block) =>
      block.is === 'heading' ? [withoutSpaces(block.text)] : [],
    );
    for (const size of ['A4', 'Letter'] as const) {
      const { pages } = await made(tree, size);
      for (const { words } of pages) {
        // Head and foot are written before and after the text of a page; what stands last of the text is before the foot.
        const body = words.split(withoutSpaces(tree.running.seal))[0]!;
        expect(headings.filter((heading) => body.endsWith(heading))).toEqual([]);
      }
    }
  });

  it('sets text as long and as strange as somebody types it', async () => {
    const job = appraisedJob();
    const long = `<b>${'crack & split '.repeat(60)}</b>${'x'.repeat(300)}`;
    const findings = job.findings.map((one) =>
      one.answer.is === 'seen' ? { ...one, answer: { ...one.answer, what: long } } : one,
    );
    const estimates = job.estimates.map((one) => ({
      ...one,
      lines: one.lines.map((line) => ({ ...line, what: long.slice(0, 300), unit: 'W'.repeat(30) })),
    }));
    const strange = { ...job, findings, estimates, title: 'W'.repeat(200), customer: 'Å“½”'.repeat(50) };
    for (const tree of [
      appraisalReportPaper(strange, options, appraisalFigures()),
      appraisalAnnexPaper(strange, options, appraisalFigures()),
      estimatePaper(strange, options),
    ]) {
      for (const { width, texts } of (await made(tree, 'Letter')).pages)
        for (const { text, x, width: textWidth } of texts)
          expect([text, x >= 39.9, x + textWidth <= width - 39.5]).toEqual([text, true, true]);
    }
  });
});
