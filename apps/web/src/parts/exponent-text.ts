import { english, type Language } from '@becket/core';

/**
 * A very small or very large number with two digits after its mark.
 * @example exponentText(0.000123)  // = 1.23e-4
 */
export function exponentText(value: number, { fixed }: Language = english): string {
  const [figures, exponent] = value.toExponential(2).split('e');
  return `${fixed(Number(figures), 2)}e${exponent}`;
}
