import {
  english,
  inMillimetres,
  type Language,
  METRIC_WIRE_SIZES,
  metres,
  nearestSize,
  noteName,
  type PlainString,
  US_WIRE_SIZES,
  type WoundString,
} from '@becket/core';
import { type LengthUnit, lengthNumber, lengthText } from '../../parts/length-text.ts';

/** Nearer than this to a size, a wire is called by it: half of the finest step between two sizes. */
const CALLED_BY_SIZE_M = 6e-6;

/** '0.975 mm (16½)': the size number where the wire is one of the lattice of that unit. */
export function wireText(diameter_m: number, unit: LengthUnit, language: Language = english): string {
  const { fixed, say } = language;
  const diameter = metres(diameter_m);
  const text = lengthText(diameter, unit, 'diameter', language);
  const nearest = nearestSize(US_WIRE_SIZES, diameter);
  if (Math.abs(nearest.difference) < CALLED_BY_SIZE_M) return `${text} (${nearest.sizes[0]!.label})`;
  const metric = nearestSize(METRIC_WIRE_SIZES, diameter);
  return Math.abs(metric.difference) < CALLED_BY_SIZE_M && unit === 'in'
    ? say('{text} ({figure} mm)', { text, figure: fixed(inMillimetres(metric.diameter), 3) })
    : text;
}

/** What a string is made of, in one line. */
export function stringText(
  string: PlainString | WoundString | undefined,
  unit: LengthUnit,
  language: Language = english,
): string {
  const { say } = language;
  if (string === undefined) return say('not computed');
  if (string.kind === 'plain') return wireText(string.diameter, unit, language);
  const windings = string.layers.map(({ wireDiameter }) =>
    lengthNumber(wireDiameter, unit, 'diameter', language),
  );
  return say('{lengthText} core, wound {list}', {
    lengthText: lengthText(string.coreDiameter, unit, 'diameter', language),
    list: windings.join(' + '),
  });
}

/** 'A#2 to C3, E3': runs of neighbours drawn together. */
export function keysText(keys: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === key - 1) run[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([first, last]) => (first === last ? noteName(first) : `${noteName(first)} to ${noteName(last)}`))
    .join(', ');
}

export const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;
