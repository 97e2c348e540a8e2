import { english } from '@becket/core';
import { digestOf } from '@becket/journal';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { tinyJpeg } from '../../../journal/src/testing/tiny-jpeg.ts';
import { changeOrderPaper } from '../change-order/change-order-paper.ts';
import { photosBlock } from '../every-paper/printed-photo.ts';
import type { PageTree, PrintedPhoto } from '../page-tree.ts';
import { changedJob, changePhotoBytes, changePhotos } from '../testing/changed-job.ts';
import { testOptions } from '../testing/paper-options.ts';
import { readPdf, withoutSpaces } from '../testing/read-pdf.ts';
import type { PaperFonts } from './fonts.ts';
import { fontsOnNode } from './fonts-on-node.ts';
import { jpegSize } from './jpeg-size.ts';
import { renderPdf } from './pdf.ts';
import { type PhotoBytes, photosOf } from './photo-content.ts';

const madeAt = new Date('2026-03-10T12:00:00.000Z');
let fonts: PaperFonts;
beforeAll(async () => {
  fonts = await fontsOnNode();
});
const tree = changeOrderPaper(changedJob(), testOptions);
const made = (of: PageTree, photos?: PhotoBytes, size: 'A4' | 'Letter' = 'A4') =>
  renderPdf(of, { size, fonts, madeAt, photos });
const timesIn = (pdf: Uint8Array, jpeg: Uint8Array): number =>
  Buffer.from(pdf).toString('latin1').split(Buffer.from(jpeg).toString('latin1')).length - 1;

/** A paper of these photos alone. */
const paperOf = (photos: readonly PrintedPhoto[], orientation: PageTree['orientation'] = 'portrait') => ({
  ...tree,
  orientation,
  blocks: [photosBlock(photos, english)],
});
const printed = (digest: string, more: Partial<PrintedPhoto> = {}): PrintedPhoto => ({
  digest,
  title: 'a title',
  lines: ['a place'],
  marks: [],
  ...more,
});

