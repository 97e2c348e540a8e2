import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces';
import { chartSvg } from '../chart/chart-svg.ts';
import type { AddressCode, Block, Box, FactList, PageTree, PaperSize } from '../page-tree.ts';
import { drawingContent } from './drawing-content.ts';
import { fontFileNames, type PaperFonts } from './fonts.ts';
import { ink, quiet, shade, textSizes } from './look.ts';
import { type PhotoBytes, pdfImages, photosContent } from './photo-content.ts';
import { tableContent } from './table-content.ts';
import { withWholeMeasures } from './whole-measures.ts';

/*
 * Page trees set in type. Lengths are points (1/72 in). Nothing here knows of pianos. Every width is given as a number:
 * left to itself a column grows with the longest word in it, off the page if need be.
 */

const margins = { side: 40, top: 58, bottom: 56 };
const factNameWidth = 130;
/** Some 30 mm, which a camera reads at arm's length. */
const codeWidth = 86;
const codeGap = 16;
const boxPadding = 9;
/** Three charts to a page, with a heading and a paragraph above them. */
const chartHeights: Readonly<Record<PaperSize, number>> = { A4: 165, Letter: 145 };
/** Width × height, portrait. A4: ISO 216. Letter: ANSI/ASME Y14.1, 8½ × 11 in. */
const pageSizes: Readonly<Record<PaperSize, { width: number; height: number }>> = {
  A4: { width: (210 / 25.4) * 72, height: (297 / 25.4) * 72 },
  Letter: { width: 612, height: 792 },
};

export interface PdfOptions {
  readonly size: PaperSize;
  readonly fonts: PaperFonts;
  /** When the file was made, for its own record. The paper's printed date stands in the tree. */
  readonly madeAt: Date;
  /** The bytes of the photos that `photosOf` names; one that is not there is said on the page. */
  readonly photos?: PhotoBytes | undefined;
}

/**
 * A page tree as a PDF: fonts embedded, text searchable, charts as vectors, chapters as bookmarks.
 *
 * The same tree, fonts, size and time give the same bytes.
 */
export async function renderPdf(
  tree: PageTree,
  { size, fonts, madeAt, photos = () => undefined }: PdfOptions,
): Promise<Uint8Array> {
  const { default: pdfmake } = await import('pdfmake');
  const files = (pdfmake as unknown as WithVirtualFiles).virtualfs;
  // The faces are filed under their PostScript names, by which text inside a chart finds them again.
  for (const [face, name] of Object.entries(fontFileNames)) {
    if (!files.existsSync(name)) files.writeFileSync(name, fonts[face as keyof PaperFonts]);
  }
  const { normal, bold, italics, boldItalics } = fontFileNames;
  pdfmake.setFonts({ paper: { normal, bold, italics, bolditalics: boldItalics } });
  // A paper is made of what it is handed: nothing is fetched and no other file is read.
  pdfmake.setUrlAccessPolicy?.(() => false);
  pdfmake.setLocalAccessPolicy?.(() => false);
  const document = pdfmake.createPdf(documentOf(tree, { size, madeAt, photos })) as unknown as {
    getBuffer(): Promise<Uint8Array>;
  };
  return document.getBuffer();
}

/** The part of pdfmake that its types leave out. */
interface WithVirtualFiles {
  readonly virtualfs: {
    existsSync(name: string): boolean;
    writeFileSync(name: string, content: Uint8Array): void;
  };
}

function documentOf(
  tree: PageTree,
  { size, madeAt, photos }: Pick<PdfOptions, 'size' | 'madeAt'> & { readonly photos: PhotoBytes },
): TDocumentDefinitions {
  const portrait = pageSizes[size];
  const page =
    tree.orientation === 'portrait' ? portrait : { width: portrait.height, height: portrait.width };
  const width = page.width - 2 * margins.side;
  const { running } = tree;
  return {
    pageSize: page,
    pageMargins: [margins.side, margins.top, margins.side, margins.bottom],
    language: tree.language,
    info: { title: `${tree.title}: ${running.job}`, creationDate: madeAt, creator: 'Becket' },
    displayTitle: true,
    defaultStyle: {
      font: 'paper',
      fontSize: textSizes[tree.textSize ?? 'usual'].body,
      lineHeight: 1.2,
      color: ink,
    },
    header: {
      margin: [margins.side, 26, margins.side, 0],
      fontSize: 8,
      color: quiet,
      columns: [
        { text: running.job, width: width * 0.4 },
        { text: tree.title, width: width * 0.2, alignment: 'center' },
        { text: running.date, width: width * 0.4, alignment: 'right' },
      ],
    },
    footer: (currentPage: number, pageCount: number): Content => ({
      margin: [margins.side, 12, margins.side, 0],
      fontSize: 7.5,
      color: quiet,
      columns: [
        { stack: [running.seal, running.origin], width: width - 70 },
        {
          text: running.pageOf.replace('{page}', String(currentPage)).replace('{pages}', String(pageCount)),
          width: 70,
          alignment: 'right',
          fontSize: 8.5,
        },
      ],
    }),
    images: pdfImages(tree, photos),
    content: withWholeMeasures(contentsOf(tree, { width, chartHeight: chartHeights[size], photos })),
  } as TDocumentDefinitions;
}

