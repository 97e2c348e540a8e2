/**
 * Working time in hours and minutes.
 * @example timeText(840)  // = 14 h
 * @example timeText(95)  // = 1 h 35 min
 * @example timeText(45)  // = 45 min
 */
export function timeText(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return [hours > 0 ? `${hours} h` : '', rest > 0 || hours === 0 ? `${rest} min` : '']
    .filter(Boolean)
    .join(' ');
}

/**
 * A quantity kept in thousandths, without zeros at its end.
 * @example thousandthsText(2345)  // = 2.345
 * @example thousandthsText(230000)  // = 230
 */
export const thousandthsText = (thousandths: number): string => String(thousandths / 1000);

/**
 * A rate in basis points as per cent.
 * @example percentText(1900)  // = 19 %
 * @example percentText(810)  // = 8.1 %
 */
export const percentText = (basisPoints: number): string => `${basisPoints / 100} %`;
