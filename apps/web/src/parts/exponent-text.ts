import { english, type Language } from '@becket/core';

/**
 * A very small or very large number, with two digits after its mark unless another count is asked for.
 * @example exponentText(0.000123)  // = 1.23e-4
 * @example exponentText(0.000123, english, 1)  // = 1.2e-4
 */
export function exponentText(value: number, { fixed }: Language = english, digits = 2): string {
  const [figures, exponent] = value.toExponential(digits).split('e');
  return `${fixed(Number(figures), digits)}e${exponent}`;
}
