import type { Language, LengthUnit } from '@becket/core';
import type { BassString } from '@becket/journal';
import { lengthColumns } from '../figures/lengths.ts';
import type { Cell, Table } from '../page-tree.ts';
import { hasInnerLayer, type OrderLine } from './order-lines.ts';
import { statedCells } from './order-table.ts';

/** Winding wire, loop style, direction of winding, hitch pin and the core to the tuning pin, string by string; undefined until one of them is known. */
export function loopsTable(
  lines: readonly OrderLine[],
  unit: LengthUnit,
  language: Language,
): Table | undefined {
  const { say } = language;
  const isKnown = ({ string }: OrderLine) =>
    string.loopStyle !== 'unknown' ||
    string.twist !== 'unknown' ||
    string.stated['hitch-pin-diameter'].is === 'length';
  if (!lines.some(isKnown)) return undefined;
  const hasInner = lines.some(({ string }) => hasInnerLayer(string));
  const word = (text: BassString['loopStyle'] | BassString['twist']): Cell =>
    text === 'unknown' ? { blank: say('not said') } : say(text);
  return {
    is: 'table',
    title: say('Windings, loops and ends'),
    columns: [
      { heading: say('[of the scale] note'), align: 'left', share: 30 },
      { heading: say('[of a string in its unison] side'), align: 'left', share: 34 },
      { heading: say('loop style'), align: 'left', share: 70 },
      { heading: say('winding runs, seen from the loop'), align: 'left', share: 70 },
      ...(hasInner ? lengthColumns(say('inner winding wire'), unit, [42, 42]) : []),
      ...lengthColumns(hasInner ? say('outer winding wire') : say('winding wire'), unit, [42, 42]),
      ...lengthColumns(say('hitch pin'), unit, [42, 42]),
      ...lengthColumns(say('core beyond front'), unit, [42, 42]),
    ],
    rows: lines.map(({ string }) => ({
      cells: [
        string.note,
        say(string.side),
        word(string.loopStyle),
        word(string.twist),
        ...(hasInner ? statedCells(string, 'inner-wire-diameter', unit, language) : []),
        ...statedCells(string, 'winding-wire-diameter', unit, language),
        ...statedCells(string, 'hitch-pin-diameter', unit, language),
        ...statedCells(string, 'core-beyond-front', unit, language),
      ],
    })),
  };
}
