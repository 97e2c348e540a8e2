const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/**
 * A day in words, from RFC 3339 UTC; the day is that of UTC.
 * @example dayInWords('2026-03-01T10:00:00.000Z')  // = 1 March 2026
 */
export function dayInWords(at: string): string {
  const [year, month, day] = at.slice(0, 10).split('-').map(Number);
  return `${day} ${months[month! - 1]} ${year}`;
}

/**
 * Day and minute in words, from RFC 3339 UTC.
 * @example timeInWords('2026-03-01T10:00:00.000Z')  // = 1 March 2026, 10:00 UTC
 */
export function timeInWords(at: string): string {
  return `${dayInWords(at)}, ${at.slice(11, 16)} UTC`;
}
