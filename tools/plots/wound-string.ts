import {
  fullLinearDensity,
  hertz,
  inMillimetres,
  millimetres,
  noteName,
  speakingMass,
  type WoundString,
  woundStringTension,
} from '@becket/core';
import { inventedNote, inventedWoundString } from './invented-piano.ts';
import { fixed, percent, steps, type Topic } from './topic.ts';

const keys = [1, 12, 26];
const frequency = (key: number) => hertz(inventedNote(key).frequency);
const uniform = (string: WoundString, key: number, density: number) =>
  4 * string.speakingLength ** 2 * frequency(key) ** 2 * density;
const byMean = (string: WoundString, key: number) =>
  uniform(string, key, speakingMass(string) / string.speakingLength);
const byFull = (string: WoundString, key: number) => uniform(string, key, fullLinearDensity(string));

export const woundString: Topic = {
  page: 'wound-string',
  plots: {
    'mean-density': {
      title: 'Error of the tension from the mean density',
      description:
        'Relative error of the tension against the length of the bare end at either side for A0, G#1 and A#2 of an invented grand: a nearly straight line downwards, the steeper the greater the share of the winding and the shorter the string.',
      x: { label: 'bare length at each end [mm]', domain: [0, 50] },
      y: { label: 'error of the tension [%]', domain: [-8, 0] },
      series: keys.map((key) => ({
        label: `${noteName(key)}, ${fixed(inMillimetres(inventedNote(key).string.speakingLength), 0)} mm`,
        points: steps(0, 50, 26).map((bare) => {
          const string = inventedWoundString(key, millimetres(bare));
          return [
            bare,
            100 * (byMean(string, key) / woundStringTension(string, frequency(key)) - 1),
          ] as const;
        }),
      })),
    },
  },
  tables: [
    {
      name: 'tension of a wound string',
      header: [
        'note, bare ends',
        'mean density (shortcut)',
        'full density (shortcut)',
        'first mode shape (ours)',
        'mean differs by',
        'full differs by',
      ],
      rows: keys.flatMap((key) =>
        [10, 20, 40].map((bare) => {
          const string = inventedWoundString(key, millimetres(bare));
          const ours = woundStringTension(string, frequency(key));
          return [
            `${noteName(key)}, ${bare} mm`,
            `${fixed(byMean(string, key), 0)} N`,
            `${fixed(byFull(string, key), 0)} N`,
            `${fixed(ours, 0)} N`,
            percent(byMean(string, key) / ours - 1),
            percent(byFull(string, key) / ours - 1, 2),
          ];
        }),
      ),
    },
  ],
};
