import {
  type Language,
  type LengthUnit,
  METRIC_WIRE_SIZES,
  type Metres,
  message,
  nearestSize,
  type SizeLattice,
  US_WIRE_SIZES,
} from '@becket/core';
import {
  type AsFoundNote,
  type Figure,
  lengthKindOf,
  neededQuantities,
  type ReadingQuantityName,
} from '@becket/journal';
import { lengthColumns } from '../figures/lengths.ts';
import { evidenceCells, quantityCells } from '../figures/readings.ts';
import type { Cell, Table, TableColumn } from '../page-tree.ts';

const keyColumn = ({ say }: Language): TableColumn => ({
  heading: say('[key number, in a narrow column] key'),
  align: 'right',
  share: 19,
  tone: 'quiet',
});
const noteColumn = ({ say }: Language): TableColumn => ({
  heading: say('[of the scale] note'),
  align: 'left',
  share: 26,
});
const stringsColumn = ({ say }: Language): TableColumn => ({
  heading: say('[strings, short] str.'),
  align: 'right',
  share: 20,
});

const evidenceRemark = message(
  'n: readings behind the figure (s stamped, c copied, i inferred). u: standard uncertainty. spread: highest less lowest reading.',
);

/** The plain notes of a section: wire and speaking length, each with what it rests on. */
export function plainNotesTable(
  section: string,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
  language: Language,
): Table {
  const { say } = language;
  return {
    is: 'table',
    title: say('Plain strings, {section}', { section }),
    columns: [
      keyColumn(language),
      noteColumn(language),
      stringsColumn(language),
      ...lengthColumns(say('wire diameter'), unit),
      ...evidenceColumns(say('wire diameter'), unit, language),
      nearestColumn(say('[numbering] US'), language),
      nearestColumn(say('[numbering] metric'), language),
      ...lengthColumns(say('speaking length'), unit, [40, 34]),
      ...evidenceColumns(say('speaking length'), unit, language),
    ],
    rows: notes.map((note) => ({
      cells: [
        ...nameCells(note, language),
        ...quantityCells(note, 'wire-diameter', unit, language),
        ...evidence(note, 'wire-diameter', unit, language),
        nearestText(US_WIRE_SIZES, note.figures['wire-diameter'], language),
        nearestText(METRIC_WIRE_SIZES, note.figures['wire-diameter'], language),
        ...quantityCells(note, 'speaking-length', unit, language),
        ...evidence(note, 'speaking-length', unit, language),
      ],
    })),
    remarks: [
      say(evidenceRemark),
      say(
        'Nearest size: the size number whose diameter lies nearest to the figure, in each way of numbering. It is not a finding of what the wire once was.',
      ),
    ],
  };
}

/** The quantities of a note that its table of notes prints; whatever else was read of it is listed elsewhere. */
export function quantitiesShown({ winding, layers }: AsFoundNote): ReadingQuantityName[] {
  return winding === undefined ? [] : neededQuantities(winding, layers);
}

/** The wound notes of a section: core, windings, bare ends and speaking length. */
export function woundNotesTable(
  section: string,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
  language: Language,
): Table {
  const { say } = language;
  const hasInnerLayer = notes.some((note) => note.layers === 2);
  const inner = (columns: TableColumn[]) => (hasInnerLayer ? columns : []);
  return {
    is: 'table',
    title: say('Wound strings, {section}', { section }),
    remarks: [say('Each figure rests on one measured reading, unless the next table says more.')],
    columns: [
      keyColumn(language),
      noteColumn(language),
      stringsColumn(language),
      { heading: say('[layers of winding, in a narrow column] layers'), align: 'right', share: 32 },
      ...lengthColumns(say('core'), unit),
      ...inner(lengthColumns(say('over inner layer'), unit)),
      ...lengthColumns(say('over all'), unit),
      ...lengthColumns(say('bare at front'), unit, [30, 28]),
      ...lengthColumns(say('bare at bridge'), unit, [30, 28]),
      ...lengthColumns(say('speaking length'), unit, [40, 34]),
    ],
    rows: notes.map((note) => ({
      cells: [
        ...nameCells(note, language),
        String(note.layers),
        ...quantityCells(note, 'core-diameter', unit, language),
        ...(hasInnerLayer ? innerLayerCells(note, unit, language) : []),
        ...quantityCells(note, 'over-all-diameter', unit, language),
        ...quantityCells(note, 'bare-front', unit, language),
        ...quantityCells(note, 'bare-back', unit, language),
        ...quantityCells(note, 'speaking-length', unit, language),
      ],
    })),
  };
}

