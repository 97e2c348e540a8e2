import {
  A228_MINIMUM,
  type BreakBeats,
  bestWholeScale,
  breakBeats,
  COMMON_RESCALE_RULES,
  COMMON_RESCALE_WEIGHTS,
  COMMON_SHOP_POLICY,
  COMMON_WINDING_WIRES,
  type FrontAnswer,
  hertz,
  latticeDiameters,
  METRIC_WIRE_SIZES,
  noteName,
  prepareScale,
  rescaleNotes,
  type ScaleFront,
  scaleObjective,
  scaleSensitivity,
  type WholeScaleProblem,
  wholeScaleFront,
  withLimit,
} from '@becket/core';
import { compassAxis, inventedPiano } from './invented-piano.ts';
import { fixed, percent, signed, type Topic } from './topic.ts';

const sizes = latticeDiameters(METRIC_WIRE_SIZES);
const { limits } = withLimit(
  withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', 0.7, 'this page'),
  'lowestBreakSharePlain',
  0.25,
  'this page',
);
const problem: WholeScaleProblem = {
  notes: rescaleNotes(inventedPiano, { limits, tensionDown: 0.13, tensionUp: 0.15, breakMayMove: 3 }),
  catalogue: { plain: sizes, cores: sizes, windings: COMMON_WINDING_WIRES },
  strengthTable: A228_MINIMUM,
  weights: COMMON_RESCALE_WEIGHTS,
  rules: COMMON_RESCALE_RULES,
};
const prepared = prepareScale(problem);
const front = wholeScaleFront(prepared);
if (!front.feasible) throw new Error(front.clash.reason);
const { answers }: ScaleFront = front;
const found = scaleObjective(
  problem,
  problem.notes.map(({ asFound }) => asFound.string),
);
const byPlace = (place: number): FrontAnswer =>
  answers.reduce((best, answer) =>
    Math.abs(answer.place - place) < Math.abs(best.place - place) ? answer : best,
  );
const [near, middle, smooth] = [byPlace(0.05), byPlace(0.5), byPlace(1)];
const keys = problem.notes.map(({ asFound }) => asFound.key);
const breakKey = problem.notes.find(({ asFound }) => asFound.string.kind === 'plain')!.asFound.key;

/** What was found, by pinning every string to what it is. */
const asFound = bestWholeScale({
  ...problem,
  notes: problem.notes.map((note) => ({
    ...note,
    pinned: note.asFound.string,
    lowestBreakShare: 0,
    highestBreakShare: 1,
  })),
  rules: {
    ...problem.rules,
    minimumRunPlain: 1,
    minimumRunCore: 1,
    plainNeverGrows: false,
    coresNeverGrow: false,
    largestOverCore: 9,
  },
});
if (!asFound.feasible) throw new Error(asFound.clash.reason);

const roughnessOf = ({ parts }: typeof found): number =>
  problem.weights.tensionBend * parts.tensionBend +
  problem.weights.inharmonicityBend * parts.inharmonicityBend;

const inharmonicities = (notes: typeof asFound.notes) =>
  notes.map(({ key, inharmonicity }) => ({ key, inharmonicity }));
const beats: BreakBeats = breakBeats({
  before: inharmonicities(asFound.notes),
  after: inharmonicities(middle.answer.notes),
  breakKey,
  tuning: { referencePitch: hertz(440) },
});

const sensitivity = scaleSensitivity(
  problem.notes.map(({ asFound: note }, index) => ({ ...note, string: middle.answer.notes[index]!.string })),
);

const curve = (
  label: string,
  notes: typeof asFound.notes,
  value: (note: (typeof notes)[number]) => number,
) => ({
  label,
  points: notes.map((note) => [note.key, value(note)] as const),
});

