import { METRIC_WIRE_SIZES, type Metres, nearestSize, type SizeLattice, US_WIRE_SIZES } from '@becket/core';
import type { AsFoundNote, Figure, ReadingQuantityName } from '@becket/journal';
import type { LengthUnit } from '../figures/lengths.ts';
import { lengthColumns } from '../figures/lengths.ts';
import { evidenceCells, lengthKindOf, quantityCells } from '../figures/readings.ts';
import type { Cell, Table, TableColumn } from '../page-tree.ts';

const keyColumn: TableColumn = { heading: 'key', align: 'right', share: 19, tone: 'quiet' };
const noteColumn: TableColumn = { heading: 'note', align: 'left', share: 26 };
const stringsColumn: TableColumn = { heading: 'str.', align: 'right', share: 20 };

const evidenceRemark =
  'n: readings behind the figure (s stamped, c copied, i inferred). u: standard uncertainty. spread: highest less lowest reading.';

/** The plain notes of a section: wire and speaking length, each with what it rests on. */
export function plainNotesTable(section: string, notes: readonly AsFoundNote[], unit: LengthUnit): Table {
  return {
    is: 'table',
    title: `Plain strings, ${section}`,
    columns: [
      keyColumn,
      noteColumn,
      stringsColumn,
      ...lengthColumns('wire diameter', unit),
      ...evidenceColumns('wire diameter', unit),
      nearestColumn('US'),
      nearestColumn('metric'),
      ...lengthColumns('speaking length', unit, [40, 34]),
      ...evidenceColumns('speaking length', unit),
    ],
    rows: notes.map((note) => ({
      cells: [
        ...nameCells(note),
        ...quantityCells(note, 'wire-diameter', unit),
        ...evidence(note, 'wire-diameter', unit),
        nearestText(US_WIRE_SIZES, note.figures['wire-diameter']),
        nearestText(METRIC_WIRE_SIZES, note.figures['wire-diameter']),
        ...quantityCells(note, 'speaking-length', unit),
        ...evidence(note, 'speaking-length', unit),
      ],
    })),
    remarks: [
      evidenceRemark,
      'Nearest size: the size number whose diameter lies nearest to the figure, in each way of numbering. It is not a finding of what the wire once was.',
    ],
  };
}

/** The wound notes of a section: core, windings, bare ends and speaking length. */
export function woundNotesTable(section: string, notes: readonly AsFoundNote[], unit: LengthUnit): Table {
  const hasInnerLayer = notes.some((note) => note.layers === 2);
  const inner = (columns: TableColumn[]) => (hasInnerLayer ? columns : []);
  return {
    is: 'table',
    title: `Wound strings, ${section}`,
    columns: [
      keyColumn,
      noteColumn,
      stringsColumn,
      { heading: 'layers', align: 'right', share: 32 },
      ...lengthColumns('core', unit),
      ...inner(lengthColumns('over inner layer', unit)),
      ...lengthColumns('over all', unit),
      ...lengthColumns('bare at front', unit, [30, 28]),
      ...lengthColumns('bare at bridge', unit, [30, 28]),
      ...lengthColumns('speaking length', unit, [40, 34]),
    ],
    rows: notes.map((note) => ({
      cells: [
        ...nameCells(note),
        String(note.layers),
        ...quantityCells(note, 'core-diameter', unit),
        ...(hasInnerLayer ? innerLayerCells(note, unit) : []),
        ...quantityCells(note, 'over-all-diameter', unit),
        ...quantityCells(note, 'bare-front', unit),
        ...quantityCells(note, 'bare-back', unit),
        ...quantityCells(note, 'speaking-length', unit),
      ],
    })),
  };
}

/** What the figures of the wound notes rest on; no table while there is no figure. */
export function woundEvidenceTables(
  section: string,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
): Table[] {
  const quantities: readonly [ReadingQuantityName, string][] = [
    ['core-diameter', 'core'],
    ['over-all-diameter', 'over all'],
    ['bare-front', 'bare at front'],
    ['bare-back', 'bare at bridge'],
    ['speaking-length', 'speaking length'],
  ];
  if (!notes.some(({ figures }) => quantities.some(([quantity]) => figures[quantity] !== undefined)))
    return [];
  const table: Table = {
    is: 'table',
    title: `Wound strings, ${section}: what these figures rest on`,
    columns: [noteColumn, ...quantities.flatMap(([, group]) => evidenceColumns(group, unit))],
    rows: notes.map((note) => ({
      cells: [note.note, ...quantities.flatMap(([quantity]) => evidence(note, quantity, unit))],
    })),
    remarks: [`${evidenceRemark} All in ${unit}.`],
  };
  return [table];
}

/** Notes of which nobody has said how they are strung. */
export function undescribedNotesTable(section: string, notes: readonly AsFoundNote[]): Table {
  return {
    is: 'table',
    title: `Not described, ${section}`,
    width: 0.5,
    columns: [keyColumn, noteColumn, { heading: 'strings, plain or wound', align: 'left', share: 150 }],
    rows: notes.map((note) => ({ cells: [String(note.key), note.note, { absent: 'not described' }] })),
  };
}

function nameCells(note: AsFoundNote): Cell[] {
  return [
    String(note.key),
    note.note,
    note.strings === undefined ? { blank: 'not said' } : String(note.strings),
  ];
}

function innerLayerCells(note: AsFoundNote, unit: LengthUnit): Cell[] {
  // With one layer there is no inner one; a reading that claims otherwise is still shown.
  if (note.layers !== 2 && note.figures['inner-layer-diameter'] === undefined)
    return [{ absent: 'does not apply', across: 2 }];
  return quantityCells(note, 'inner-layer-diameter', unit);
}

function evidenceColumns(group: string, unit: LengthUnit): TableColumn[] {
  return [
    { group, heading: 'n', align: 'right', share: 18, tone: 'quiet' },
    { group, heading: `u ${unit}`, align: 'right', share: 33, tone: 'quiet' },
    { group, heading: 'spread', align: 'right', share: 33, tone: 'quiet' },
  ];
}

const evidence = (note: AsFoundNote, quantity: ReadingQuantityName, unit: LengthUnit): Cell[] =>
  evidenceCells(note.figures[quantity], lengthKindOf(quantity), unit);

const nearestColumn = (heading: string): TableColumn => ({
  group: 'nearest size',
  heading,
  align: 'right',
  share: 31,
  page: 'core/tables/size-lattice',
});

function nearestText(lattice: SizeLattice, figure: Figure | undefined): Cell {
  if (figure === undefined) return '';
  const { sizes, isWithinLattice } = nearestSize(lattice, figure.value as Metres);
  return isWithinLattice ? sizes.map((size) => size.label).join(' or ') : { absent: 'beyond' };
}