/** What the figures of the wound notes rest on, of every note that has more than one measured reading for each. */
export function woundEvidenceTables(
  section: string,
  notes: readonly AsFoundNote[],
  unit: LengthUnit,
  language: Language,
): Table[] {
  const { say } = language;
  const all: readonly [ReadingQuantityName, string][] = [
    ['core-diameter', say('core')],
    ['inner-layer-diameter', say('over inner layer')],
    ['over-all-diameter', say('over all')],
    ['bare-front', say('bare at front')],
    ['bare-back', say('bare at bridge')],
    ['speaking-length', say('speaking length')],
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
      title: say('Wound strings, {section}: what these figures rest on', { section }),
      remarks: [
        [
          say(evidenceRemark),
          unit === 'mm' ? say('All in millimetres.') : say('All in inches.'),
          say('Notes with one measured reading for each figure are left out.'),
        ].join(' '),
      ],
      columns: [
        noteColumn(language),
        ...quantities.flatMap(([, group]) => evidenceColumns(group, unit, language)),
      ],
      rows: told.map((note) => ({
        cells: [note.note, ...quantities.flatMap(([quantity]) => evidence(note, quantity, unit, language))],
      })),
    },
  ];
}

/** Notes of which nobody has said how they are strung. */
export function undescribedNotesTable(
  section: string,
  notes: readonly AsFoundNote[],
  language: Language,
): Table {
  const { say } = language;
  return {
    is: 'table',
    title: say('Not described, {section}', { section }),
    width: 0.5,
    columns: [
      keyColumn(language),
      noteColumn(language),
      { heading: say('strings, plain or wound'), align: 'left', share: 150 },
    ],
    rows: notes.map((note) => ({ cells: [String(note.key), note.note, { absent: say('not described') }] })),
  };
}

function nameCells(note: AsFoundNote, { say }: Language): Cell[] {
  return [
    String(note.key),
    note.note,
    note.strings === undefined ? { blank: say('not said') } : String(note.strings),
  ];
}

function innerLayerCells(note: AsFoundNote, unit: LengthUnit, language: Language): Cell[] {
  return note.layers === 2
    ? quantityCells(note, 'inner-layer-diameter', unit, language)
    : [{ absent: language.say('does not apply'), across: 2 }];
}

function evidenceColumns(group: string, unit: LengthUnit, { say }: Language): TableColumn[] {
  return [
    { group, heading: say('[number of readings] n'), align: 'right', share: 18, tone: 'quiet' },
    {
      group,
      heading: say('[standard uncertainty] u {unit}', { unit }),
      align: 'right',
      share: 33,
      tone: 'quiet',
    },
    { group, heading: say('spread'), align: 'right', share: 33, tone: 'quiet' },
  ];
}

const evidence = (
  note: AsFoundNote,
  quantity: ReadingQuantityName,
  unit: LengthUnit,
  language: Language,
): Cell[] => evidenceCells(note.figures[quantity], lengthKindOf(quantity), unit, language);

const nearestColumn = (heading: string, { say }: Language): TableColumn => ({
  group: say('nearest size'),
  heading,
  align: 'right',
  share: 31,
  page: 'core/tables/size-lattice',
});

function nearestText(lattice: SizeLattice, figure: Figure | undefined, { say, list }: Language): Cell {
  if (figure === undefined) return '';
  const { sizes, isWithinLattice } = nearestSize(lattice, figure.value as Metres);
  return isWithinLattice
    ? list(
        sizes.map((size) => size.label),
        'or',
      )
    : { absent: say('[of the size table] beyond') };
}
