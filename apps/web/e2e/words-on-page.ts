import type { Page } from '@playwright/test';

/** Every text a page shows or speaks, each once: its text nodes, and the attributes that are read out or stand in fields. */
export async function textsOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const texts = new Set<string>();
    const take = (text: string | null) => {
      const words = (text ?? '').replace(/\s+/g, ' ').trim();
      if (words !== '') texts.add(words);
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
      if (!['SCRIPT', 'STYLE', 'NOSCRIPT'].includes(node.parentElement?.tagName ?? ''))
        take(node.textContent);
    for (const element of document.querySelectorAll('*'))
      for (const name of ['aria-label', 'aria-valuetext', 'aria-description', 'title', 'placeholder', 'alt'])
        take(element.getAttribute(name));
    return [...texts];
  });
}

/** Everything people wrote into a job themselves, which no language changes: the texts under these names in its journal. */
const ownNames = new Set(
  'title customer maker model serialNumber section point what whatToDo why note reason because shows by device instrument name bridge bridges label text strut thing of whose source supplier article colour material kind condition conditions ifFound unit file'.split(
    ' ',
  ),
);

export function ownTexts(value: unknown, name = ''): string[] {
  if (typeof value === 'string') return ownNames.has(name) ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((one) => ownTexts(one, name));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, one]) => ownTexts(one, key));
  return [];
}

/** Words that are the same in both languages: names, units, formats, note names. */
const same =
  /^(Becket|Deutsch|English|Agraffe|Tenor|Bass|Letter|Name|Position|Text|PDF|CSV|Limit|Layer|Material|Version|Status|Wind|Mensur|Rest|Ton|Radius|Index|Journal|kN|lbf)$/;

/**
 * What stands on a German page as it stands on an English one, and is no word of both languages; and every day that is
 * written as machines write it.
 */
export function leftInEnglish(
  inGerman: readonly string[],
  english: ReadonlySet<string>,
  typed: readonly string[],
): string[] {
  const own = [...new Set(typed)].sort((a, b) => b.length - a.length);
  const isWord = (text: string) => {
    let rest = text;
    for (const one of own) rest = rest.replaceAll(one, ' ');
    return rest
      .split(/[^A-Za-zÀ-ž]+/)
      .some((word) => /[a-z]{3,}/.test(word) && !same.test(word) && !/^(mm|lbf|kgf|cent)$/.test(word));
  };
  return inGerman.filter((text) => (english.has(text) && isWord(text)) || /\b\d{4}-\d\d-\d\d\b/.test(text));
}

/** What reaches beyond the right edge of the page, where nothing lets it be scrolled to; in the words it begins with. */
export async function beyondTheEdge(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const edge = document.documentElement.clientWidth + 1;
    const isHeld = (element: Element): boolean => {
      for (
        let one: Element | null = element;
        one !== null && one !== document.body;
        one = one.parentElement
      ) {
        const { overflowX, position, clip } = getComputedStyle(one);
        if (overflowX !== 'visible' || (position === 'absolute' && clip !== 'auto')) return true;
      }
      return false;
    };
    const out: string[] = [];
    for (const element of document.body.querySelectorAll('*')) {
      const { right, width, height } = element.getBoundingClientRect();
      if (width < 2 || height < 2 || right <= edge || isHeld(element)) continue;
      out.push(
        `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} to ${Math.round(right)}: ${(element.textContent ?? '').trim().slice(0, 50)}`,
      );
    }
    return out;
  });
}
