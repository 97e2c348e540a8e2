import { english } from '@becket/core';
import { lengthText } from '../figures/lengths.ts';
import type { MachineTable } from '../page-tree.ts';
import type { StringingWire } from './stringing-figures.ts';

/** One row a wire, with the parts of its length. */
export function wiresForMachines(wires: readonly StringingWire[]): MachineTable {
  return {
    columns: [
      'wire',
      'section',
      'joined',
      'key_1',
      'string_1',
      'key_2',
      'string_2',
      'diameter_mm',
      'size',
      'cut_length_mm',
      ...parts.map((part) => `${part}_mm`),
      'remarks',
    ],
    rows: wires.map(({ joined, strings, diameter, size, cut, remarks }, index) => {
      const [one, two] = strings;
      return [
        String(index + 1),
        one?.section,
        joined,
        one === undefined ? undefined : String(one.key),
        one === undefined ? undefined : String(one.string),
        two === undefined ? undefined : String(two.key),
        two === undefined ? undefined : String(two.string),
        lengthText(diameter, 'mm', 'diameter', english),
        size === '' ? undefined : size,
        lengthText(cut.total, 'mm', 'length', english),
        ...parts.map((part) => lengthText(cut.parts[part], 'mm', 'length', english)),
        remarks.length === 0 ? undefined : remarks.join('; '),
      ];
    }),
  };
}

const parts = ['front', 'speaking', 'back', 'coils', 'beckets', 'hitch', 'tie', 'waste'] as const;
