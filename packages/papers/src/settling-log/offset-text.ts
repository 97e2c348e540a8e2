import type { Language } from '@becket/core';

/**
 * An offset in cents with its sign, to a tenth: no ear and no meter says more of a section.
 * @example offsetText(-7.25, english)  // = −7.3
 * @example offsetText(4, english)  // = +4.0
 */
export function offsetText(offset_cents: number, { fixed }: Language): string {
  const figures = fixed(Math.abs(Number(offset_cents.toPrecision(9))), 1);
  if (!/[1-9]/.test(figures)) return figures;
  return `${offset_cents < 0 ? '−' : '+'}${figures}`;
}
