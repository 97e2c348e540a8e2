import type { Language } from '@becket/core';
import type { PinFigures } from '../appraisal-report/appraisal-figures.ts';
import { type LengthUnit, lengthCells, lengthColumns } from '../figures/lengths.ts';
import { torqueCells, torqueColumns } from '../figures/torques.ts';
import type { Block } from '../page-tree.ts';

/** Pin sizes as found with the step the rule gives each, and the test pins. */
export function pinBlocks(pins: PinFigures | undefined, unit: LengthUnit, language: Language): Block[] {
  const heading: Block = { is: 'heading', level: 2, text: 'Pin sizes' };
  if (pins === undefined || (pins.groups.length === 0 && pins.testPins.length === 0))
    return [heading, { is: 'paragraph', text: 'No pin was measured yet.' }];
  return [
    heading,
    ...(pins.groups.length === 0
      ? []
      : [
          {
            is: 'table',
            title: 'Sizes as found',
            remarks: [
              `Step by the rule of the shop (${pins.policy.source}), applied to grip; core/pins/pin-size-rule.`,
            ],
            columns: [
              { heading: 'size', align: 'left', share: 34 },
              { heading: 'measured', align: 'right', share: 46 },
              ...lengthColumns('median', unit),
              ...lengthColumns('smallest', unit),
              ...lengthColumns('largest', unit),
              { heading: 'what the rule says', align: 'left', share: 330 },
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
      ? [{ is: 'paragraph', text: 'No test pin was driven yet.' } as const]
      : [
          {
            is: 'table',
            width: 0.75,
            title: 'Test pins',
            columns: [
              { heading: 'place', align: 'left', share: 110 },
              ...lengthColumns('diameter', unit),
              ...torqueColumns('torque, no string', unit),
              { heading: 'feel', align: 'left', share: 70 },
              { heading: 'remark', align: 'left', share: 160 },
            ],
            rows: pins.testPins.map(({ name, diameter, torque, feel, note, leftOutBecause }) => ({
              cells: [
                name,
                ...lengthCells(diameter, 'diameter', unit, language),
                ...torqueCells(torque, unit, language),
                feel ?? { absent: 'not said' },
                [note, leftOutBecause].filter((text) => text !== undefined).join(' '),
              ],
            })),
          } as const,
        ]),
    { is: 'paragraph', text: pins.lawSentence },
  ];
}
