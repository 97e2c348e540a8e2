import { type Language, message } from '@becket/core';
import type { Job, StatedAs } from '@becket/journal';
import type { Table } from '../page-tree.ts';

const statedWords = {
  limit: message('{uncertainty} {unit}, limit'),
  'expanded, k = 2': message('{uncertainty} {unit}, expanded, k = 2'),
  standard: message('{uncertainty} {unit}, standard uncertainty'),
} as const satisfies Record<StatedAs, string>;

/** The instruments that readings name, with what each can tell; nothing while none is described. */
export function instrumentsTable({ instruments }: Job, { say, plain }: Language): Table[] {
  if (instruments.size === 0) return [];
  return [
    {
      is: 'table',
      title: say('Instruments'),
      columns: [
        { heading: say('name'), align: 'left', share: 120 },
        { heading: say('[of an instrument] shows'), align: 'left', share: 50 },
        { heading: say('smallest step'), align: 'right', share: 70 },
        { heading: say('stated uncertainty'), align: 'left', share: 130 },
        { heading: say('used for'), align: 'left', share: 130 },
      ],
      rows: [...instruments.values()].map(({ instrument, unit, resolution, stated, usedFor }) => ({
        cells: [
          instrument,
          unit,
          plain(resolution),
          stated === undefined
            ? say('not stated')
            : say(statedWords[stated.as], { uncertainty: plain(stated.value), unit }),
          usedFor ?? '',
        ],
      })),
    },
  ];
}
