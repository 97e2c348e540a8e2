import {
  english,
  inMillimetres,
  type Language,
  METRIC_WIRE_SIZES,
  type Message,
  message,
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
  const diameter = metres(diameter_m);
  const text = lengthText(diameter, unit, 'diameter', language);
  const nearest = nearestSize(US_WIRE_SIZES, diameter);
  if (Math.abs(nearest.difference) < CALLED_BY_SIZE_M) return `${text} (${nearest.sizes[0]!.label})`;
  const metric = nearestSize(METRIC_WIRE_SIZES, diameter);
  return Math.abs(metric.difference) < CALLED_BY_SIZE_M && unit === 'in'
    ? `${text} (${language.fixed(inMillimetres(metric.diameter), 3)} mm)`
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
  return say('{core} core, wound {windings}', {
    core: lengthText(string.coreDiameter, unit, 'diameter', language),
    windings: windings.join(' + '),
  });
}

/** 'A#2 to C3, E3': runs of neighbours drawn together. */
export function keysText(keys: readonly number[], { say }: Language = english): string {
  const runs: [number, number][] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === key - 1) run[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([first, last]) =>
      first === last
        ? noteName(first)
        : say('{first} to {last}', { first: noteName(first), last: noteName(last) }),
    )
    .join(', ');
}

const ownNames: readonly Message[] = [
  message('as found'),
  message('as strung'),
  message('as found, in whole sizes'),
];

/** The name of a scale: ours is said, one that was typed stays as it is. */
export function scaleName(name: string, { say }: Language = english): string {
  const own = ownNames.find((one) => one === name);
  return own === undefined ? name : say(own);
}
