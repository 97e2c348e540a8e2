/** Cells in which nothing is said: empty, or a dash. */
export function isBlank(cell: string): boolean {
  return /^\s*[-–—.]*\s*$/.test(cell);
}

/** What a cell says instead of a number, as people write it. *Unknown*, *none* and *does not apply* stay three things. */
export function absenceIn(cell: string): 'unknown' | 'none' | 'does not apply' | undefined {
  if (/^\s*(\?+|unknown|unbekannt)\s*$/i.test(cell)) return 'unknown';
  if (/^\s*(none|nil|no|keine?s?|fehlt)\s*$/i.test(cell)) return 'none';
  return /^\s*(n\/?a|n\.a\.|does not apply|entfällt)\s*$/i.test(cell) ? 'does not apply' : undefined;
}

/**
 * The number in a cell as people write it: '0,041', '.041', '1 040', '41"', '1.04 mm'; undefined when there is none.
 * A unit behind the number is read over: the column's unit decides.
 */
export function numberIn(cell: string, decimalMark: '.' | ','): number | undefined {
  const bare = cell
    .trim()
    .replace(/\s*(mm|in(ch(es)?)?|"|″|µm|um|mils?|thou|m|cm)\.?$/i, '')
    .replace(/[\s\u00A0\u202F']/g, '');
  const grouped = decimalMark === ',' ? /^[-+]?\d{1,3}(\.\d{3})+(,\d+)?$/ : /^[-+]?\d{1,3}(,\d{3})+(\.\d+)?$/;
  const ungrouped = grouped.test(bare) ? bare.replaceAll(decimalMark === ',' ? '.' : ',', '') : bare;
  // One mark is a decimal mark, whichever it is: a cell pasted from another sheet is not a reason to stop.
  const plain = ungrouped.replace(',', '.');
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : undefined;
}
