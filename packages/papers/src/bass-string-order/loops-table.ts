import type { LengthUnit } from '../figures/lengths.ts';
import { lengthColumns } from '../figures/lengths.ts';
import type { Cell, Table } from '../page-tree.ts';
import type { OrderLine } from './order-lines.ts';
import { statedCells } from './order-table.ts';

/** Loop style, direction of winding, hitch pin and the core to the tuning pin, string by string; undefined until one of them is known. */
export function loopsTable(lines: readonly OrderLine[], unit: LengthUnit): Table | undefined {
  const isKnown = ({ string }: OrderLine) =>
    string.loopStyle !== 'unknown' ||
    string.twist !== 'unknown' ||
    string.stated['hitch-pin-diameter'].is === 'length';
  if (!lines.some(isKnown)) return undefined;
  const word = (text: string): Cell => (text === 'unknown' ? { blank: 'not said' } : text);
  return {
    is: 'table',
    title: 'Loops and ends',
    width: 0.9,
    columns: [
      { heading: 'note', align: 'left', share: 30 },
      { heading: 'side', align: 'left', share: 34 },
      { heading: 'loop style', align: 'left', share: 90 },
      { heading: 'winding runs (seen from the loop)', align: 'left', share: 110 },
      ...lengthColumns('hitch pin', unit, [48, 48]),
      ...lengthColumns('core beyond front', unit, [48, 48]),
    ],
    rows: lines.map(({ string }) => ({
      cells: [
        string.note,
        string.side,
        word(string.loopStyle),
        word(string.twist),
        ...statedCells(string, 'hitch-pin-diameter', unit),
        ...statedCells(string, 'core-beyond-front', unit),
      ],
    })),
  };
}
