/* The readings of the invented vertical: a spreadsheet with decimal commas, a title above it and key numbers for notes. */
import { type MessyTable, spelledNote, wireReader, withDecimalComma } from './messy-table.ts';
import type { TrueNote } from './recipe.ts';
import { seededChance } from './seeded-chance.ts';

export const SEED = 1911;

const mm = (length_m: number): number => length_m * 1000;

export function verticalReadings(): MessyTable {
  const chance = seededChance(SEED);
  const readWire = wireReader(
    {
      pianoOffset_mm: -0.006,
      noteSpread_mm: 0.003,
      readingSpread_mm: 0.002,
      // Damp came in from below: the lowest plain strings are rusty.
      rusted: (key) => key >= 33 && key <= 38,
      rust_mm: 0.015,
    },
    chance,
  );
  const gaps = new Set([41, 52, 53, 78]);
  const noWire = (note: TrueNote): boolean => note.winding === 'wound' || gaps.has(note.key);
  const overAll_mm = (note: TrueNote): number =>
    mm(note.wireDiameter_m + 2 * note.layers.reduce((sum, { wireDiameter_m }) => sum + wireDiameter_m, 0));
  const read_mm = (true_mm: number, spread_mm: number): number => chance.normal(true_mm, spread_mm);
  const comma = (value: number, decimals: number): string => withDecimalComma(value.toFixed(decimals));
  const whenWound = (note: TrueNote, missing: number, cell: () => string): string | undefined =>
    note.winding === 'plain' || chance.happens(missing) ? undefined : cell();

  const remarks: Readonly<Record<number, string>> = {
    1: 'Größe steht nicht mehr auf dem Steg',
    12: 'left string replaced; wound with iron?',
    34: 'rusty',
    60: '15½ stamped beside the pins',
  };

  return {
    chance,
    delimiter: ';',
    titleRows: [['Vertical, readings before the strings come off'], []],
    columns: [
      {
        header: 'Key',
        meaning: { is: 'note' },
        cell: (note) => (chance.happens(0.75) ? `${note.key}` : spelledNote(note, chance)),
      },
      { header: 'Per note', meaning: { is: 'strings' }, cell: (note) => `${note.strings}` },
      {
        header: 'Ø wire 1 (mm)',
        meaning: { is: 'reading', quantity: 'wire-diameter', unit: 'mm' },
        cell: (note) => (noWire(note) ? undefined : comma(readWire(note, mm(note.wireDiameter_m)), 3)),
      },
      {
        header: 'Ø wire 2 (mm)',
        meaning: { is: 'reading', quantity: 'wire-diameter', unit: 'mm' },
        cell: (note) =>
          noWire(note) || chance.happens(0.2) ? undefined : comma(readWire(note, mm(note.wireDiameter_m)), 2),
      },
      {
        header: 'Ø wire, left string (in)',
        meaning: { is: 'reading', quantity: 'wire-diameter', unit: 'in', string: 1 },
        cell: (note) =>
          noWire(note) || chance.happens(0.5)
            ? undefined
            : comma(readWire(note, mm(note.wireDiameter_m)) / 25.4, 4),
      },
      { header: 'plain/wound', meaning: { is: 'winding' }, cell: (note) => note.winding },
      {
        header: 'Ø core (mm)',
        meaning: { is: 'reading', quantity: 'core-diameter', unit: 'mm' },
        cell: (note) => whenWound(note, 0, () => comma(readWire(note, mm(note.wireDiameter_m)), 2)),
      },
      {
        header: 'Ø first winding (mm)',
        meaning: { is: 'reading', quantity: 'inner-layer-diameter', unit: 'mm' },
        cell: (note) =>
          note.layers.length < 2
            ? undefined
            : comma(read_mm(mm(note.wireDiameter_m + 2 * note.layers[0]!.wireDiameter_m), 0.02), 2),
      },
      {
        header: 'Ø over all (mm)',
        meaning: { is: 'reading', quantity: 'over-all-diameter', unit: 'mm' },
        cell: (note) =>
          whenWound(note, note.key === 22 ? 1 : 0, () => comma(read_mm(overAll_mm(note), 0.015), 2)),
      },
      {
        header: 'Speaking length (m)',
        meaning: { is: 'reading', quantity: 'speaking-length', unit: 'm' },
        cell: (note) =>
          note.key === 48 || note.key === 70 ? undefined : comma(read_mm(note.speakingLength_m, 0.0004), 4),
      },
      {
        header: 'again (mm)',
        meaning: { is: 'reading', quantity: 'speaking-length', unit: 'mm' },
        cell: (note) =>
          note.key % 2 === 0 && note.key !== 48 && note.key !== 70
            ? comma(read_mm(mm(note.speakingLength_m), 0.5), 0)
            : undefined,
      },
      {
        header: 'Bare top (mm)',
        meaning: { is: 'reading', quantity: 'bare-front', unit: 'mm' },
        cell: (note) => whenWound(note, 0.08, () => comma(read_mm(mm(note.bareFront_m), 0.5), 1)),
      },
      {
        header: 'Bare bottom (mm)',
        meaning: { is: 'reading', quantity: 'bare-back', unit: 'mm' },
        cell: (note) => whenWound(note, 0.08, () => comma(read_mm(mm(note.bareBack_m), 0.5), 1)),
      },
      {
        header: 'Pin (mm)',
        meaning: { is: 'reading', quantity: 'pin-diameter', unit: 'mm' },
        cell: (note) => (note.key % 10 === 0 ? comma(read_mm(mm(note.pinDiameter_m), 0.01), 2) : undefined),
      },
      { header: 'Bemerkung', meaning: { is: 'remark' }, cell: (note) => remarks[note.key] },
    ],
    order: Array.from({ length: 85 }, (_, index) => index + 1),
    wrongCells: [
      {
        key: 40,
        header: 'Speaking length (m)',
        written: (note) => comma(note.speakingLength_m / 10, 4),
        meant: (note) => comma(note.speakingLength_m, 3),
        what: 'a nought too many behind the comma',
      },
      {
        key: 65,
        header: 'Ø wire 1 (mm)',
        written: (note) => comma(mm(note.wireDiameter_m) / 25.4, 3),
        meant: (note) => comma(mm(note.wireDiameter_m), 3),
        what: 'inches in a column of millimetres',
      },
    ],
  };
}
