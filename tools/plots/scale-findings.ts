import {
  A228_MAXIMUM,
  A228_MINIMUM,
  analyseScale,
  COMMON_SHOP_POLICY,
  EN_10270_SM_MINIMUM,
  noteName,
  type ShopLimit,
  scaleFindings,
  type WireStrengthTable,
} from '@becket/core';
import { compassAxis, inventedPiano } from './invented-piano.ts';
import { fixed, type Topic } from './topic.ts';

const analysis = analyseScale(inventedPiano);
const findings = scaleFindings(analysis);
const { limits } = COMMON_SHOP_POLICY;
const flat = (label: string, limit: ShopLimit) => ({
  label,
  points: [
    [1, 100 * limit.value],
    [88, 100 * limit.value],
  ] as const,
});
const limitValue = ({ value, unit }: ShopLimit) =>
  unit === '1'
    ? `${fixed(100 * value, 1)} %`
    : unit === 'N'
      ? `${fixed(value / 1000, 0)} kN`
      : `${value} ${unit}`;
const beyond = findings.filter(({ weight }) => weight === 'beyond a limit');
/** The same shortcut for every reader of a scale: one table, a bare figure, over or under. */
const highest = (strengthTable: WireStrengthTable) => {
  const { notes } = analyseScale(inventedPiano, { strengthTable, uncertainties: 'left out' });
  const worst = notes.reduce((most, note) => (note.breakShare > most.breakShare ? note : most));
  const over = notes.filter((note) => note.breakShare > limits.highestBreakShare.value).length;
  return [strengthTable.name, noteName(worst.key), `${fixed(100 * worst.breakShare, 1)} %`, String(over)];
};

export const scaleFindingsTopic: Topic = {
  page: 'scale-findings',
  plots: {
    'break-share': {
      title: 'Break share of the invented grand, by ASTM A228 minimum',
      description:
        'Break share over the compass of an invented grand: rising through the wound strings, falling by half at the lowest plain strings, and rising again to the top, where it passes the ceiling of the shop policy.',
      x: compassAxis,
      y: { label: 'break share [%]', domain: [20, 75] },
      series: [
        {
          label: 'break share, with ±2 u',
          points: analysis.notes.map(({ key, breakShare }) => [key, 100 * breakShare] as const),
          halfBand: analysis.notes.map(
            ({ standardUncertainties }) => 200 * standardUncertainties!.breakShare,
          ),
        },
        flat('ceiling', limits.highestBreakShare),
        flat('floor for plain strings', limits.lowestBreakSharePlain),
        flat('floor for wound strings', limits.lowestBreakShareWound),
      ],
    },
    'inharmonicity-of-a-scale': {
      title: 'B over the compass of the invented grand',
      description:
        'Inharmonicity on a logarithmic axis over the compass of an invented grand: level through the wound strings, a step at the lowest plain strings, then rising steadily to the top.',
      x: compassAxis,
      y: {
        label: 'B',
        domain: [0.00005, 0.03],
        kind: 'log',
        ticks: [0.0001, 0.0003, 0.001, 0.003, 0.01, 0.03],
      },
      series: [
        {
          label: 'exact modes for wound strings, core formula for plain ones',
          points: analysis.notes.map((note) => [note.key, note.inharmonicity] as const),
        },
      ],
    },
  },
  tables: [
    {
      name: 'limits',
      header: ['what is held against a limit', 'default', 'whose'],
      rows: Object.values(limits).map((limit) => [limit.means, limitValue(limit), limit.source]),
    },
    {
      name: 'findings',
      header: ['rule', 'sentence'],
      rows: beyond.map(({ rule, sentence }) => [rule, sentence]),
    },
    {
      name: 'clear or not',
      header: [
        'figures beyond a limit (shortcut: all of them count)',
        'clear of it by two standard uncertainties (ours)',
      ],
      rows: [[String(beyond.length), String(beyond.filter(({ isClear }) => isClear).length)]],
    },
    {
      name: 'one scale, three tables',
      header: ['table', 'highest at', 'break share', 'notes over the ceiling'],
      rows: [A228_MINIMUM, A228_MAXIMUM, EN_10270_SM_MINIMUM].map(highest),
    },
  ],
};
