import { METRIC_WIRE_SIZES, type Metres, nearestSize, type SizeLattice, US_WIRE_SIZES } from '@becket/core';
import { type AsFoundNote, type Figure, neededQuantities, type ReadingQuantityName } from '@becket/journal';
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

/** The quantities of a note that its table of notes prints; whatever else was read of it is listed elsewhere. */
export function quantitiesShown({ winding, layers }: AsFoundNote): ReadingQuantityName[] {
  return winding === undefined ? [] : neededQuantities(winding, layers);
}

/** The wound notes of a section: core, windings, bare ends and speaking length. */
export function woundNotesTable(section: string, notes: readonly AsFoundNote[], unit: LengthUnit): Table {
  const hasInnerLayer = notes.some((note) => note.layers === 2);
  const inner = (columns: TableColumn[]) => (hasInnerLayer ? columns : []);
  return {
    is: 'table',
    title: `Wound strings, ${section}`,
    remarks: ['Each figure rests on one measured reading, unless the next table says more.'],
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

/** What the figures of the wound notes rest on, of every note that has more than one measured reading for each. */
export function woundEvidenceTables(
  section: string,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
): Table[] {
  const all: readonly [ReadingQuantityName, string][] = [
    ['core-diameter', 'core'],
    ['inner-layer-diameter', 'over inner layer'],
    ['over-all-diameter', 'over all'],
    ['bare-front', 'bare at front'],
    ['bare-back', 'bare at bridge'],
    ['speaking-length', 'speaking length'],
  ];
  const quantities = all.filter(
    ([quantity]) => quantity !== 'inner-layer-diameter' || notes.some((note) => note.layers === 2),
  );
  const saysMore = ({ figures }: AsFoundNote): boolean =>
    quantities.some(([quantity]) => {
      const figure = figures[quantity];
      if (figure === undefined) return false;
      return (
        figure.readings.length > 1 || figure.origin !== 'measured' || figure.standardUncertainty !== undefined
      );
    });
  const told = notes.filter(saysMore);
  if (told.length === 0) return [];
  return [
    {
      is: 'table',
      title: `Wound strings, ${section}: what these figures rest on`,
      remarks: [
        `${evidenceRemark} All in ${unit === 'mm' ? 'millimetres' : 'inches'}. Notes with one measured reading for each figure are left out.`,
      ],
      columns: [noteColumn, ...quantities.flatMap(([, group]) => evidenceColumns(group, unit))],
      rows: told.map((note) => ({
        cells: [note.note, ...quantities.flatMap(([quantity]) => evidence(note, quantity, unit))],
      })),
    },
  ];
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
  return note.layers === 2
    ? quantityCells(note, 'inner-layer-diameter', unit)
    : [{ absent: 'does not apply', across: 2 }];
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
