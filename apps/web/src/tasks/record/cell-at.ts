import type { CellPlace } from './grid.ts';

/** The name of a cell in the document, which finds it there at once. */
export const cellId = ({ key, quantity }: CellPlace): string => `cell-${key}-${quantity}`;

/** A cell on the page; what is given the focus gets the field. */
export const cellAt = (place: CellPlace): HTMLElement | null => document.getElementById(cellId(place));

/** The first cell of a note that is typed into. */
export const firstCellOf = (key: number): HTMLElement | null =>
  document.querySelector(`[data-row="${key}"] [data-cell]`);

/** Takes a cell from speech and from Tab while the field lies over it, and gives it back. */
export function coverCell(cell: HTMLElement | null, isCovered: boolean): void {
  if (isCovered) cell?.setAttribute('aria-hidden', 'true');
  else cell?.removeAttribute('aria-hidden');
  cell?.setAttribute('tabindex', isCovered ? '-1' : '0');
}

/** Brings a cell to where nothing lies over it. The browser is asked only where it is not there: it takes its time. */
export function showCell(cell: Element): void {
  const { top, bottom } = cell.getBoundingClientRect();
  const { scrollPaddingTop, scrollPaddingBottom } = getComputedStyle(document.documentElement);
  // The browser scrolls by whole pixels: a cell that it brought here may be a part of one beyond.
  const isInSight =
    top > Number.parseFloat(scrollPaddingTop) - 1 &&
    bottom < window.innerHeight - Number.parseFloat(scrollPaddingBottom) + 1;
  if (!isInSight) cell.scrollIntoView({ block: 'nearest' });
}
