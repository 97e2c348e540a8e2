import {
  analyseScale,
  CAST_IRON_EXPANSION_PER_KELVIN,
  elongation,
  fullLinearDensity,
  inMillimetres,
  longitudinalMode,
  metres,
  noteName,
  pitchPerKelvin,
  plainLinearDensity,
} from '@becket/core';
import { carryingWire, compassAxis, inventedNote, inventedPiano } from './invented-piano.ts';
import { fixed, percent, signed, type Topic } from './topic.ts';

const analysis = analyseScale(inventedPiano, { uncertainties: 'left out' });
const perKelvin = (key: number, endsExpansion?: number) => {
  const { tension } = analysis.notes[key - 1]!;
  return pitchPerKelvin({ tension, diameter: carryingWire(key), endsExpansion });
};
const stretchOf = (key: number, extra: number) => {
  const { tension } = analysis.notes[key - 1]!;
  const note = inventedNote(key);
  const length = metres(note.string.speakingLength + extra);
  return elongation({ tension, length, diameter: carryingWire(key) });
};
const longitudinal = (key: number) => {
  const { string } = inventedNote(key);
  const linearDensity =
    string.kind === 'plain' ? plainLinearDensity({ diameter: string.diameter }) : fullLinearDensity(string);
  const coreDiameter = carryingWire(key);
  const own = longitudinalMode({ speakingLength: string.speakingLength, coreDiameter, linearDensity });
  const bare = longitudinalMode({
    speakingLength: string.speakingLength,
    coreDiameter,
    linearDensity: plainLinearDensity({ diameter: coreDiameter }),
  });
  return { own, bare };
};
const frontAndBack = 0.2;

export const stringMechanics: Topic = {
  page: 'string-mechanics',
  plots: {
    'pitch-per-kelvin': {
      title: 'Pitch change for one kelvin of warming',
      description:
        'Cents per kelvin over the compass of an invented grand. When the string alone warms every note flattens, least at the upper end of the wound strings and most at the lowest plain strings; when plate and strings warm together the change is a tenth of that.',
      x: compassAxis,
      y: { label: 'cents per kelvin', domain: [-4.5, 0.5] },
      series: [
        {
          label: 'the string alone warms',
          points: inventedPiano.map(({ key }) => [key, perKelvin(key)] as const),
        },
        {
          label: 'plate and strings warm together',
          points: inventedPiano.map(
            ({ key }) => [key, perKelvin(key, CAST_IRON_EXPANSION_PER_KELVIN)] as const,
          ),
        },
      ],
    },
    impedance: {
      title: 'Impedance of one string over the compass',
      description:
        'Characteristic impedance of one string and of the whole unison over the compass of an invented grand: falling through the bass, a step down for one string from wound to plain and a step up for the unison where a second string begins, then slowly falling to the top.',
      x: compassAxis,
      y: { label: 'impedance [N·s/m]', domain: [1, 20], kind: 'log', ticks: [1, 2, 5, 10, 20] },
      series: [
        {
          label: 'one string',
          points: analysis.notes.map(({ key, impedance }) => [key, impedance] as const),
        },
        {
          label: 'the whole unison',
          points: analysis.notes.map(({ key, impedance, note }) => [key, impedance * note.strings] as const),
        },
      ],
    },
  },
  tables: [
    {
      name: 'elongation',
      header: [
        'note',
        'speaking length only (shortcut)',
        `with ${frontAndBack * 1000} mm of front and back length (ours)`,
        'differs by',
      ],
      rows: [20, 40, 60, 80].map((key) => [
        noteName(key),
        `${fixed(inMillimetres(stretchOf(key, 0)), 2)} mm`,
        `${fixed(inMillimetres(stretchOf(key, frontAndBack)), 2)} mm`,
        percent(stretchOf(key, frontAndBack) / stretchOf(key, 0) - 1, 0),
      ]),
    },
    {
      name: 'temperature',
      header: ['note', 'string alone, per kelvin', 'plate and strings together, per kelvin'],
      rows: [8, 26, 27, 40, 60, 88].map((key) => [
        noteName(key),
        `${signed(perKelvin(key), 2)} cents`,
        `${signed(perKelvin(key, CAST_IRON_EXPANSION_PER_KELVIN), 2)} cents`,
      ]),
    },
    {
      name: 'longitudinal',
      header: ['note', 'as if it were bare steel (shortcut)', 'winding counted (ours)', 'differs by'],
      rows: [1, 12, 26, 40].map((key) => {
        const { own, bare } = longitudinal(key);
        return [noteName(key), `${fixed(bare, 0)} Hz`, `${fixed(own, 0)} Hz`, percent(bare / own - 1, 0)];
      }),
    },
  ],
};
