import {
  hertz,
  inharmonicity,
  kilogramsPerCubicMetre,
  noteName,
  type PlainString,
  stringTension,
} from '@becket/core';
import { compassAxis, inventedPiano } from './invented-piano.ts';
import { fixed, percent, scientific, type Topic } from './topic.ts';

const notes = inventedPiano.flatMap((note) => {
  if (note.string.kind !== 'plain') return [];
  const string: PlainString = note.string;
  const { diameter, speakingLength } = string;
  const tension = stringTension({ diameter, speakingLength, frequency: note.frequency });
  const B = inharmonicity({ diameter, speakingLength, tension });
  // Read as a first mode, the sounding first partial f·√(1 + B) gives a tension that is too high.
  const firstPartial = hertz(note.frequency * Math.sqrt(1 + B));
  const tooHigh = stringTension({ diameter, speakingLength, frequency: firstPartial });
  return [{ key: note.key, tension, B, tooHigh }];
});
const one = (key: number) => notes.find((note) => note.key === key)!;
const density = (value: number) =>
  stringTension({
    diameter: (inventedPiano[48]!.string as PlainString).diameter,
    speakingLength: inventedPiano[48]!.string.speakingLength,
    frequency: hertz(440),
    density: kilogramsPerCubicMetre(value),
  });

export const plainString: Topic = {
  page: 'plain-string',
  plots: {
    'plain-string': {
      title: 'How much too high: tension from the first partial',
      description:
        'Relative error of the tension of the plain strings of an invented grand when the sounding first partial is taken for the first mode: it grows a hundredfold from the lowest plain string to the top.',
      x: { ...compassAxis, domain: [25, 88] as const, ticks: [25, 37, 49, 61, 73, 85] },
      y: {
        label: 'error of the tension [%]',
        domain: [0.01, 3],
        kind: 'log',
        ticks: [0.01, 0.03, 0.1, 0.3, 1, 3],
      },
      series: [
        {
          label: 'error, equal to B',
          points: notes.map(({ key, tension, tooHigh }) => [key, 100 * (tooHigh / tension - 1)] as const),
        },
      ],
    },
  },
  tables: [
    {
      name: 'first partial for first mode',
      header: [
        'note',
        'B',
        'tension from the first partial (shortcut)',
        'from the first mode (ours)',
        'differs by',
      ],
      rows: [28, 40, 52, 64, 76, 88].map((key) => {
        const { tension, tooHigh, B } = one(key);
        return [
          noteName(key),
          scientific(B),
          `${fixed(tooHigh, 1)} N`,
          `${fixed(tension, 1)} N`,
          percent(tooHigh / tension - 1, 2),
        ];
      }),
    },
    {
      name: 'density',
      header: ['density of the wire', 'tension of A4', 'differs by'],
      rows: [7800, 7833, 7850].map((value) => [
        `${value} kg/m³${value === 7850 ? ' (ours)' : ''}`,
        `${fixed(density(value), 1)} N`,
        percent(density(value) / density(7850) - 1, 2),
      ]),
    },
  ],
};
