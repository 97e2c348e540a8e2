/** So far beyond the edge of the screen a row still has its fields, so that the next one is there before it is wanted. */
const margin = '120px 0px';

/**
 * Marks the rows that are far from the screen, so that their values are drawn as words there: a field costs every
 * picture of the page its share, also where nobody sees it. Gives back what ends it.
 */
export function markFarRows(rows: Iterable<Element>): () => void {
  const observer = new IntersectionObserver(
    (changes) => {
      for (const { target, isIntersecting } of changes)
        target.toggleAttribute(far, !isIntersecting && !target.contains(document.activeElement));
    },
    { rootMargin: margin },
  );
  for (const row of rows) observer.observe(row);
  return () => observer.disconnect();
}

/** The field of a note, of this quantity or of its first; there to be given the focus, however far its row is. */
export function cellAt(key: number, quantity?: string): HTMLInputElement | null {
  const row = document.querySelector(`[data-row="${key}"]`);
  row?.removeAttribute(far);
  return row?.querySelector(quantity === undefined ? '[data-cell]' : `[data-cell="${quantity}"]`) ?? null;
}

const far = 'data-far';
