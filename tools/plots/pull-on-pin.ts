import {
  inches,
  inInchPounds,
  inNewtonMetres,
  millimetres,
  newtonMetres,
  newtons,
  pinGrip,
  pullOnPin,
} from '@becket/core';
import { fixed, percent, steps, type Topic } from './topic.ts';

const sizes = [
  ['1/0', inches(0.276)],
  ['2/0', inches(0.282)],
  ['4/0', inches(0.291)],
  ['6/0', inches(0.301)],
] as const;
const wires = [0.8, 0.95, 1.1, 1.4];
const typical = { tension: newtons(750), pinDiameter: inches(0.282), wireDiameter: millimetres(1) };
const torqueText = (value: number) =>
  `${fixed(value, 2)} N·m (${fixed(inInchPounds(newtonMetres(value)), 0)} in·lbf)`;

export const pullOnPinTopic: Topic = {
  page: 'pull-on-pin',
  plots: {
    'pull-on-pin': {
      title: 'Pull of a string on its pin, wire of 1 mm',
      description:
        'Torque against tension for pins 1/0, 2/0, 4/0 and 6/0: straight lines close together, about three newton metres at 750 newtons.',
      x: { label: 'tension [N]', domain: [400, 1400] },
      y: { label: 'pull on the pin [N·m]', domain: [0, 7] },
      series: sizes.map(([label, pinDiameter]) => ({
        label: `pin ${label}`,
        points: steps(400, 1400, 11).map(
          (tension) =>
            [
              tension,
              pullOnPin({ tension: newtons(tension), pinDiameter, wireDiameter: millimetres(1) }),
            ] as const,
        ),
      })),
    },
  },
  tables: [
    {
      name: 'arm',
      header: ['wire', 'pin radius only (shortcut)', 'pin and wire radius (ours)', 'differs by'],
      rows: wires.map((wire) => {
        const ours = pullOnPin({ ...typical, wireDiameter: millimetres(wire) });
        const shortcut = typical.tension * (typical.pinDiameter / 2);
        return [`${fixed(wire, 2)} mm`, torqueText(shortcut), torqueText(ours), percent(shortcut / ours - 1)];
      }),
    },
    {
      name: 'grip',
      header: [
        'one pin, one reading of 11 N·m',
        'taken for the grip (shortcut)',
        'grip (ours)',
        'differs by',
      ],
      rows: (['sharp', 'flat', 'slack'] as const).map((turning) => {
        const reading = newtonMetres(11);
        const grip = inNewtonMetres(pinGrip([{ torque: reading, turning }], typical).grip);
        const how = turning === 'slack' ? 'string slack' : `string on, turned ${turning}`;
        return [how, torqueText(reading), torqueText(grip), percent(reading / grip - 1, 0)];
      }),
    },
  ],
};
