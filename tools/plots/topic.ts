import type { Plot } from './plot.ts';

/** A table of figures that the script measures and puts into a page. */
export interface MeasuredTable {
  /** The name between `<!-- measured: name -->` and `<!-- /measured -->` on the page. */
  readonly name: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** What the script makes for one page of docs/explanation. */
export interface Topic {
  /** File name of the page without `.md`. */
  readonly page: string;
  /** File name of the plot without `.svg` → the plot. */
  readonly plots: Readonly<Record<string, Plot>>;
  readonly tables: readonly MeasuredTable[];
}

/** A number with a fixed count of digits after the point and a proper minus sign. */
export const fixed = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return (/^-0\.?0*$/.test(text) ? text.slice(1) : text).replace('-', '−');
};

/** The same with a plus sign where it is above zero: for differences. */
export const signed = (value: number, digits: number): string => {
  const text = fixed(value, digits);
  return value > 0 && !/^0\.?0*$/.test(text) ? `+${text}` : text;
};

/** A share as a difference in per cent. */
export const percent = (share: number, digits = 1): string => `${signed(100 * share, digits)} %`;

/** A small number in three digits, 2.38·10⁻⁴. */
export const scientific = (value: number): string => {
  const [digits, exponent] = value.toExponential(2).split('e');
  const raised = Number(exponent)
    .toString()
    .replace('-', '⁻')
    .replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]!);
  return `${digits}·10${raised}`;
};

/** Evenly spaced values, both ends included. */
export const steps = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, index) => low + ((high - low) * index) / (count - 1));
