import {
  analyseScale,
  beatRate,
  beatTable,
  equalTemperedFrequency,
  hertz,
  historicTemperaments,
  type NoteInharmonicity,
  noteName,
  type StretchOptions,
  stretchedTuning,
} from '@becket/core';
import { compassAxis, inventedPiano } from './invented-piano.ts';
import { fixed, signed, type Topic } from './topic.ts';

const options: StretchOptions = { referencePitch: hertz(440) };
/** u(B)/B of a string that was measured with a micrometer: four times 0.5 % of diameter, and the modulus. */
const relativeUncertainty = 0.05;
const notes: NoteInharmonicity[] = analyseScale(inventedPiano, { uncertainties: 'left out' }).notes.map(
  ({ key, inharmonicity }) => ({
    key,
    inharmonicity,
    standardUncertainty: relativeUncertainty * inharmonicity,
  }),
);
const usual = stretchedTuning(notes, { ...options, correlation: 1 });
const allTwoToOne = stretchedTuning(notes, {
  ...options,
  octaveRule: { name: '2:1', anchors: [{ lowerKey: 1, lowerPartial: 2 }], source: 'for comparison' },
});
const following = stretchedTuning(notes, { ...options, smoothness: 1e-3 });

const asPlanned = notes.map(({ key, inharmonicity }) => ({
  key,
  inharmonicity,
  firstPartial: usual.targets[key - 1]!.frequency,
}));
const asInBooks = notes.map(({ key }) => ({
  key,
  inharmonicity: 0,
  firstPartial: equalTemperedFrequency(key, hertz(440)),
}));
const thirds = (sounding: typeof asPlanned) =>
  beatTable(sounding).filter(
    ({ interval, lowerKey }) => interval === 'major third' && lowerKey >= 20 && lowerKey <= 52,
  );

const rateOf = (
  sounding: typeof asPlanned,
  lowerKey: number,
  semitones: number,
  [p, q]: readonly [number, number],
) =>
  beatRate({
    lower: sounding[lowerKey - 1]!,
    upper: sounding[lowerKey - 1 + semitones]!,
    lowerPartial: p,
    upperPartial: q,
  }).rate;
const named: readonly (readonly [string, number, number, readonly [number, number]])[] = [
  ['major third F3–A3, 5:4', 33, 4, [5, 4]],
  ['minor third F3–G#3, 6:5', 33, 3, [6, 5]],
  ['fourth F3–A#3, 4:3', 33, 5, [4, 3]],
  ['fifth F3–C4, 3:2', 33, 7, [3, 2]],
  ['fifth F3–C4, 6:4', 33, 7, [6, 4]],
  ['octave F3–F4, 4:2', 33, 12, [4, 2]],
  ['octave F3–F4, 2:1', 33, 12, [2, 1]],
  ['octave A1–A2, 6:3', 13, 12, [6, 3]],
  ['double octave A3–A5, 4:1', 37, 24, [4, 1]],
];

export const temperamentStretchBeats: Topic = {
  page: 'temperament-stretch-beats',
  plots: {
    stretch: {
      title: 'Stretch of an invented grand: first partials against equal temperament',
      description:
        'Stretch in cents over the compass by the usual octave rule, by 2:1 octaves throughout, and following every jump of inharmonicity. All run close together above A4; in the bass 2:1 octaves hardly stretch.',
      x: compassAxis,
      y: { label: 'stretch [cents]', domain: [-20, 40] },
      series: [
        {
          label: 'usual rule, λ = 10, with ±2 u',
          points: usual.targets.map(({ key, stretch }) => [key, stretch] as const),
          halfBand: usual.targets.map(({ standardUncertainty }) => 2 * standardUncertainty!.stretch),
        },
        {
          label: '2:1 octaves throughout',
          points: allTwoToOne.targets.map(({ key, stretch }) => [key, stretch] as const),
        },
        {
          label: 'usual rule, λ = 0.001',
          points: following.targets.map(({ key, stretch }) => [key, stretch] as const),
        },
      ],
    },
    beats: {
      title: 'Beat rates of major thirds',
      description:
        'Beats a second of the major thirds from E2 to C5: a smooth curve without inharmonicity; on an invented grand at its targets they beat more slowly for the most part, and step at the change from wound to plain strings and where the wire size changes.',
      x: { ...compassAxis, label: 'lower note', domain: [20, 52], ticks: [20, 25, 30, 37, 44, 49, 52] },
      y: { label: 'beats a second', domain: [0, 24] },
      series: [
        {
          label: 'equal temperament, no inharmonicity',
          points: thirds(asInBooks).map(({ lowerKey, rate }) => [lowerKey, rate] as const),
        },
        {
          label: 'invented grand at its targets',
          points: thirds(asPlanned).map(({ lowerKey, rate }) => [lowerKey, rate] as const),
        },
      ],
    },
  },
  tables: [
    {
      name: 'targets',
      header: [
        'note',
        'equal temperament (shortcut)',
        'target of the first partial (ours)',
        'differs by',
        'u of the target',
      ],
      rows: [1, 13, 25, 37, 49, 61, 73, 85, 88].map((key) => {
        const { frequency, stretch, standardUncertainty } = usual.targets[key - 1]!;
        return [
          noteName(key),
          `${fixed(equalTemperedFrequency(key, hertz(440)), 2)} Hz`,
          `${fixed(frequency, 2)} Hz`,
          `${signed(stretch, 1)} cents`,
          `${fixed(standardUncertainty!.stretch, 1)} cents`,
        ];
      }),
    },
    {
      name: 'octaves off their rule',
      header: ['λ', 'largest octave off its rule', 'largest bend from note to note'],
      rows: [0.001, 0.1, 10, 1000].map((smoothness) => {
        const { targets, octaves } = stretchedTuning(notes, { ...options, smoothness });
        const off = Math.max(...octaves.map(({ asked, given }) => Math.abs(asked - given)));
        const bend = Math.max(
          ...targets
            .slice(1, -1)
            .map(({ stretch }, k) => Math.abs(targets[k + 2]!.stretch - 2 * stretch + targets[k]!.stretch)),
        );
        return [
          `${smoothness}${smoothness === 10 ? ' (ours)' : ''}`,
          `${fixed(off, 2)} cents`,
          `${fixed(bend, 2)} cents`,
        ];
      }),
    },
    {
      name: 'beats',
      header: ['interval', 'without inharmonicity (shortcut)', 'invented grand at its targets (ours)'],
      rows: named.map(([label, lowerKey, semitones, pair]) => [
        label,
        `${signed(rateOf(asInBooks, lowerKey, semitones, pair), 2)}/s`,
        `${signed(rateOf(asPlanned, lowerKey, semitones, pair), 2)}/s`,
      ]),
    },
    {
      name: 'temperaments',
      header: ['temperament', ...['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B']],
      rows: historicTemperaments.map(({ name, offsets }) => [
        name,
        ...offsets.map((offset) => signed(offset - offsets[9]!, 1)),
      ]),
    },
  ],
};
