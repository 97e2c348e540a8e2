import { readFileSync } from 'node:fs';
import {
  hertz,
  millimetres,
  newtons,
  noteName,
  type WoundString,
  woundStringModes,
  woundTensionAtPitch,
} from '@becket/core';
import { inventedNote, inventedWoundString } from './invented-piano.ts';
import { fixed, signed, type Topic } from './topic.ts';

/** The string of the checks named wound-bare-…; their source stands in checks/checks.json. */
const checked: WoundString = {
  kind: 'wound',
  speakingLength: millimetres(1300),
  coreDiameter: millimetres(1.1),
  layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }],
};
const ours = woundStringModes({ string: checked, tension: newtons(900), count: 16 }).value;
const published = (
  JSON.parse(readFileSync(new URL('../../checks/checks.json', import.meta.url), 'utf8')) as {
    id: string;
    expected: number;
  }[]
)
  .filter(({ id }) => id.startsWith('wound-bare-'))
  .map(({ id, expected }) => ({ partial: Number(id.split('-').at(-1)), expected }));

const key = 12;
/** Cents of each partial over the multiple of the pitch. */
function partialsInCents(bare: number): number[] {
  const string = inventedWoundString(key, millimetres(bare));
  const frequency = hertz(inventedNote(key).frequency);
  const tension = woundTensionAtPitch({ string, frequency, stiffness: 'counted' }).value;
  return woundStringModes({ string, tension, count: 16 }).value.map(
    (partial, index) => 1200 * Math.log2(partial / ((index + 1) * frequency)),
  );
}
const shortcut = partialsInCents(0);
const bareLengths = [10, 20, 30, 40];
const byBare = bareLengths.map((bare) => ({ bare, cents: partialsInCents(bare) }));

export const woundStringModesTopic: Topic = {
  page: 'wound-string-modes',
  plots: {
    'what-the-ends-do': {
      title: `What bare ends add to each partial of ${noteName(key)}`,
      description:
        'Cents that bare ends of 10, 20, 30 and 40 mm add to partials 1 to 16 of a note of the invented grand, both tuned to the same first partial: nothing at the first partial, hardly anything for 10 mm, and a curve that rises to tens of cents and then bends for 40 mm.',
      x: { label: 'partial', domain: [1, 16], ticks: [1, 2, 4, 6, 8, 10, 12, 14, 16] },
      y: { label: 'cents over the string wound from end to end', domain: [0, 40] },
      series: byBare.map(({ bare, cents }) => ({
        label: `bare ends ${bare} mm`,
        points: cents.map((value, index) => [index + 1, value - shortcut[index]!] as const),
      })),
    },
  },
  tables: [
    {
      name: 'compared',
      header: ['partial', 'two other ways', 'ours', 'differs by'],
      rows: published.map(({ partial, expected }) => [
        String(partial),
        `${fixed(expected, 5)} Hz`,
        `${fixed(ours[partial - 1]!, 5)} Hz`,
        `${signed(1e9 * (ours[partial - 1]! / expected - 1), 0)}·10⁻⁹`,
      ]),
    },
    {
      name: 'ends by partial',
      header: [
        'partial',
        'wound from end to end (shortcut)',
        ...bareLengths.map((bare) => `bare ends ${bare} mm (ours)`),
      ],
      rows: [1, 2, 4, 8, 12, 16].map((partial) => [
        String(partial),
        `${signed(shortcut[partial - 1]!, 1)} cents`,
        ...byBare.map(({ cents }) => `${signed(cents[partial - 1]!, 1)} cents`),
      ]),
    },
  ],
};
