import {
  analyseScale,
  COMMON_UNCERTAINTIES,
  inMicrometres,
  inMillimetres,
  metres,
  type NoteAnalysis,
  type NoteFigureName,
  noteName,
} from '@becket/core';
import { compassAxis, inventedPiano } from './invented-piano.ts';
import { fixed, percent, type Topic } from './topic.ts';

const analysis = analyseScale(inventedPiano);
const relative = (note: NoteAnalysis, figure: NoteFigureName) =>
  note.standardUncertainties![figure] / note[figure];

const inputWords: Readonly<Record<string, string>> = {
  frequency: 'pitch',
  speakingLength: 'speaking length',
  wireDiameter: 'diameter of wire or core',
  steelDensity: 'density of steel',
  windingDensity: 'density of the winding',
  youngsModulus: "Young's modulus",
  strength: 'strength',
};
const wordsOf = (input: string) =>
  inputWords[input] ??
  input
    .replace(/^diameterOver(\d)$/, 'diameter over layer $1')
    .replace(
      /^bare(Front|Back)(\d)$/,
      (_, end: string, layer: string) => `bare ${end.toLowerCase()} of layer ${layer}`,
    );

/** The inputs that make up most of an uncertainty, largest first, each as a share of the figure. */
function largest(note: NoteAnalysis, figure: NoteFigureName): string {
  return Object.entries(note.contributions![figure])
    .map(([input, contribution]) => [input, Math.abs(contribution / note[figure])] as const)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 2)
    .map(([input, share]) => `${wordsOf(input)} ${fixed(100 * share, 1)} %`)
    .join(', ');
}

const figures: readonly (readonly [NoteFigureName, string])[] = [
  ['tension', 'tension'],
  ['breakShare', 'break share'],
  ['inharmonicity', 'B'],
];
const worstCase = (note: NoteAnalysis, figure: NoteFigureName) =>
  Object.values(note.contributions![figure]).reduce((sum, one) => sum + Math.abs(one), 0) / note[figure];

const asIfIndependent = Math.sqrt(
  analysis.notes.reduce(
    (sum, { standardUncertainties }) => sum + standardUncertainties!.unisonTension ** 2,
    0,
  ),
);
const total = analysis.totalUncertainty!;
const assumed = COMMON_UNCERTAINTIES;

export const uncertainty: Topic = {
  page: 'uncertainty',
  plots: {
    uncertainty: {
      title: 'Relative standard uncertainty over the compass',
      description:
        'Relative standard uncertainty of tension, break share and inharmonicity of one string of each note of an invented grand, with the assumed uncertainties of the readings: the least in the middle of the compass and the most at the top, where a millimetre of length counts; inharmonicity the largest of the three throughout.',
      x: compassAxis,
      y: { label: 'standard uncertainty [%]', domain: [0, 9] },
      series: figures.map(([figure, label]) => ({
        label,
        points: analysis.notes.map((note) => [note.key, 100 * relative(note, figure)] as const),
      })),
    },
  },
  tables: [
    {
      name: 'assumed',
      header: ['reading', 'standard uncertainty where none is stated'],
      rows: [
        ['diameter of a wire or core', `${fixed(inMicrometres(metres(assumed.wireDiameter_m)), 0)} µm`],
        ['diameter over a winding', `${fixed(inMicrometres(metres(assumed.diameterOver_m)), 0)} µm`],
        ['speaking length', `${fixed(inMillimetres(metres(assumed.speakingLength_m)), 1)} mm`],
        ['bare end', `${fixed(inMillimetres(metres(assumed.bareEnd_m)), 1)} mm`],
        ['pitch', `${fixed(assumed.frequency_cents, 1)} cents`],
        ['density of steel', `${fixed(100 * assumed.steelDensity, 1)} %`],
        ['density of the winding', `${fixed(100 * assumed.windingDensity, 1)} %`],
        ["Young's modulus", `${fixed(100 * assumed.youngsModulus, 1)} %`],
      ],
    },
    {
      name: 'one string',
      header: [
        'note',
        'figure',
        'u (ours)',
        'largest parts',
        'all parts added up (shortcut)',
        'shortcut over ours',
      ],
      rows: [13, 40, 76].flatMap((key) =>
        figures.map(([figure, label]) => {
          const note = analysis.notes[key - 1]!;
          return [
            noteName(key),
            label,
            `${fixed(100 * relative(note, figure), 1)} %`,
            largest(note, figure),
            `${fixed(100 * worstCase(note, figure), 1)} %`,
            percent(worstCase(note, figure) / relative(note, figure) - 1, 0),
          ];
        }),
      ),
    },
    {
      name: 'total load',
      header: [
        'total load',
        'every string by itself (shortcut)',
        'common errors kept common (ours)',
        'shortcut differs by',
      ],
      rows: [
        [
          `${fixed(analysis.total / 1000, 1)} kN, ${analysis.totalStrings} strings`,
          `u = ${fixed(asIfIndependent / 1000, 2)} kN`,
          `u = ${fixed(total / 1000, 2)} kN`,
          percent(asIfIndependent / total - 1, 0),
        ],
      ],
    },
  ],
};
