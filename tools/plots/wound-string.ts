import {
  fitInharmonicityByLine,
  fullLinearDensity,
  hertz,
  inharmonicity,
  inMillimetres,
  millimetres,
  noteName,
  speakingMass,
  type WoundString,
  woundStringModes,
  woundStringTension,
  woundTensionAtPitch,
} from '@becket/core';
import { inventedNote, inventedWoundString } from './invented-piano.ts';
import { fixed, percent, scientific, signed, steps, type Topic } from './topic.ts';

const keys = [1, 12, 26];
const frequency = (key: number) => hertz(inventedNote(key).frequency);
const uniform = (string: WoundString, key: number, density: number) =>
  4 * string.speakingLength ** 2 * frequency(key) ** 2 * density;
const byMean = (string: WoundString, key: number) =>
  uniform(string, key, speakingMass(string) / string.speakingLength);
const byFull = (string: WoundString, key: number) => uniform(string, key, fullLinearDensity(string));

const exact = (string: WoundString, key: number) =>
  woundTensionAtPitch({ string, frequency: frequency(key), stiffness: 'ignored' }).value;

/** B over partials 1 to 8 of the exact modes, and by the core formula, at one tension. */
function bothB(key: number, bare: number) {
  const string = inventedWoundString(key, millimetres(bare));
  const tension = exact(string, key);
  const { coreDiameter: diameter, speakingLength } = string;
  return {
    fitted: fitInharmonicityByLine(woundStringModes({ string, tension, count: 8 }).value).inharmonicity,
    byCore: inharmonicity({ diameter, speakingLength, tension }),
  };
}

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
          return [bare, 100 * (byMean(string, key) / exact(string, key) - 1)] as const;
        }),
      })),
    },
    'bare-ends-and-b': {
      title: 'What bare ends do to B: fitted over partials 1 to 8, over the core formula',
      description:
        'Ratio of fitted B to the core formula against the length of the bare end at either side, for A0, G#1 and A#2 of an invented grand: one without bare ends, then rising faster and faster, the most for the highest and shortest of the three.',
      x: { label: 'bare length at each end [mm]', domain: [0, 50] },
      y: { label: 'fitted B over the core formula', domain: [1, 7.5] },
      series: keys.map((key) => ({
        label: noteName(key),
        points: steps(0, 50, 26).map((bare) => {
          const { fitted, byCore } = bothB(key, bare);
          return [bare, fitted / byCore] as const;
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
        'first mode shape (closed form)',
        'exact (ours)',
        'mean differs by',
        'full differs by',
        'closed form differs by',
      ],
      rows: keys.flatMap((key) =>
        [10, 20, 40].map((bare) => {
          const string = inventedWoundString(key, millimetres(bare));
          const ours = exact(string, key);
          const closed = woundStringTension(string, frequency(key));
          return [
            `${noteName(key)}, ${bare} mm`,
            `${fixed(byMean(string, key), 1)} N`,
            `${fixed(byFull(string, key), 1)} N`,
            `${fixed(closed, 1)} N`,
            `${fixed(ours, 1)} N`,
            percent(byMean(string, key) / ours - 1),
            percent(byFull(string, key) / ours - 1, 3),
            `${signed(1e6 * (closed / ours - 1), 1)} millionths`,
          ];
        }),
      ),
    },
    {
      name: 'bare ends and B',
      header: [
        'note',
        'bare ends',
        'core formula (shortcut)',
        'fitted over partials 1 to 8 (ours)',
        'ours over the shortcut',
      ],
      rows: keys.flatMap((key) =>
        [10, 20, 50].map((bare) => {
          const { fitted, byCore } = bothB(key, bare);
          return [
            noteName(key),
            `${bare} mm`,
            scientific(byCore),
            scientific(fitted),
            `${fixed(fitted / byCore, 2)} times`,
          ];
        }),
      ),
    },
  ],
};
