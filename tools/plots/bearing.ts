import {
  bearingForce,
  bearingForceFromRise,
  deflectionFromRise,
  degrees,
  inDegrees,
  millimetres,
  newtons,
} from '@becket/core';
import { fixed, percent, steps, type Topic } from './topic.ts';

const tension = newtons(700);
const resultant = (angle_deg: number) => 2 * tension * Math.sin(degrees(angle_deg) / 2);
const spans = { spanFront: millimetres(600), spanBack: millimetres(60) };
const smallAngle = (rise_mm: number, { spanFront, spanBack } = spans) =>
  tension * millimetres(rise_mm) * (1 / spanFront + 1 / spanBack);
const backOnly = (rise_mm: number) => (tension * millimetres(rise_mm)) / spans.spanBack;

export const bearing: Topic = {
  page: 'bearing',
  plots: {
    bearing: {
      title: 'Bearing force of one string of 700 N, by rise',
      description:
        'Force against the height of the bridge over the line between its neighbours, for back spans of 40, 60 and 100 mm and a front span of 600 mm: almost straight lines, the steeper the shorter the back span.',
      x: { label: 'rise of the bridge [mm]', domain: [0, 3] },
      y: { label: 'bearing force [N]', domain: [0, 60] },
      series: [40, 60, 100].map((back) => ({
        label: `back span ${back} mm`,
        points: steps(0, 3, 31).map(
          (rise) =>
            [
              rise,
              bearingForceFromRise({
                tension,
                rise: millimetres(rise),
                spanFront: spans.spanFront,
                spanBack: millimetres(back),
              }),
            ] as const,
        ),
      })),
    },
  },
  tables: [
    {
      name: 'angle',
      header: [
        'deflection',
        'T·θ (shortcut)',
        '2·T·sin(θ/2), the resultant',
        'T·sin θ (ours)',
        'T·θ differs by',
      ],
      rows: [0.5, 1, 1.5, 3, 10].map((angle) => {
        const ours = bearingForce({ tension, deflection: degrees(angle) });
        const shortcut = tension * degrees(angle);
        return [
          `${fixed(angle, 1)}°`,
          `${fixed(shortcut, 3)} N`,
          `${fixed(resultant(angle), 3)} N`,
          `${fixed(ours, 3)} N`,
          percent(shortcut / ours - 1, 3),
        ];
      }),
    },
    {
      name: 'rise',
      header: [
        'rise',
        'angle',
        'back span only (shortcut)',
        'small angles, both spans',
        'exact (ours)',
        'back span only differs by',
      ],
      rows: [0.5, 1, 2, 5].map((rise) => {
        const ours = bearingForceFromRise({ tension, rise: millimetres(rise), ...spans });
        return [
          `${fixed(rise, 1)} mm`,
          `${fixed(inDegrees(deflectionFromRise({ rise: millimetres(rise), ...spans })), 2)}°`,
          `${fixed(backOnly(rise), 2)} N`,
          `${fixed(smallAngle(rise), 2)} N`,
          `${fixed(ours, 2)} N`,
          percent(backOnly(rise) / ours - 1),
        ];
      }),
    },
  ],
};
