import {
  fitInharmonicityByLine,
  fitInharmonicityInCents,
  type Hertz,
  hertz,
  inharmonicity,
  metres,
  millimetres,
  newtonSquareMetres,
  noteName,
  partialFrequency,
  plainLinearDensity,
  STEEL_YOUNGS_MODULUS,
  type StringEnds,
  steppedStringModes,
  stringTension,
  type WoundString,
  woundStringModes,
  woundTensionAtPitch,
} from '@becket/core';
import { carryingWire, inventedNote, inventedWoundString } from './invented-piano.ts';
import { fixed, percent, scientific, signed, type Topic } from './topic.ts';

/** Partials of a wound string of the invented piano at pitch, with B by the core formula at the same tension. */
function partialsOf(key: number, string: WoundString) {
  const frequency = inventedNote(key).frequency;
  const tension = woundTensionAtPitch({ string, frequency, stiffness: 'ignored' }).value;
  const partials = woundStringModes({ string, tension, count: 16 }).value;
  const byCore = inharmonicity({
    diameter: string.coreDiameter,
    speakingLength: string.speakingLength,
    tension,
  });
  return { partials, byCore };
}

const centsOver = (frequency: number, harmonic: number) => 1200 * Math.log2(frequency / harmonic);
const shown = partialsOf(12, inventedWoundString(12, millimetres(40)));
const numbers = Array.from({ length: 16 }, (_, index) => index + 1);
/** Partials by the law of one B, through the sounding first partial, as cents over its multiples. */
const byLaw = (B: number) =>
  numbers.map((n) => {
    const at = (partial: number) => partialFrequency({ frequency: hertz(1), inharmonicity: B, partial });
    return [n, centsOver(at(n), n * at(1))] as const;
  });

/** Partials of a plain string of the invented piano with pinned or clamped ends, at the tension of its pitch. */
function plainPartials(key: number, ends: StringEnds): Hertz[] {
  const note = inventedNote(key);
  const diameter = carryingWire(key);
  const length = metres(note.string.speakingLength);
  const tension = stringTension({ diameter, speakingLength: length, frequency: note.frequency });
  const linearDensity = plainLinearDensity({ diameter });
  const flexuralRigidity = newtonSquareMetres((STEEL_YOUNGS_MODULUS * Math.PI * diameter ** 4) / 64);
  const string = { segments: [{ length, linearDensity, flexuralRigidity }], tension, ends };
  return steppedStringModes(string, 8).value;
}

export const inharmonicityFits: Topic = {
  page: 'inharmonicity-fits',
  plots: {
    'partials-of-a-wound-string': {
      title: `Partials of ${noteName(12)} of the invented grand, bare ends 40 mm`,
      description:
        'Cents of partials 1 to 16 over multiples of the first partial: the exact ones lie above the law with B of the core formula, and no single B goes through all of them: a fit over eight partials and one over sixteen part from each other.',
      x: { label: 'partial', domain: [1, 16], ticks: [1, 2, 4, 6, 8, 10, 12, 14, 16] },
      y: { label: 'cents over the multiple of partial 1', domain: [0, 80] },
      series: [
        {
          label: 'law with the core formula',
          points: byLaw(shown.byCore),
        },
        {
          label: 'law fitted over partials 1 to 8',
          points: byLaw(fitInharmonicityByLine(shown.partials, 8).inharmonicity),
        },
        {
          label: 'law fitted over partials 1 to 16',
          points: byLaw(fitInharmonicityByLine(shown.partials, 16).inharmonicity),
        },
        {
          label: 'exact modes',
          dots: true,
          points: shown.partials.map((frequency, index) => [
            index + 1,
            centsOver(frequency, (index + 1) * shown.partials[0]!),
          ]),
        },
      ],
    },
  },
  tables: [
    {
      name: 'fits',
      header: [
        'note, bare ends',
        'core formula (shortcut)',
        '8 partials, line (ours)',
        '16, line',
        '8, in cents',
        '16, in cents',
        'misfit, 8 and 16',
        'core formula differs by',
      ],
      rows: [1, 12, 26].flatMap((key) =>
        [0, 10, 20, 40].map((bare) => {
          const { partials, byCore } = partialsOf(key, inventedWoundString(key, millimetres(bare)));
          const line8 = fitInharmonicityByLine(partials, 8);
          const line16 = fitInharmonicityByLine(partials, 16);
          return [
            `${noteName(key)}, ${bare} mm`,
            scientific(byCore),
            scientific(line8.inharmonicity),
            scientific(line16.inharmonicity),
            scientific(fitInharmonicityInCents(partials, 8).inharmonicity),
            scientific(fitInharmonicityInCents(partials, 16).inharmonicity),
            `${fixed(line8.misfitCents, 2)} and ${fixed(line16.misfitCents, 2)} cents`,
            percent(byCore / line8.inharmonicity - 1, 0),
          ];
        }),
      ),
    },
    {
      name: 'ends',
      header: [
        'note',
        'partial 1, clamped over pinned',
        'partial 8, clamped over pinned',
        'B fitted, clamped over pinned',
      ],
      rows: [28, 40, 64, 88].map((key) => {
        const pinned = plainPartials(key, 'pinned');
        const clamped = plainPartials(key, 'clamped');
        const b = (partials: readonly Hertz[]) => fitInharmonicityByLine(partials, 8).inharmonicity;
        return [
          noteName(key),
          `${signed(centsOver(clamped[0]!, pinned[0]!), 1)} cents`,
          `${signed(centsOver(clamped[7]!, pinned[7]!), 1)} cents`,
          percent(b(clamped) / b(pinned) - 1, 1),
        ];
      }),
    },
  ],
};
