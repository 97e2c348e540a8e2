import type { Language } from '@becket/core';

/**
 * Working time in hours and minutes.
 * @example timeText(840, english)  // = 14 h
 * @example timeText(95, english)  // = 1 h 35 min
 * @example timeText(45, english)  // = 45 min
 */
export function timeText(minutes: number, { say }: Language): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return say('{rest} min', { rest: String(rest) });
  return rest === 0
    ? say('{hours} h', { hours: String(hours) })
    : say('{hours} h {rest} min', { hours: String(hours), rest: String(rest) });
}

/**
 * A quantity kept in thousandths, without zeros at its end.
 * @example thousandthsText(2345, english)  // = 2.345
 * @example thousandthsText(230000, english)  // = 230
 */
export const thousandthsText = (thousandths: number, { plain }: Language): string =>
  plain(thousandths / 1000);

/**
 * A rate in basis points as per cent.
 * @example percentText(1900, english)  // = 19 %
 * @example percentText(810, english)  // = 8.1 %
 */
export const percentText = (basisPoints: number, { plain }: Language): string =>
  `${plain(basisPoints / 100)} %`;
