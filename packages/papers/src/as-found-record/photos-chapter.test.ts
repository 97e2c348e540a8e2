import { english } from '@becket/core';
import { digestOf, type FactOf, foldJob } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import type { Block, Photos } from '../page-tree.ts';
import { changePhotos } from '../testing/changed-job.ts';
import { smallJournal } from '../testing/small-job.ts';
import { photosChapter } from './photos-chapter.ts';

type Photo = FactOf<'photo'>;

/** The small piano with these photos as well; each has a digest of its own letter. */
function chapterOf(photos: readonly Partial<Photo>[], unit: 'mm' | 'in' = 'mm'): Block[] {
  const entries = smallJournal();
  const last = entries.at(-1)!;
  return photosChapter(
    foldJob([
      ...entries,
      ...photos.map((photo, index) => ({
        ...last,
        id: `01SMC${String(index).padStart(21, '0')}`,
        step: last.step + 1 + index,
        at: '2026-03-03T16:00:00.000Z',
        by: 'Bo',
        fact: {
          kind: 'photo',
          v: 1,
          digest: String.fromCharCode(97 + index).repeat(64),
          mediaType: 'image/jpeg',
          bytes: 9,
          width: 1000,
          height: 500,
          place: {},
          marks: [],
          ...photo,
        } satisfies Photo,
      })),
    ]),
    unit,
    english,
  );
}
/** Under each heading the titles of its photos. */
function outline(blocks: readonly Block[]): Record<string, string[]> {
  const found: Record<string, string[]> = {};
  let heading = '';
  for (const block of blocks) {
    if (block.is === 'heading') heading = block.text;
    if (block.is === 'photos') found[heading] = block.photos.map(({ title }) => title);
  }
  return found;
}
const photosIn = (blocks: readonly Block[]) =>
  blocks.filter((block): block is Photos => block.is === 'photos').flatMap(({ photos }) => photos);

describe('photosChapter()', () => {
  it('shows what belongs to a place or is marked, by section and along the compass, and counts the rest', () => {
    // The small piano: section bass has keys 20 to 26, tenor 27 to 31.
    const blocks = chapterOf([
      { place: { key: 30 }, shows: 'the upper tenor' },
      { place: { key: 27, string: 2 }, shows: 'the lower tenor' },
      { place: { section: 'tenor' }, shows: 'the whole tenor' },
      { place: { point: 'lid' }, shows: 'the lid' },
      { marks: [{ mark: 'label', at: { x: 0.5, y: 0.5 }, text: 'here' }], shows: 'something marked' },
      { shows: 'nothing in particular' },
      { place: { key: 21 }, shows: 'the new loops', stage: 'as strung' },
      { place: { key: 20 }, shows: 'under the felt', stage: 'after the strip' },
    ]);
    expect(outline(blocks)).toEqual({
      'Photos of section tenor': ['the whole tenor', 'the lower tenor', 'the upper tenor'],
      'Photos of no section': ['the lid', 'something marked'],
    });
    expect(JSON.stringify(blocks)).toContain(
      '1 further photo has neither a place nor a mark; the job keeps it, and this paper does not show it.',
    );
  });

  it('says of each where, when, by whom, and the digest it is kept under', () => {
    const [photo] = photosIn(chapterOf([{ place: { key: 28, string: 2, point: 'at the capo' } }]));
    expect(photo).toMatchObject({
      digest: 'a'.repeat(64),
      title: 'nothing said of what it shows',
      lines: ['C3, string 2, at the capo', 'kept 3 March 2026 by Bo; digest aaaaaaaaaaaa'],
    });
  });

  it('writes lengths beside their lines and under the picture, in the unit that stands first', () => {
    // The bar is 0.2 · 1000 = 200 pixels and 50.8 mm = 2 in; the other line √(300² + 400²) = 500 pixels, so 127 mm = 5 in.
    const marks: Photo['marks'] = [
      { mark: 'distance', from: { x: 0, y: 0 }, to: { x: 0.2, y: 0 }, known_m: 0.0508 },
      { mark: 'distance', from: { x: 0.1, y: 0.1 }, to: { x: 0.4, y: 0.9 } },
    ];
    const [photo] = photosIn(chapterOf([{ marks }], 'in'));
    expect(photo?.marks.map(({ words }) => words)).toEqual(['2.00 in', '≈ 5.00 in']);
    expect(photo?.lines.slice(2)).toEqual([
      'scale bar: 2.00 in (50.8 mm), measured on the piano',
      // u = L·√2·u_p·√(1/p² + 1/P²), u_p = 0.002 · 1000 = 2: 127 · √2 · 2 · √(1/500² + 1/200²) = 1.93 mm = 0.08 in.
      '≈ 5.00 in (127.0 mm), u = 0.08 in, off the scale bar',
      'A length off the scale bar holds only in the plane of the bar, seen from the front.',
    ]);
  });

  it('says that a line has no length without a scale bar, and that bars disagree', () => {
    const line = { mark: 'distance', from: { x: 0, y: 0 }, to: { x: 0.5, y: 0 } } as const;
    const [bare] = photosIn(chapterOf([{ marks: [line] }]));
    expect(bare?.marks[0]?.words).toBe('no scale');
    const bars: Photo['marks'] = [
      { ...line, known_m: 0.1 },
      { ...line, known_m: 0.12 },
    ];
    const [doubted] = photosIn(chapterOf([{ marks: bars }]));
    // 0.02 of a mean of 0.11.
    expect(doubted?.lines.at(-1)).toBe('The scale bars disagree by 18 %: measure on the piano instead.');
  });

  it('is left out where there is no photo of the piano as found', () => {
    expect(chapterOf([])).toEqual([]);
    expect(chapterOf([{ digest: digestOf(changePhotos[0]!), stage: 'after the strip' }])).toEqual([]);
  });
});