describe('photos on a paper', () => {
  it('are asked for by their digests, each once', () => {
    expect(photosOf(tree)).toEqual([...changePhotos.map(digestOf), 'c'.repeat(64)]);
    expect(photosOf(paperOf([printed('a'), printed('b'), printed('a')]))).toEqual(['a', 'b']);
  });

  it('are set with their own bytes, each once however often it is shown', async () => {
    const twice = { ...tree, blocks: [...tree.blocks, ...tree.blocks] };
    const pdf = await made(twice, changePhotoBytes);
    for (const jpeg of changePhotos) expect(timesIn(pdf, jpeg)).toBe(1);
  });

  it.each(['A4', 'Letter'] as const)(
    'on %s have their caption under them and the words of their marks on them, inside the margins',
    async (size) => {
      const { pages } = await readPdf(await made(tree, changePhotoBytes, size));
      const words = pages.map((page) => page.words).join('');
      for (const photo of tree.blocks.flatMap((block) => (block.is === 'photos' ? block.photos : []))) {
        for (const text of [photo.title, ...photo.lines]) expect(words).toContain(withoutSpaces(text));
        if (changePhotoBytes(photo.digest) === undefined) continue;
        for (const mark of photo.marks) expect(words).toContain(withoutSpaces(mark.words));
      }
      for (const { width, texts } of pages)
        for (const { text, x, y, width: textWidth } of texts)
          expect([text, x >= 39.9, x + textWidth <= width - 39.5, y > 20]).toEqual([text, true, true, true]);
    },
  );

  it('that are missing are said on the page, and the paper is made all the same', async () => {
    const some = await readPdf(await made(tree, changePhotoBytes));
    const none = await readPdf(await made(tree));
    const said = (pages: typeof some.pages) =>
      pages
        .map(({ words }) => words)
        .join('')
        .split('Thisphotowasnotwherethepaperwasmade').length - 1;
    expect(said(some.pages)).toBe(1);
    expect(said(none.pages)).toBe(3);
  });

  it('of bytes that are no whole JPEG are said to be so, whatever they are', async () => {
    const bad = [
      Uint8Array.of(0x89, 0x50, 0x4e, 0x47),
      new Uint8Array(),
      tinyJpeg.subarray(0, 40),
      Uint8Array.of(0xff, 0xd8, 0xff),
    ];
    const names = bad.map((_, index) => String(index));
    const pdf = await made(paperOf(names.map((name) => printed(name))), (digest) => bad[Number(digest)]);
    const { pages } = await readPdf(pdf);
    expect(pages[0]!.words.split('cannotbeprinted').length - 1).toBe(bad.length);
  });

  it('run over pages in rows of two, of three where the page lies on its side, and no row is cut', async () => {
    const photos = Array.from({ length: 14 }, (_, index) =>
      printed(digestOf(changePhotos[0]!), { title: `photo ${index}`, lines: [`below ${index}`] }),
    );
    for (const [orientation, columns] of [
      ['portrait', 2],
      ['landscape', 3],
    ] as const) {
      const { pages } = await readPdf(await made(paperOf(photos, orientation), changePhotoBytes));
      expect(pages.length).toBeGreaterThan(1);
      for (const { texts } of pages) {
        const own = texts.filter(({ text }) => /^photo \d+$/.test(text));
        const rows = new Map<number, number>();
        for (const { y } of own) rows.set(Math.round(y), (rows.get(Math.round(y)) ?? 0) + 1);
        expect([...rows.values()].slice(0, -1).every((count) => count === columns)).toBe(true);
        // What stands under a photo is on its page.
        const below = texts.filter(({ text }) => /^below \d+$/.test(text));
        expect(below.map(({ text }) => text.slice(6))).toEqual(own.map(({ text }) => text.slice(6)));
      }
    }
  });

  it('take hostile words as words', async () => {
    const marks: PrintedPhoto['marks'] = [
      { mark: 'label', at: { x: 1, y: 0 }, words: `<b>&"${'W'.repeat(200)}` },
      { mark: 'arrow', from: { x: 0.5, y: 0.5 }, to: { x: 0.5, y: 0.5 }, words: '</svg><script>' },
    ];
    const photo = printed(digestOf(changePhotos[0]!), { title: 'x'.repeat(300), marks });
    const { pages } = await readPdf(await made(paperOf([photo]), changePhotoBytes));
    expect(pages[0]!.words).toContain('</svg><script>');
    expect(pages[0]!.words).toContain('<b>&"WWW');
    for (const { text, x, width } of pages[0]!.texts)
      expect([text, x >= 39.9, x + width <= pages[0]!.width - 39.5]).toEqual([text, true, true]);
  });
});

describe('jpegSize()', () => {
  it('reads the frame of a JPEG', () => {
    expect(jpegSize(tinyJpeg)).toEqual({ width: 2, height: 2 });
    // ITU-T T.81, B.2.2: marker, length, precision, lines, samples a line, components.
    const frame = [0xff, 0xc2, 0x00, 0x11, 8, 0x06, 0xab, 0x0a, 0x00, 3];
    expect(jpegSize(Uint8Array.of(0xff, 0xd8, ...frame, 0, 0, 0))).toEqual({ width: 2560, height: 1707 });
    expect(jpegSize(Uint8Array.of(0xff, 0xd8, ...frame.with(1, 0xc9), 0, 0, 0))).toBeUndefined();
    expect(jpegSize(Uint8Array.of(0xff, 0xd8, ...frame.with(4, 12), 0, 0, 0))).toBeUndefined();
  });

  it('ends, and never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (tail) => {
        const size = jpegSize(Uint8Array.of(0xff, 0xd8, 0xff, ...tail));
        expect(size === undefined || (size.width > 0 && size.height > 0)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
