import { english, type Language } from '@becket/core';

/**
 * The figure of a tick as d3 writes it, with the marks of the language.
 * @example tickText('1,000')  // = 1,000
 * @example tickText('0.50', makeLanguage('de-DE'))  // = 0,50
 */
export function tickText(text: string, { locale }: Language = english): string {
  const digits = text.split('.')[1]?.length ?? 0;
  // d3 has its own minus sign, which Number does not read.
  const value = Number(text.replaceAll(',', '').replace('−', '-'));
  const written = new Intl.NumberFormat(locale, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(value);
  return written.replace('-', '−');
}
