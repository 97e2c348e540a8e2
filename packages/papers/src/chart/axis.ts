import type { Language } from '@becket/core';
import { scaleLinear, scaleLog } from 'd3-scale';
import type { Axis } from '../page-tree.ts';

/**
 * An axis that spans these values, widened to round ends, with at most about `count` ticks.
 *
 * A log axis has its ticks at 1, 2 and 5 times powers of ten, which is what lengths over seven octaves need.
 * Returns undefined when there is no value, or on a log axis no value above zero.
 */
export function axisOver(
  values: readonly number[],
  { name, scale, count = 5 }: { name: string; scale: Axis['scale']; count?: number },
  language: Language,
): Axis | undefined {
  const usable = values.filter((value) => Number.isFinite(value) && (scale === 'linear' || value > 0));
  if (usable.length === 0) return undefined;
  const low = Math.min(...usable);
  const high = Math.max(...usable);
  return scale === 'log' ? logAxis(name, low, high, language) : linearAxis(name, low, high, count, language);
}

function linearAxis(name: string, low: number, high: number, count: number, language: Language): Axis {
  // One value alone still needs a stretch of axis around it.
  const spread = high > low ? high - low : Math.max(Math.abs(low) * 0.1, 1e-9);
  const nice = scaleLinear()
    .domain([low - spread * 0.03, high + spread * 0.03])
    .nice(count);
  const [from = low, to = high] = nice.domain();
  const inEnglish = nice.tickFormat(count);
  const write = (at: number) => withMarksOf(language, inEnglish(at));
  return { name, scale: 'linear', from, to, ticks: nice.ticks(count).map((at) => ({ at, text: write(at) })) };
}

/** A number that was written with the marks of English, with those of a language. */
function withMarksOf({ fixed }: Language, figures: string): string {
  const hasComma = fixed(0.5, 1).includes(',');
  return hasComma ? figures.replace(/[.,]/g, (mark) => (mark === '.' ? ',' : '.')) : figures;
}

function logAxis(name: string, low: number, high: number, { plain }: Language): Axis {
  const steps = [1, 2, 5].flatMap((first) =>
    Array.from({ length: 13 }, (_, index) => Number(`${first}e${index - 6}`)),
  );
  steps.sort((a, b) => a - b);
  const from = steps.findLast((step) => step <= low) ?? low;
  const to = steps.find((step) => step >= high) ?? high;
  const end = to > from ? to : from * 2;
  const ticks = steps.filter((step) => step >= from && step <= end);
  return { name, scale: 'log', from, to: end, ticks: ticks.map((at) => ({ at, text: plain(at) })) };
}

/** Where a value lies along the axis, 0 at its beginning and 1 at its end. */
export function placeOnAxis(axis: Axis, value: number): number {
  const scale = axis.scale === 'log' ? scaleLog() : scaleLinear();
  return scale.domain([axis.from, axis.to]).range([0, 1])(value);
}
