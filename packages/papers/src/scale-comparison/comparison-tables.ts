import { type Language, type NoteAnalysis, noteName, type PlainString, type WoundString } from '@becket/core';
import type { ScaleComparison } from '@becket/journal';
import { notesInWords } from '../bass-string-order/to-be-confirmed.ts';
import { type LengthUnit, lengthText, otherUnit } from '../figures/lengths.ts';
import type { Cell, MachineTable, Table } from '../page-tree.ts';
import { kN } from './plain-words.ts';

/** Each note that gets another wire, with what it had. */
export function changeTable(
  { changed }: ScaleComparison,
  unit: LengthUnit,
  language: Language,
): Table | undefined {
  if (changed.length === 0) return undefined;
  return {
    is: 'table',
    title: 'Notes that get another size',
    remarks: [
      `Diameters in ${unit}. Before is what was read, after what is strung; N is of one string, % of the break load.`,
    ],
    columns: [
      { heading: 'note', align: 'left', share: 26 },
      { heading: 'strings', align: 'right', share: 32 },
      { group: 'wire', heading: 'before', align: 'left', share: 88, tone: 'quiet' },
      { group: 'wire', heading: 'after', align: 'left', share: 88 },
      { group: 'tension, N', heading: 'before', align: 'right', share: 28, tone: 'quiet' },
      {
        group: 'tension, N',
        heading: 'after',
        align: 'right',
        share: 28,
        page: 'core/strings/string-tension',
      },
      { group: '% of break load', heading: 'before', align: 'right', share: 28, tone: 'quiet' },
      {
        group: '% of break load',
        heading: 'after',
        align: 'right',
        share: 28,
        page: 'core/strings/break-share',
      },
      { group: 'B × 10⁴', heading: 'before', align: 'right', share: 28, tone: 'quiet' },
      { group: 'B × 10⁴', heading: 'after', align: 'right', share: 28, page: 'core/strings/inharmonicity' },
    ],
    rows: changed.map(({ key, before, after }) => {
      const both = (text: (note: NoteAnalysis) => string): Cell[] =>
        [before, after].map((note) => (note === undefined ? { absent: 'not known' } : text(note)));
      return {
        cells: [
          noteName(key),
          String((after ?? before)?.note.strings ?? ''),
          ...both(({ note }) => wireText(note.string, unit, language)),
          ...both(({ tension }) => tension.toFixed(0)),
          ...both(({ breakShare }) => (breakShare * 100).toFixed(0)),
          ...both(({ inharmonicity }) => (inharmonicity * 1e4).toFixed(2)),
        ],
      };
    }),
  };
}

/** Loads of the whole, of sections and of bridges. */
export function loadTable({ loads }: ScaleComparison): Table {
  return {
    is: 'table',
    title: 'What plate and bridges bear',
    width: 0.8,
    remarks: ['Loads are of the notes that both scales have; bearing where its angle was read.'],
    columns: [
      { heading: 'of', align: 'left', share: 60 },
      { heading: 'before', align: 'right', share: 36, tone: 'quiet' },
      { heading: 'after', align: 'right', share: 36 },
      { heading: 'uncertainty', align: 'right', share: 36, tone: 'quiet' },
      { heading: 'bearing, before', align: 'right', share: 40, tone: 'quiet' },
      { heading: 'bearing, after', align: 'right', share: 40 },
    ],
    rows: loads.map(({ of, name, before, after }) => {
      const force = (value: number | undefined): Cell =>
        value === undefined ? { absent: 'not known' } : kN(value);
      const bearing = (value: number | undefined): Cell =>
        value === undefined ? { absent: 'not read' } : kN(value);
      return {
        ...(of === 'all' ? { tone: 'sum' as const } : {}),
        cells: [
          of === 'all' ? name : `${of} ${name}`,
          force(before?.load),
          force(after?.load),
          after?.loadUncertainty === undefined ? { absent: 'not known' } : `± ${kN(after.loadUncertainty)}`,
          bearing(before?.bearing?.force),
          bearing(after?.bearing?.force),
        ],
      };
    }),
  };
}

