import { english } from '@becket/core';
import { type AsFoundNote, lengthKindOf, type ReadingQuantityName, readingQuantities } from '@becket/journal';
import { lengthText } from '../figures/lengths.ts';
import { spreadOf } from '../figures/readings.ts';
import type { MachineCell, MachineTable } from '../page-tree.ts';

const columns = [
  'key',
  'note',
  'section',
  'strings',
  'winding',
  'layers',
  'quantity',
  'state',
  'value_mm',
  'value_in',
  'standard_uncertainty_mm',
  'spread_mm',
  'readings',
  'origin',
] as const;

/**
 * The record one line a figure: every length of every note that was read, answered or is needed.
 *
 * `state` is 'read', 'unknown', 'none', 'does not apply' or 'not read'; a value stands only beside 'read'.
 */
export function recordForMachines(notes: readonly AsFoundNote[]): MachineTable {
  return { columns, rows: notes.flatMap(linesOf) };
}

function linesOf(note: AsFoundNote): MachineCell[][] {
  const name = [
    String(note.key),
    note.note,
    note.section?.section,
    note.strings === undefined ? undefined : String(note.strings),
    note.winding,
    note.winding === undefined ? undefined : String(note.layers),
  ];
  const lines: MachineCell[][] = [];
  for (const quantity of Object.keys(readingQuantities) as ReadingQuantityName[]) {
    if (readingQuantities[quantity].dimension !== 'length') continue;
    const figure = note.figures[quantity];
    if (figure !== undefined) {
      const spread = spreadOf(figure);
      const kind = lengthKindOf(quantity);
      lines.push([
        ...name,
        quantity,
        'read',
        lengthText(figure.value, 'mm', kind, english),
        lengthText(figure.value, 'in', kind, english),
        figure.standardUncertainty === undefined ? undefined : (figure.standardUncertainty * 1000).toFixed(4),
        spread === undefined ? undefined : (spread * 1000).toFixed(4),
        String(figure.readings.length),
        figure.origin,
      ]);
    } else if (note.absences[quantity] !== undefined || note.needed.includes(quantity)) {
      lines.push([
        ...name,
        quantity,
        note.absences[quantity] ?? 'not read',
        ...Array<undefined>(6).fill(undefined),
      ]);
    }
  }
  if (note.winding === undefined)
    lines.push([...name, 'stringing', 'not read', ...Array<undefined>(6).fill(undefined)]);
  return lines;
}
