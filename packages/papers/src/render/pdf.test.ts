import { beforeAll, describe, expect, it } from 'vitest';
import { asFoundRecordPaper } from '../as-found-record/as-found-record-paper.ts';
import { bassStringOrderPaper } from '../bass-string-order/bass-string-order-paper.ts';
import type { Block, Cell, PageTree, PaperSize, Table, TableRow } from '../page-tree.ts';
import { testOptions } from '../testing/paper-options.ts';
import { type ReadPage, readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import { smallJob } from '../testing/small-job.ts';
import { wholeCompassJob } from '../testing/whole-compass-job.ts';
import type { PaperFonts } from './fonts.ts';
import { fontsOnNode } from './fonts-on-node.ts';
import { renderPdf } from './pdf.ts';

const madeAt = new Date('2026-03-10T12:00:00.000Z');
const pointsPerMillimetre = 72 / 25.4;
let fonts: PaperFonts;
beforeAll(async () => {
  fonts = await fontsOnNode();
});
/** Each tree is set once a size, and read back once. */
const read = new Map<string, ReturnType<typeof readPdf>>();
function made(tree: PageTree, size: PaperSize = 'A4'): ReturnType<typeof readPdf> {
  const name = `${tree.title}/${tree.running.job}/${size}`;
  const known = read.get(name) ?? renderPdf(tree, { size, fonts, madeAt }).then(readPdf);
  read.set(name, known);
  return known;
}

const record = asFoundRecordPaper(smallJob({ sealed: true }), testOptions);
const order = bassStringOrderPaper(smallJob({ sealed: true }), testOptions);
const longRecord = asFoundRecordPaper(wholeCompassJob(), testOptions);
const longOrder = bassStringOrderPaper(wholeCompassJob(), testOptions);

const cellText = (cell: Cell): string =>
  typeof cell === 'string' ? cell : 'absent' in cell ? cell.absent : `____${cell.blank}`;
const rowText = (row: TableRow): string =>
  withoutSpaces('band' in row ? row.band : row.cells.map(cellText).join(''));
const isTable = (block: Block): block is Table => block.is === 'table';
const allWords = (pages: readonly ReadPage[]) => pages.map(({ words }) => words).join('');

describe('renderPdf()', () => {
  it.each([
    ['as-found record', record],
    ['bass string order', order],
    ['as-found record of 88 notes', longRecord],
  ])('sets every row of every table, and every text, so that they can be read back: %s', async (_, tree) => {
    const words = allWords((await made(tree)).pages);
    const missing: string[] = [];
    for (const block of tree.blocks) {
      const texts =
        block.is === 'table'
          ? block.rows.map(rowText)
          : block.is === 'list'
            ? block.items
            : block.is === 'facts'
              ? block.rows.map(({ name, value }) => name + value)
              : block.is === 'box'
                ? [block.title, ...block.texts]
                : block.is === 'heading' || block.is === 'paragraph'
                  ? [block.text]
                  : block.is === 'chart'
                    ? [block.title, block.words, ...block.x.ticks.map(({ text }) => text)]
                    : [];
      missing.push(...texts.map(withoutSpaces).filter((text) => !words.includes(text)));
    }
    expect(missing).toEqual([]);
  });

  it('measures as the paper it was asked for, upright or on its side', async () => {
    // A4 is 210 × 297 mm (ISO 216), Letter 8½ × 11 in (ANSI/ASME Y14.1).
    const sizes = { A4: [210, 297], Letter: [8.5 * 25.4, 11 * 25.4] } as const;
    for (const size of ['A4', 'Letter'] as const) {
      const [short, long] = sizes[size];
      for (const { width, height } of (await made(record, size)).pages) {
        expect(Math.abs(width / pointsPerMillimetre - short)).toBeLessThan(0.1);
        expect(Math.abs(height / pointsPerMillimetre - long)).toBeLessThan(0.1);
      }
      for (const { width, height } of (await made(order, size)).pages) {
        expect(Math.abs(width / pointsPerMillimetre - long)).toBeLessThan(0.1);
        expect(Math.abs(height / pointsPerMillimetre - short)).toBeLessThan(0.1);
      }
    }
  });

  it('embeds every font that any text is set in', async () => {
    const { pages } = await made(record);
    const texts = pages.flatMap((page) => page.texts);
    expect(texts.length).toBeGreaterThan(300);
    expect(texts.filter(({ isFontEmbedded }) => !isFontEmbedded)).toEqual([]);
  });

  it('names job, paper, day, seal, origin and page x of y on every page', async () => {
    for (const tree of [record, order, longRecord]) {
      const { pages, title, language } = await made(tree);
      const { job, date, seal, origin } = tree.running;
      pages.forEach(({ words }, index) => {
        for (const text of [job, tree.title, date, seal, origin, `page ${index + 1} of ${pages.length}`]) {
          expect(words).toContain(withoutSpaces(text));
        }
      });
      expect(title).toBe(`${tree.title}: ${job}`);
      expect(language).toBe('en-GB');
    }
  });

  it('is no longer for the way back to the job beside its title', async () => {
    for (const tree of [record, order]) {
      const without = { ...tree, title: `${tree.title}.`, running: { ...tree.running, code: undefined } };
      expect((await made(without)).pages).toHaveLength((await made(tree)).pages.length);
    }
  });

  it.each(['A4', 'Letter'] as const)(
    'keeps all text inside the margins of %s and off the footer',
    async (size) => {
      for (const tree of [record, order, longRecord, longOrder]) {
        for (const { width, texts } of (await made(tree, size)).pages) {
          for (const { text, x, y, width: textWidth } of texts) {
            expect([text, x >= 39.9, x + textWidth <= width - 39.5, y > 20], text).toEqual([
              text,
              true,
              true,
              true,
            ]);
          }
        }
      }
    },
  );

  it('leaves no page without content, and repeats the headings wherever a table runs on', async () => {
    const { pages } = await made(longRecord);
    const runningTexts = 6;
    for (const page of pages) expect(page.texts.length).toBeGreaterThan(runningTexts + 5);
    const tables = longRecord.blocks.filter(isTable).filter(({ rows }) => rows.length > 15);
    expect(tables.length).toBeGreaterThan(3);
    for (const { title, columns, rows } of tables) {
      const heads = withoutSpaces(columns.map(({ heading }) => heading).join(''));
      for (const { words } of pages) {
        const held = rows.filter((row) => words.includes(rowText(row)));
        if (held.length === 0) continue;
        expect(words).toContain(withoutSpaces(title ?? ''));
        expect(words).toContain(heads);
      }
    }
  });

  it('never cuts a row: each stands whole on one page', async () => {
    const { pages } = await made(longRecord);
    for (const { rows } of longRecord.blocks.filter(isTable)) {
      for (const row of rows) {
        expect(pages.some(({ words }) => words.includes(rowText(row)))).toBe(true);
      }
    }
  });

  it('takes hostile text as text, and keeps it inside the margins', async () => {
    const job = smallJob();
    const observations = job.observations.map((observation) => ({
      ...observation,
      answer: { is: 'known' as const, text: `<b>${'felt & braid '.repeat(120)}</b>${'x'.repeat(400)}` },
    }));
    const changedCells = [
      { row: 1, column: 'c'.repeat(300), found: '9'.repeat(99_999), used: null, reason: 'r'.repeat(999) },
    ];
    const imports = job.imports.map((one) => ({ ...one, file: `${'long-'.repeat(58)}.csv`, changedCells }));
    const title = 'Größe “½” <script>alert(1)</script> https://shop.example/a.png '.padEnd(200, 'W');
    const by = 'W'.repeat(200);
    const seal = { ...smallJob({ sealed: true }).seal!, by };
    const { pages } = await made(
      asFoundRecordPaper({ ...job, title, observations, imports, seal }, testOptions),
    );
    expect(allWords(pages)).toContain('<script>alert(1)</script>');
    expect(allWords(pages)).toContain(withoutSpaces('<b>felt & braid'));
    expect(allWords(pages)).toContain('x'.repeat(40));
    for (const { width, texts } of pages) {
      for (const { text, x, width: textWidth, y } of texts) {
        expect([text, x >= 39.9, x + textWidth <= width - 39.5, y > 14]).toEqual([text, true, true, true]);
      }
    }
  });

  it('gives the same bytes for the same tree, and leaves the tree as it was', async () => {
    const frozen = deepFrozen(structuredClone(record));
    const first = await renderPdf(frozen, { size: 'A4', fonts, madeAt });
    const second = await renderPdf(frozen, { size: 'A4', fonts, madeAt });
    expect(Buffer.compare(Buffer.from(first), Buffer.from(second))).toBe(0);
  });
});

function deepFrozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    for (const inner of Object.values(value)) deepFrozen(inner);
    Object.freeze(value);
  }
  return value;
}