/** Thirds over the break, beat by beat. */
export function beatsTable({ beats, tunedBy }: ScaleComparison): Table | undefined {
  const thirds = beats.filter(({ interval }) => interval === 'major third');
  if (thirds.length === 0) return undefined;
  const rate = (value: number | undefined): Cell =>
    value === undefined ? { absent: 'not known' } : value.toFixed(1);
  return {
    is: 'table',
    title: 'Major thirds over the break, beats a second',
    width: 0.5,
    remarks: [
      tunedBy === 'stretch'
        ? 'Tuned by the stretch of each scale’s own inharmonicity. A row that rises evenly is heard as even.'
        : 'Tuned by equal temperament, as too few notes are known for a stretch.',
    ],
    columns: [
      { heading: 'notes', align: 'left', share: 50 },
      { heading: 'before', align: 'right', share: 40, tone: 'quiet' },
      { heading: 'after', align: 'right', share: 40, page: 'core/pitch/beat-rate' },
    ],
    rows: thirds.map(({ lowerKey, upperKey, before, after }) => ({
      cells: [`${noteName(lowerKey)}–${noteName(upperKey)}`, rate(before), rate(after)],
    })),
  };
}

/** Plain wire by size. */
export function wireTable({ wires }: ScaleComparison, unit: LengthUnit, language: Language): Table {
  return {
    is: 'table',
    title: 'Plain wire it takes',
    width: 0.6,
    columns: [
      { heading: unit, align: 'right', share: 30 },
      { heading: otherUnit(unit), align: 'right', share: 30, tone: 'quiet' },
      { heading: 'strings', align: 'right', share: 26 },
      { heading: 'notes', align: 'left', share: 70 },
    ],
    rows: wires
      .filter(({ use }) => use === 'plain')
      .map(({ diameter, strings, keys }) => ({
        cells: [
          lengthText(diameter, unit, 'diameter', language),
          lengthText(diameter, otherUnit(unit), 'diameter', language),
          String(strings),
          notesInWords(
            keys.map((key) => ({ note: { key } })),
            language,
          ),
        ],
      })),
  };
}

/** One line a note, both scales, SI and plain numbers; no line while there is nothing to compare. */
export function comparisonForMachines(comparison: ScaleComparison | undefined): MachineTable {
  const figures = ['wire_m', 'winding_m', 'tension_n', 'break_share', 'inharmonicity'];
  return {
    columns: [
      'key',
      'note',
      ...['before', 'after'].flatMap((when) => figures.map((name) => `${when}_${name}`)),
      'is_changed',
    ],
    rows: (comparison?.notes ?? []).map(({ key, before, after, isChanged }) => [
      String(key),
      noteName(key),
      ...[before, after].flatMap((note) => {
        if (note === undefined) return figures.map(() => undefined);
        const { string } = note.note;
        return [
          plainNumber(string.kind === 'plain' ? string.diameter : string.coreDiameter),
          string.kind === 'plain'
            ? undefined
            : string.layers.map(({ wireDiameter }) => plainNumber(wireDiameter)).join(' '),
          plainNumber(note.tension),
          plainNumber(note.breakShare),
          plainNumber(note.inharmonicity),
        ];
      }),
      isChanged ? 'yes' : 'no',
    ]),
  };
}

const plainNumber = (value: number): string => String(Number(value.toPrecision(6)));

function wireText(string: PlainString | WoundString, unit: LengthUnit, language: Language): string {
  const diameter = (length: number) => lengthText(length, unit, 'diameter', language);
  return string.kind === 'plain'
    ? diameter(string.diameter)
    : `${diameter(string.coreDiameter)} + ${string.layers.map(({ wireDiameter }) => diameter(wireDiameter)).join(' + ')}`;
}