export const rescaling: Topic = {
  page: 'rescaling',
  plots: {
    'rescaled-tension': {
      title: 'String tension of the invented grand, as found and chosen anew',
      description:
        'Tension of one string over the compass: as found it steps from size to size and falls in one jump at the break; in the answers the wound strings come down to the plain ones along a curve, and the middle answer keeps to what was found elsewhere but for the top.',
      x: compassAxis,
      y: { label: 'tension of one string [N]', domain: [400, 1300] },
      series: [
        curve('as found', asFound.notes, ({ tension }) => tension),
        curve('in the middle', middle.answer.notes, ({ tension }) => tension),
        curve('as smooth as it goes', smooth.answer.notes, ({ tension }) => tension),
      ],
    },
    'rescaled-inharmonicity': {
      title: 'B of the invented grand, as found and chosen anew',
      description:
        'Inharmonicity on a logarithmic axis over the compass: the step at the break that was found is gone in the answers, whose wound strings rise to meet the plain ones; the treble hardly changes.',
      x: compassAxis,
      y: {
        label: 'B',
        domain: [0.00005, 0.03],
        kind: 'log',
        ticks: [0.0001, 0.0003, 0.001, 0.003, 0.01, 0.03],
      },
      series: [
        curve('as found', asFound.notes, ({ inharmonicity }) => inharmonicity),
        curve('in the middle', middle.answer.notes, ({ inharmonicity }) => inharmonicity),
        curve('as smooth as it goes', smooth.answer.notes, ({ inharmonicity }) => inharmonicity),
      ],
    },
    'rescaling-front': {
      title: 'The answers: how rough against how many notes are changed',
      description:
        'Each answer as a dot: what is tidied alone is rougher than what was found; then roughness falls steeply up to some 35 changed notes, and no further.',
      x: { label: 'changed notes', domain: [0, 90] },
      y: {
        label: 'roughness, as a share of what was found [%]',
        domain: [0, 130],
      },
      series: [
        {
          label: 'answers',
          dots: true,
          points: answers.map(
            ({ changes, roughness }) => [changes.length, (100 * roughness) / roughnessOf(found)] as const,
          ),
        },
        { label: 'as found', dots: true, points: [[0, 100]] },
      ],
    },
  },
  tables: [
    {
      name: 'front',
      header: [
        'place',
        'roughness',
        'changed notes',
        'size changes',
        'tied strings',
        'new wound strings',
        'load',
      ],
      rows: [
        [
          'as found',
          '100 %',
          '0',
          String(found.parts.sizeChanges),
          String(found.parts.tiedStrings),
          '0',
          `${fixed(asFound.loads[0]!.load / 1000, 1)} kN`,
        ],
        ...answers.map(({ place, roughness, answer, changes, newWoundStrings, loadChange }) => [
          fixed(place, 3),
          `${fixed((100 * roughness) / roughnessOf(found), 1)} %`,
          String(changes.length),
          String(answer.parts.sizeChanges),
          String(answer.parts.tiedStrings),
          String(newWoundStrings),
          `${signed(loadChange / 1000, 1)} kN`,
        ]),
      ],
    },
    {
      name: 'two-layer step',
      header: ['step of ln T', 'strings weighed', 'sum over that of step 0.005'],
      rows: twoLayerRows(),
    },
    {
      name: 'exactness',
      header: ['answer', 'largest error of T as weighed', 'largest error of B as weighed'],
      rows: [near, middle, smooth].map(({ place, answer: { proof } }) => [
        fixed(place, 3),
        proof.largestTensionError < 1e-9 ? 'below 10⁻⁹' : String(proof.largestTensionError),
        `${fixed(100 * proof.largestInharmonicityError, 2)} %`,
      ]),
    },
    {
      name: 'sensitivity',
      header: [
        'note',
        'T for +0.5 mm',
        'B for +0.5 mm',
        'T for +5 µm of wire',
        'B for +5 µm',
        'T for +5 µm of winding',
      ],
      rows: [5, 20, breakKey, 49, 88].map((key) => {
        const index = keys.indexOf(key);
        const { speakingLength, wireDiameter, windingDiameter } = sensitivity[index]!;
        const { tension } = middle.answer.notes[index]!;
        return [
          noteName(key),
          percent(speakingLength.more.tension / tension, 2),
          percent(speakingLength.more.inharmonicityShare, 2),
          percent(wireDiameter.more.tension / tension, 2),
          percent(wireDiameter.more.inharmonicityShare, 2),
          windingDiameter === undefined
            ? 'does not apply'
            : percent(windingDiameter.more.tension / tension, 2),
        ];
      }),
    },
    {
      name: 'beats at the break',
      header: ['interval', 'partials', 'largest step as found', 'largest step in the middle answer'],
      rows: beats.evenness.map(
        ({ interval, lowerPartial, upperPartial, largestStepBefore, largestStepAfter }) => [
          interval,
          `${lowerPartial}:${upperPartial}`,
          `${fixed(largestStepBefore, 2)} Hz`,
          `${fixed(largestStepAfter, 2)} Hz`,
        ],
      ),
    },
  ],
};

function twoLayerRows(): string[][] {
  const rows = [0.04, 0.02, 0.01, 0.005].map((twoLayerStep) => {
    const answer = bestWholeScale({ ...problem, rules: { ...problem.rules, twoLayerStep } });
    if (!answer.feasible) throw new Error(answer.clash.reason);
    return { twoLayerStep, candidates: answer.proof.candidates, objective: answer.objective };
  });
  const finest = rows[rows.length - 1]!.objective;
  return rows.map(({ twoLayerStep, candidates, objective }) => [
    String(twoLayerStep),
    String(candidates),
    percent(objective / finest - 1, 2),
  ]);
}
