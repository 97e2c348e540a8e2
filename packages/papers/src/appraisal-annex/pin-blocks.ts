import { type Language, type LengthUnit, sayKnown } from '@becket/core';
import type { PinFigures } from '../appraisal-report/appraisal-figures.ts';
import { lengthCells, lengthColumns } from '../figures/lengths.ts';
import { torqueCells, torqueColumns } from '../figures/torques.ts';
import type { Block } from '../page-tree.ts';

/** Pin sizes as found with the step the rule gives each, and the test pins. */
export function pinBlocks(pins: PinFigures | undefined, unit: LengthUnit, language: Language): Block[] {
  const { say } = language;
  const heading: Block = { is: 'heading', level: 2, text: say('Pin sizes') };
  if (pins === undefined || (pins.groups.length === 0 && pins.testPins.length === 0))
    return [heading, { is: 'paragraph', text: say('No pin was measured yet.') }];
  return [
    heading,
    ...(pins.groups.length === 0
      ? []
      : [
          {
            is: 'table',
            title: say('Sizes as found'),
            remarks: [
              say('Step by the rule of the shop ({source}), applied to grip; {page}.', {
                source: sayKnown(pins.policy.source, language),
                page: 'core/pins/pin-size-rule',
              }),
            ],
            columns: [
              { heading: say('[of a pin] size'), align: 'left', share: 34 },
              { heading: say('[pins] measured'), align: 'right', share: 46 },
              ...lengthColumns(say('median'), unit),
              ...lengthColumns(say('smallest'), unit),
              ...lengthColumns(say('largest'), unit),
              { heading: say('what the rule says'), align: 'left', share: 330 },
            ],
            rows: pins.groups.map(
              ({ asFound, pins: own, median, smallest, largest, advice, adviceRestsOn }) => ({
                cells: [
                  asFound,
                  String(own.length),
                  ...[median, smallest, largest].flatMap((length) =>
                    lengthCells(length, 'diameter', unit, language),
                  ),
                  advice === undefined ? { absent: adviceRestsOn } : `${advice.sentence} ${adviceRestsOn}`,
                ],
              }),
            ),
          } as const,
        ]),
    ...(pins.testPins.length === 0
      ? [{ is: 'paragraph', text: say('No test pin was driven yet.') } as const]
      : [
          {
            is: 'table',
            width: 0.75,
            title: say('Test pins'),
            columns: [
              { heading: say('place'), align: 'left', share: 110 },
              ...lengthColumns(say('diameter'), unit),
              ...torqueColumns(say('torque, no string'), unit),
              { heading: say('[of a pin] feel'), align: 'left', share: 70 },
              { heading: say('remark'), align: 'left', share: 160 },
            ],
            rows: pins.testPins.map(({ name, diameter, torque, feel, note, leftOutBecause }) => ({
              cells: [
                name,
                ...lengthCells(diameter, 'diameter', unit, language),
                ...torqueCells(torque, unit, language),
                feel === undefined ? { absent: say('not said') } : say(feel),
                [note, leftOutBecause].filter((text) => text !== undefined).join(' '),
              ],
            })),
          } as const,
        ]),
    { is: 'paragraph', text: pins.lawSentence },
  ];
}
