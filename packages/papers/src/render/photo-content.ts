import type { Content } from 'pdfmake/interfaces';
import type { PageTree, Photos, PrintedPhoto } from '../page-tree.ts';
import { jpegSize } from './jpeg-size.ts';
import { quiet } from './look.ts';
import { photoMarksSvg } from './photo-marks-svg.ts';

/** The bytes of a photo by its digest; undefined when whoever renders does not have them. */
export type PhotoBytes = (digest: string) => Uint8Array | undefined;

const gap = 14;
const frameColour = '#8a8a8a';
/** Three rows to a page, with what stands under them. */
const tallest = 175;
/** An empty frame where a photo is missing: it is seen that there is one, and a word can be written in. */
const absentHeight = 48;

/** The digests of the photos that a paper shows, each once. */
export function photosOf({ blocks }: PageTree): string[] {
  return [
    ...new Set(
      blocks.flatMap((block) => (block.is === 'photos' ? block.photos.map(({ digest }) => digest) : [])),
    ),
  ];
}

/** Photos that can be set, as pdfmake wants them: by name, each a data address. */
export function pdfImages(tree: PageTree, bytesOf: PhotoBytes): Record<string, string> {
  const images: Record<string, string> = {};
  for (const digest of photosOf(tree)) {
    const bytes = bytesOf(digest);
    if (bytes !== undefined && jpegSize(bytes) !== undefined)
      images[digest] = `data:image/jpeg;base64,${base64Of(bytes)}`;
  }
  return images;
}

/** Photos two to a row, three where the page lies on its side; each with its marks and what is said of it. */
export function photosContent(
  { photos, ifMissing, ifUnreadable }: Photos,
  { width, columns, bytesOf }: { width: number; columns: number; bytesOf: PhotoBytes },
): Content {
  const cell = (width - gap * (columns - 1)) / columns;
  const rows: Content[] = [];
  for (let first = 0; first < photos.length; first += columns) {
    rows.push({
      columns: photos.slice(first, first + columns).map((photo) => ({
        width: cell,
        stack: [
          ...(pictureOf(photo, cell, bytesOf) ??
            frameInstead(cell, bytesOf(photo.digest) === undefined ? ifMissing : ifUnreadable)),
          ...captionOf(photo),
        ],
      })),
      columnGap: gap,
      margin: [0, 4, 0, 10],
      unbreakable: true,
    } as Content);
  }
  return { stack: rows };
}

function pictureOf(
  { digest, marks }: PrintedPhoto,
  cell: number,
  bytesOf: PhotoBytes,
): Content[] | undefined {
  const bytes = bytesOf(digest);
  // Of a picture that is here its own size is asked: what is said of it could be wrong, and would bend it.
  const size = bytes && jpegSize(bytes);
  if (size === undefined) return undefined;
  const scale = Math.min(cell / size.width, tallest / size.height);
  const shown = { width: size.width * scale, height: size.height * scale };
  const picture = { image: digest, ...shown } as Content;
  if (marks.length === 0) return [picture];
  const overlay = {
    svg: photoMarksSvg(marks, { ...shown, fontFamily: 'paper' }),
    font: 'paper',
    width: shown.width,
    relativePosition: { x: 0, y: -shown.height },
  } as Content;
  return [picture, overlay];
}

function frameInstead(cell: number, why: string): Content[] {
  return [
    {
      canvas: [
        {
          type: 'rect',
          x: 0,
          y: 0,
          w: cell,
          h: absentHeight,
          lineWidth: 0.8,
          lineColor: frameColour,
          dash: { length: 3 },
        },
      ],
    } as Content,
    { text: why, italics: true, fontSize: 8, margin: [0, 2, 0, 0] },
  ];
}

function captionOf({ title, lines }: PrintedPhoto): Content[] {
  return [
    { text: title, bold: true, fontSize: 8.5, margin: [0, 3, 0, 0] },
    ...lines.map((text): Content => ({ text, fontSize: 7.5, color: quiet })),
  ];
}

/** Base 64 wherever this runs: in a browser there is no Buffer. Source: RFC 4648 (2006), section 4. */
function base64Of(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += 8192)
    binary += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(binary);
}