/** The width between the margins, and what a page shows beside the tree. */
interface Setting {
  readonly width: number;
  readonly chartHeight: number;
  readonly photos: PhotoBytes;
}

/** The way back to the job stands beside what a paper begins with, where it takes no page of its own. */
function contentsOf(tree: PageTree, setting: Setting): Content[] {
  const { code } = tree.running;
  if (code === undefined) return flowOf(tree.blocks, tree, setting);
  const first = tree.blocks.findIndex((block) =>
    block.is === 'heading' ? block.level > 1 : block.is !== 'paragraph' && block.is !== 'facts',
  );
  const beside = first === -1 ? tree.blocks.length : first;
  const width = setting.width - codeWidth - codeGap;
  return [
    {
      columns: [
        {
          width,
          stack: [...flowOf(tree.blocks.slice(0, beside), tree, { ...setting, width }), addressLine(code)],
        },
        { width: codeWidth, qr: code.address, fit: codeWidth, foreground: ink },
      ],
      columnGap: codeGap,
      margin: [0, 0, 0, 8],
    },
    ...flowOf(tree.blocks.slice(beside), tree, setting),
  ];
}

const addressLine = ({ address, text }: AddressCode): Content => ({
  text: `${text} ${address}`,
  fontSize: 8,
  color: quiet,
  margin: [0, 4, 0, 0],
});

function flowOf(blocks: readonly Block[], tree: PageTree, setting: Setting): Content[] {
  const contents: Content[] = [];
  let isNewPage = false;
  let headings: Content[] = [];
  const add = (own: Content[], isKeptTogether: boolean) => {
    // The break hangs on what follows it: an empty line of its own could itself run over and leave a page blank.
    contents.push(
      isNewPage || isKeptTogether
        ? ({
            stack: own,
            ...(isNewPage ? { pageBreak: 'before' } : {}),
            ...(isKeptTogether ? { unbreakable: true } : {}),
          } as Content)
        : own.length === 1
          ? own[0]!
          : { stack: own },
    );
    isNewPage = false;
    headings = [];
  };
  for (const [index, block] of blocks.entries()) {
    if (block.is === 'page break') {
      if (headings.length > 0) add(headings, false);
      isNewPage = true;
      continue;
    }
    const next = blocks[index + 1];
    const isLastOfPage = next === undefined || next.is === 'page break';
    const set = contentOf(block, tree, setting);
    const content = isLastOfPage ? withoutRoomBelow(set) : set;
    if (block.is === 'heading') headings.push(content);
    // A heading must not stand alone at the foot of a page.
    else add([...headings, content], headings.length > 0 && isShort(block));
  }
  if (headings.length > 0) add(headings, false);
  return contents;
}

/** Room below the last block of a page could itself run over, and leave a page blank. */
function withoutRoomBelow(content: Content): Content {
  const node = content as { readonly margin?: readonly number[]; readonly stack?: readonly Content[] };
  const [left, above, right] = node.margin ?? [];
  if (node.margin !== undefined) return { ...node, margin: [left, above, right, 0] } as Content;
  if (node.stack === undefined || node.stack.length === 0) return content;
  return { ...node, stack: [...node.stack.slice(0, -1), withoutRoomBelow(node.stack.at(-1)!)] } as Content;
}

/** Whether a block surely takes less than half a page, so that it can be kept with its heading. */
function isShort(block: Block): boolean {
  const letters = JSON.stringify(block).length;
  if (block.is === 'table') return block.rows.length <= 12 && letters < 4000;
  return block.is === 'chart' || (block.is !== 'photos' && letters < 1500);
}

