import type { Language, LengthUnit } from '@becket/core';
import { type Job, type ReadingQuantityName, readingQuantities } from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { readingInWords } from '../figures/readings.ts';
import type { Block } from '../page-tree.ts';

const atTheVisit: readonly ReadingQuantityName[] = [
  'pitch-offset',
  'relative-humidity',
  'temperature',
  'soundboard-crown',
  'bearing-angle',
  'bearing-rise',
];

/** Pitch, air, crown and bearing as they were read. What was never read is named. */
export function visitReadings({ readings }: Job, unit: LengthUnit, language: Language): Block[] {
  const { say } = language;
  const own = readings.filter(({ stage, quantity }) => stage === 'as found' && atTheVisit.includes(quantity));
  const missing = atTheVisit.filter((quantity) => !own.some((one) => one.quantity === quantity));
  return [
    { is: 'heading', level: 2, text: say('Pitch, air, crown and bearing as found') },
    ...(own.length === 0
      ? []
      : [
          {
            is: 'table',
            width: 0.8,
            columns: [
              { heading: say('[what is read] quantity'), align: 'left', share: 120 },
              { heading: say('place'), align: 'left', share: 120 },
              { heading: say('reading'), align: 'left', share: 110 },
              { heading: say('instrument'), align: 'left', share: 120 },
              { heading: say('[of a reading] read'), align: 'left', share: 170, tone: 'quiet' },
            ],
            rows: atTheVisit.flatMap((quantity) =>
              own
                .filter((one) => one.quantity === quantity)
                .map((reading) => ({
                  cells: [
                    say(readingQuantities[quantity].label),
                    placeInWords(reading.place, language),
                    readingInWords(reading, unit, language),
                    reading.instrument ?? { absent: say('not said') },
                    `${language.moment(reading.at)}, ${reading.by}`,
                  ],
                })),
            ),
          } as const,
        ]),
    ...(missing.length === 0
      ? []
      : [
          {
            is: 'paragraph',
            tone: 'quiet',
            text: say('Not read: {quantities}.', {
              quantities: missing.map((quantity) => say(readingQuantities[quantity].label)).join(', '),
            }),
          } as const,
        ]),
  ];
}
