import type { Job, StatedAs } from '@becket/journal';
import type { Table } from '../page-tree.ts';

const statedWords: Record<StatedAs, string> = {
  limit: 'limit',
  'expanded, k = 2': 'expanded, k = 2',
  standard: 'standard uncertainty',
};

/** The instruments that readings name, with what each can tell; nothing while none is described. */
export function instrumentsTable({ instruments }: Job): Table[] {
  if (instruments.size === 0) return [];
  return [
    {
      is: 'table',
      title: 'Instruments',
      columns: [
        { heading: 'name', align: 'left', share: 120 },
        { heading: 'shows', align: 'left', share: 50 },
        { heading: 'smallest step', align: 'right', share: 70 },
        { heading: 'stated uncertainty', align: 'left', share: 130 },
        { heading: 'used for', align: 'left', share: 130 },
      ],
      rows: [...instruments.values()].map(({ instrument, unit, resolution, stated, usedFor }) => ({
        cells: [
          instrument,
          unit,
          String(resolution),
          stated === undefined ? 'not stated' : `${stated.value} ${unit}, ${statedWords[stated.as]}`,
          usedFor ?? '',
        ],
      })),
    },
  ];
}