function contentOf(
  block: Exclude<Block, { is: 'page break' }>,
  tree: PageTree,
  { width, chartHeight, photos }: Setting,
): Content {
  switch (block.is) {
    case 'heading':
      return headingOf(block.level, block.text);
    case 'paragraph':
      return {
        text: block.text,
        margin: [0, 0, 0, 6],
        ...(block.tone === 'lead' ? { fontSize: 11.5 } : {}),
        ...(block.tone === 'quiet' ? { fontSize: 8.5, color: quiet } : {}),
      };
    case 'facts':
      return factsOf(block.rows, width);
    case 'list':
      return block.marks === 'dots'
        ? { ul: block.items.map(wholeItem), margin: [0, 0, 0, 8] }
        : { margin: [0, 0, 0, 8], stack: block.items.map((text) => tickLine(text, width)) };
    case 'box':
      return boxOf(block, width);
    case 'photos':
      return photosContent(block, {
        width,
        columns: tree.orientation === 'portrait' ? 2 : 3,
        bytesOf: photos,
      });
    case 'signature lines':
      return signatureOf(block.names, width);
    case 'table':
      return tableContent(block, tree.textSize, width * (block.width ?? 1));
    case 'drawing':
      return drawingContent(block);
    case 'chart':
      return {
        stack: [
          { text: block.title, bold: true, margin: [0, 6, 0, 2] },
          { svg: chartSvg(block, { width, height: chartHeight, fontFamily: 'paper' }), font: 'paper', width },
          { text: block.words, fontSize: 8.5, color: quiet, margin: [0, 0, 0, 6] },
        ],
        unbreakable: true,
      } as Content;
  }
}

function headingOf(level: 1 | 2 | 3, text: string): Content {
  const size = { 1: 22, 2: 15, 3: 11 }[level];
  const above = { 1: 0, 2: 14, 3: 8 }[level];
  const below = { 1: 4, 2: 4, 3: 3 }[level];
  return {
    text,
    bold: true,
    fontSize: size,
    lineHeight: 1.1,
    margin: [0, above, 0, below],
    headlineLevel: level,
    ...(level < 3 ? { outline: true } : {}),
  } as Content;
}

function factsOf(rows: FactList['rows'], width: number): Content {
  return {
    table: {
      widths: [factNameWidth, width - factNameWidth - 6],
      body: rows.map(({ name, value }) => [{ text: name, color: quiet }, { text: value }]),
      dontBreakRows: true,
    },
    layout: {
      hLineWidth: () => 0,
      vLineWidth: () => 0,
      paddingLeft: (column: number) => (column === 0 ? 0 : 6),
      paddingRight: () => 0,
      paddingTop: () => 1.5,
      paddingBottom: () => 1.5,
    },
    margin: [0, 0, 0, 8],
  };
}

/** An item of a few lines stays on one page; a longer one may have to run over. */
const wholeItem = (text: string): Content =>
  text.length < 600 ? ({ stack: [{ text }], unbreakable: true } as Content) : { text };

function tickLine(text: string, width: number): Content {
  return {
    columns: [
      { canvas: [{ type: 'rect', x: 0, y: 1.5, w: 8, h: 8, lineWidth: 0.8, lineColor: ink }], width: 16 },
      { text, width: width - 16 },
    ],
    margin: [0, 0, 0, 4],
    unbreakable: true,
  } as Content;
}

function boxOf({ tone, title, texts }: Box, width: number): Content {
  const isCaution = tone === 'caution';
  return {
    table: {
      widths: [width - 2 * boxPadding - 2],
      body: [
        [
          {
            stack: [{ text: title, bold: true, margin: [0, 0, 0, 2] }, ...texts.map((text) => ({ text }))],
          },
        ],
      ],
      dontBreakRows: true,
    },
    layout: {
      hLineWidth: () => (isCaution ? 1.6 : 0.8),
      vLineWidth: () => (isCaution ? 1.6 : 0.8),
      hLineColor: () => ink,
      vLineColor: () => ink,
      fillColor: () => (tone === 'seal' ? shade : null),
      paddingLeft: () => boxPadding,
      paddingRight: () => boxPadding,
      paddingTop: () => 6,
      paddingBottom: () => 6,
    },
    margin: [0, 4, 0, 10],
  };
}

function signatureOf(names: readonly string[], width: number): Content {
  const gap = 18;
  const lineWidth = (width - gap * (names.length - 1)) / names.length;
  return {
    columns: names.map((name) => ({
      width: lineWidth,
      stack: [
        { canvas: [{ type: 'line', x1: 0, y1: 0, x2: lineWidth, y2: 0, lineWidth: 0.8, lineColor: ink }] },
        { text: name, fontSize: 8.5, color: quiet, margin: [0, 2, 0, 0] },
      ],
    })),
    columnGap: gap,
    // Room above the line for a hand.
    margin: [0, 34, 0, 10],
    unbreakable: true,
  } as Content;
}
