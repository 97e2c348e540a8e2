/** The lines of a text that say something. */
export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** 'what: why', one a line; a line without a colon has no reason, and is refused where it is kept. */
export function pairsOf(text: string): { what: string; because: string }[] {
  return linesOf(text).map((line) => {
    const colon = line.indexOf(':');
    return colon < 0
      ? { what: line, because: '' }
      : { what: line.slice(0, colon).trim() || line, because: line.slice(colon + 1).trim() };
  });
}

/**
 * The same day some months later; the last of a month that is shorter. '' where the day is none.
 * @example monthsAfter('2026-01-31', 1)  // = 2026-02-28
 */
export function monthsAfter(day: string, months: number): string {
  const [year, month, date] = day.split('-').map(Number);
  if (year === undefined || month === undefined || date === undefined || Number.isNaN(date)) return '';
  const first = new Date(Date.UTC(year, month - 1 + months, 1));
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  first.setUTCDate(Math.min(date, last));
  return first.toISOString().slice(0, 10);
}
