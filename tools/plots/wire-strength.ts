import {
  A228_MAXIMUM,
  A228_MINIMUM,
  diametersOfSize,
  EN_10270_SH_MINIMUM,
  EN_10270_SM_MINIMUM,
  inInches,
  inMegapascals,
  inMillimetres,
  METRIC_WIRE_SIZES,
  millimetres,
  SHIGLEY_A228_LAW,
  US_WIRE_SIZES,
  type WireStrengthTable,
} from '@becket/core';
import { fixed, percent, steps, type Topic } from './topic.ts';

const strength = (table: WireStrengthTable, diameter_mm: number) =>
  inMegapascals(table.strengthAt(millimetres(diameter_mm)).strength);

const diameters = steps(0.72, 2, 65);
const curve = (table: WireStrengthTable, label = table.name) => ({
  label,
  points: diameters
    .filter((d) => table.strengthAt(millimetres(d)).isWithinRange)
    .map((d) => [d, strength(table, d)] as const),
});

const law = (diameter_mm: number) =>
  strength(SHIGLEY_A228_LAW, diameter_mm) / strength(A228_MINIMUM, diameter_mm) - 1;
const worst = steps(0.712, 2.03, 2000).reduce((a, b) => (Math.abs(law(b)) > Math.abs(law(a)) ? b : a));

const sizeNumbers = [12, 14, 18, 22];
const diameterOf = (lattice: typeof US_WIRE_SIZES, sizeNumber: number) =>
  diametersOfSize(lattice, sizeNumber)[0]!.diameter;

export const wireStrength: Topic = {
  page: 'wire-strength',
  plots: {
    'wire-strength': {
      title: 'Strength of wire by table',
      description:
        'Tensile strength against diameter by ASTM A228 minimum and maximum, a handbook law and two grades of EN 10270-1; all fall as the wire gets thicker, and they differ by up to a quarter.',
      x: { label: 'wire diameter [mm]', domain: [0.7, 2] },
      y: { label: 'tensile strength [MPa]', domain: [1700, 2600] },
      series: [
        curve(A228_MINIMUM),
        curve(A228_MAXIMUM),
        curve(SHIGLEY_A228_LAW, 'handbook law'),
        curve(EN_10270_SM_MINIMUM),
        curve(EN_10270_SH_MINIMUM),
      ],
    },
  },
  tables: [
    {
      name: 'law against table',
      header: ['diameter', 'handbook law (shortcut)', 'A228 minimum (ours)', 'the law differs by'],
      rows: [0.8, 0.9, 1, 1.1, 1.2, 1.4, worst]
        .sort((a, b) => a - b)
        .map((d) => [
          `${fixed(d, 3)} mm (${fixed(inInches(millimetres(d)), 4)} in)${d === worst ? ', the worst' : ''}`,
          `${fixed(strength(SHIGLEY_A228_LAW, d), 0)} MPa`,
          `${fixed(strength(A228_MINIMUM, d), 0)} MPa`,
          percent(law(d)),
        ]),
    },
    {
      name: 'two lattices',
      header: ['size number', 'US', 'metric', 'tension differs by (US over metric)'],
      rows: sizeNumbers.map((sizeNumber) => {
        const us = diameterOf(US_WIRE_SIZES, sizeNumber);
        const metric = diameterOf(METRIC_WIRE_SIZES, sizeNumber);
        return [
          String(sizeNumber),
          `${fixed(inMillimetres(us), 3)} mm`,
          `${fixed(inMillimetres(metric), 3)} mm`,
          percent((us / metric) ** 2 - 1),
        ];
      }),
    },
  ],
};
