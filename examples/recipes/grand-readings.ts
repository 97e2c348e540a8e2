/* The readings of the invented grand: inches, millimetres and thousandths side by side, in an order of their own. */

import { asInches, asSixteenths, type MessyTable, spelledNote, wireReader } from './messy-table.ts';
import type { TrueNote } from './recipe.ts';
import { seededChance } from './seeded-chance.ts';

export const SEED = 1926;

const mm = (length_m: number): number => length_m * 1000;

export function grandReadings(): MessyTable {
  const chance = seededChance(SEED);
  const readWire = wireReader(
    {
      pianoOffset_mm: -0.003,
      noteSpread_mm: 0.003,
      readingSpread_mm: 0.002,
      // The end of the tenor stood under a window.
      rusted: (key) => key >= 44 && key <= 50,
      rust_mm: 0.012,
    },
    chance,
  );
  const gaps = new Set([37, 59, 60, 72, 83]);
  const noWire = (note: TrueNote): boolean => note.winding === 'wound' || gaps.has(note.key);
  const overAll_mm = (note: TrueNote): number =>
    mm(note.wireDiameter_m + 2 * note.layers.reduce((sum, { wireDiameter_m }) => sum + wireDiameter_m, 0));
  const read_mm = (true_mm: number, spread_mm: number): number => chance.normal(true_mm, spread_mm);
  const whenWound = (note: TrueNote, missing: number, cell: () => string): string | undefined =>
    note.winding === 'plain' || chance.happens(missing) ? undefined : cell();

  const remarks: Readonly<Record<number, string>> = {
    3: 'winding loose, buzzes',
    19: "right string is a replacement, no maker's loop",
    44: 'rusty, cleaned before measuring',
    47: 'rusty "like a nail", not cleaned',
    61: 'one string missing, the other two measured',
    80: 'kink near the capo,\nmeasured beside it',
  };

  return {
    chance,
    delimiter: ',',
    titleRows: [],
    columns: [
      { header: 'Remarks', meaning: { is: 'remark' }, cell: (note) => remarks[note.key] },
      {
        header: 'Length (mm)',
        meaning: { is: 'reading', quantity: 'speaking-length', unit: 'mm' },
        cell: (note) =>
          note.key === 24 || note.key === 66 ? undefined : read_mm(mm(note.speakingLength_m), 0.4).toFixed(0),
      },
      { header: 'Note', meaning: { is: 'note' }, cell: (note) => spelledNote(note, chance) },
      {
        header: 'Wire A (inch)',
        meaning: { is: 'reading', quantity: 'wire-diameter', unit: 'in' },
        cell: (note) => (noWire(note) ? undefined : asInches(readWire(note, mm(note.wireDiameter_m)))),
      },
      { header: 'Strings', meaning: { is: 'strings' }, cell: (note) => `${note.strings}` },
      {
        header: 'Wire B (thou)',
        meaning: { is: 'reading', quantity: 'wire-diameter', unit: 'mil' },
        cell: (note) =>
          noWire(note) || chance.happens(0.15)
            ? undefined
            : ((readWire(note, mm(note.wireDiameter_m)) / 25.4) * 1000).toFixed(1),
      },
      {
        header: 'Over winding (mm)',
        meaning: { is: 'reading', quantity: 'over-all-diameter', unit: 'mm' },
        cell: (note) =>
          whenWound(note, note.key === 14 ? 1 : 0, () => read_mm(overAll_mm(note), 0.015).toFixed(2)),
      },
      {
        header: 'Wire C (mm)',
        meaning: { is: 'reading', quantity: 'wire-diameter', unit: 'mm' },
        cell: (note) =>
          noWire(note) || chance.happens(0.45)
            ? undefined
            : readWire(note, mm(note.wireDiameter_m)).toFixed(2),
      },
      {
        header: 'Old tag',
        meaning: { is: 'left out' },
        cell: (note) => (chance.happens(0.2) ? `T${note.key}` : ''),
      },
      {
        header: 'Core (inch)',
        meaning: { is: 'reading', quantity: 'core-diameter', unit: 'in' },
        cell: (note) => whenWound(note, 0, () => asInches(readWire(note, mm(note.wireDiameter_m)))),
      },
      {
        header: 'Over 1st layer (inch)',
        meaning: { is: 'reading', quantity: 'inner-layer-diameter', unit: 'in' },
        cell: (note) =>
          note.layers.length < 2
            ? undefined
            : asInches(read_mm(mm(note.wireDiameter_m + 2 * note.layers[0]!.wireDiameter_m), 0.02), 3),
      },
      { header: 'Layers', meaning: { is: 'layers' }, cell: (note) => `${note.layers.length}` },
      { header: 'Wound?', meaning: { is: 'winding' }, cell: (note) => note.winding },
      {
        header: 'Bare, agraffe end (mm)',
        meaning: { is: 'reading', quantity: 'bare-front', unit: 'mm' },
        cell: (note) =>
          whenWound(note, note.key === 20 ? 1 : 0, () => read_mm(mm(note.bareFront_m), 0.5).toFixed(0)),
      },
      {
        header: 'Bare, bridge end (inch)',
        meaning: { is: 'reading', quantity: 'bare-back', unit: 'in' },
        cell: (note) =>
          whenWound(note, note.key === 20 ? 1 : 0, () => asInches(read_mm(mm(note.bareBack_m), 0.5), 2)),
      },
      {
        header: 'Loop to winding (mm)',
        meaning: { is: 'reading', quantity: 'loop-to-winding', unit: 'mm' },
        cell: (note) =>
          whenWound(note, 0.1, () => read_mm(mm(note.backLength_m + note.bareBack_m), 0.7).toFixed(0)),
      },
      {
        header: 'Winding (mm)',
        meaning: { is: 'reading', quantity: 'winding-length', unit: 'mm' },
        cell: (note) =>
          whenWound(note, 0.1, () =>
            read_mm(mm(note.speakingLength_m - note.bareFront_m - note.bareBack_m), 0.8).toFixed(0),
          ),
      },
      {
        header: 'Section',
        meaning: { is: 'section' },
        cell: (note) => (chance.happens(0.1) ? '' : note.section),
      },
      {
        header: 'Bridge',
        meaning: { is: 'bridge' },
        cell: (note) => (chance.happens(0.1) ? '' : note.bridge),
      },
      {
        header: 'Front end',
        meaning: { is: 'front termination' },
        cell: (note) => (chance.happens(0.1) ? '' : note.section.includes('treble') ? 'capo' : 'agraffe'),
      },
      {
        header: 'Length by tape (inch)',
        meaning: { is: 'reading', quantity: 'speaking-length', unit: 'in' },
        cell: (note) =>
          note.key % 4 === 0 && note.key !== 24
            ? asSixteenths(read_mm(mm(note.speakingLength_m), 0.5))
            : undefined,
      },
      {
        header: 'Front (mm)',
        meaning: { is: 'reading', quantity: 'front-length', unit: 'mm' },
        cell: (note) => (note.key % 3 === 0 ? read_mm(mm(note.frontLength_m), 1).toFixed(0) : undefined),
      },
      {
        header: 'Back (mm)',
        meaning: { is: 'reading', quantity: 'back-length', unit: 'mm' },
        cell: (note) => (note.key % 3 === 0 ? read_mm(mm(note.backLength_m), 1).toFixed(0) : undefined),
      },
      {
        header: 'Pin (inch)',
        meaning: { is: 'reading', quantity: 'pin-diameter', unit: 'in' },
        cell: (note) =>
          note.key % 8 === 0 ? asInches(read_mm(mm(note.pinDiameter_m), 0.008), 3) : undefined,
      },
    ],
    // Measured from the break upwards, the bass last.
    order: [...range(27, 88), ...range(1, 26)],
    wrongCells: [
      {
        key: 46,
        header: 'Length (mm)',
        written: (note) => (mm(note.speakingLength_m) / 10).toFixed(1),
        meant: (note) => mm(note.speakingLength_m).toFixed(0),
        what: 'a decimal point too many',
      },
      {
        key: 57,
        header: 'Wire A (inch)',
        written: (note) => mm(note.wireDiameter_m).toFixed(2),
        meant: (note) => asInches(mm(note.wireDiameter_m)),
        what: 'millimetres in a column of inches',
      },
    ],
  };
}

const range = (first: number, last: number): number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);
