import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One piece of text where it stands on the page, in points from the lower left corner. */
export interface PlacedText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly isFontEmbedded: boolean;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PlacedText[];
  /** All text in reading order, without any space: line breaks and gaps are a matter of type-setting. */
  readonly words: string;
}

/** A PDF read back by a library that has no part in writing it. */
export async function readPdf(
  bytes: Uint8Array,
): Promise<{ title: string; language: string; pages: ReadPage[] }> {
  // A copy, since the reader takes the buffer over.
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const { info } = await document.getMetadata();
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    // Working the page through loads its fonts.
    await page.getOperatorList();
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item): PlacedText[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const font = page.commonObjs.get(item.fontName) as { missingFile?: boolean };
      return [
        {
          text: item.str,
          x: item.transform[4],
          y: item.transform[5],
          width: item.width,
          isFontEmbedded: font.missingFile !== true,
        },
      ];
    });
    const words = withoutSpaces(texts.map(({ text }) => text).join(''));
    pages.push({ width: right - left, height: top - bottom, texts, words });
  }
  const { Title, Language } = info as { Title?: string; Language?: string };
  await document.destroy();
  return { title: Title ?? '', language: Language ?? '', pages };
}

export const withoutSpaces = (text: string): string => text.replace(/\s+/g, '');
