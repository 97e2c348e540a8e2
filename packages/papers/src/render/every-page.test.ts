import { beforeAll, describe, expect, it } from 'vitest';
import type { PageTree, PaperSize } from '../page-tree.ts';
import { allPapers } from '../testing/all-papers.ts';
import { germanOptions } from '../testing/german-options.ts';
import { testOptions } from '../testing/paper-options.ts';
import { type ReadPage, readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import type { PaperFonts } from './fonts.ts';
import { fontsOnNode } from './fonts-on-node.ts';
import { renderPdf } from './pdf.ts';

let fonts: PaperFonts;
beforeAll(async () => {
  fonts = await fontsOnNode();
});

const [top, foot] = [58, 56];

/** What stands between head and foot. */
const bodyOf = ({ texts, height }: ReadPage) => texts.filter(({ y }) => y > foot && y < height - top);

/** The lowest line between head and foot, without spaces. */
function lastLine(page: ReadPage): string {
  const body = bodyOf(page);
  const lowest = Math.min(...body.map(({ y }) => y));
  return withoutSpaces(
    body
      .filter(({ y }) => y < lowest + 1)
      .map(({ text }) => text)
      .join(''),
  );
}

/** Words that must stand whole: a line may break between them, and after a hyphen or a stroke. */
const headWords = ({ blocks }: PageTree): string[] =>
  blocks.flatMap((block) =>
    block.is === 'table'
      ? block.columns.flatMap(({ heading, group = '' }) =>
          `${heading} ${group}`.split(/\s+|(?<=[-/])/u).filter((word) => word !== ''),
        )
      : [],
  );

/** Whatever names what comes below it. */
const namesIn = ({ blocks }: PageTree): Set<string> =>
  new Set(
    blocks
      .flatMap((block) =>
        block.is === 'heading'
          ? [block.text]
          : block.is === 'table'
            ? [block.title ?? '', ...block.rows.flatMap((row) => ('band' in row ? [row.band] : []))]
            : block.is === 'chart'
              ? [block.title]
              : [],
      )
      .map(withoutSpaces),
  );

const settings: readonly (readonly [string, PaperSize, typeof testOptions, string])[] = [
  ['English', 'A4', testOptions, 'page{page}of{pages}'],
  ['German', 'Letter', germanOptions, 'Seite{page}von{pages}'],
];

describe.each(settings)('every page of every paper, in %s on %s', (_, size, options, pageOf) => {
  const papers = allPapers(options).map(({ tree }, index) => [`${tree.paper}, ${index}`, tree] as const);

  it.each(papers)('%s', async (_, tree) => {
    const { pages } = await readPdf(await renderPdf(tree, { size, fonts, madeAt: new Date(0) }));
    const names = namesIn(tree);
    const pieces = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
    expect(headWords(tree).filter((word) => !pieces.some((piece) => piece.includes(word)))).toEqual([]);
    const address = withoutSpaces(tree.running.code!.address);
    const chapter = tree.blocks.find((block) => block.is === 'heading' && block.level > 1);
    const begins = chapter?.is === 'heading' ? pages[0]!.words.lastIndexOf(withoutSpaces(chapter.text)) : -1;
    if (begins !== -1) expect(pages[0]!.words.indexOf(address)).toBeLessThan(begins);
    pages.forEach((page, index) => {
      const { job, date, seal, origin } = tree.running;
      const number = pageOf.replace('{page}', String(index + 1)).replace('{pages}', String(pages.length));
      for (const text of [job, date, seal, origin, number]) expect(page.words).toContain(withoutSpaces(text));
      expect(page.words.includes(address)).toBe(index === 0);
      expect(bodyOf(page).length).toBeGreaterThan(0);
      expect([index, names.has(lastLine(page))]).toEqual([index, false]);
      for (const { text, x, y, width } of page.texts)
        expect([text, x >= 39.9, x + width <= page.width - 39.5, y > 14]).toEqual([text, true, true, true]);
    });
  });
});
