import type { LengthUnit } from '../figures/lengths.ts';
import { lengthCells, lengthColumns } from '../figures/lengths.ts';
import type { Cell, Table } from '../page-tree.ts';
import type { OrderLine } from './order-lines.ts';

/** Loop style, direction of winding and hitch pin, note by note; undefined until one of them is known. */
export function loopsTable(lines: readonly OrderLine[], unit: LengthUnit): Table | undefined {
  const isKnown = ({ winding, note }: OrderLine) =>
    winding !== undefined || note.figures['hitch-pin-diameter'] !== undefined;
  if (!lines.some(isKnown)) return undefined;
  const word = (text: string | undefined): Cell =>
    text === undefined || text === 'unknown' ? { blank: text ?? 'not said' } : text;
  return {
    is: 'table',
    title: 'Loops',
    width: 0.75,
    columns: [
      { heading: 'key', align: 'right', share: 20, tone: 'quiet' },
      { heading: 'note', align: 'left', share: 30 },
      { heading: 'loop style', align: 'left', share: 100 },
      { heading: 'winding runs (seen from the loop)', align: 'left', share: 140 },
      ...lengthColumns('hitch pin', unit, [50, 50]),
    ],
    rows: lines.map(({ note, winding }) => {
      const pin = note.figures['hitch-pin-diameter'];
      const pinCells: Cell[] =
        pin === undefined ? [{ blank: 'not read', across: 2 }] : lengthCells(pin.value, 'diameter', unit);
      return {
        cells: [String(note.key), note.note, word(winding?.loopStyle), word(winding?.twist), ...pinCells],
      };
    }),
  };
}
