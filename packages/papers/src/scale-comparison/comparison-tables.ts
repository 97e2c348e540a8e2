import {
  inPoundsForce,
  type Language,
  type LengthUnit,
  type LoadShare,
  type NoteAnalysis,
  newtons,
  noteName,
  otherUnit,
  type PlainString,
  sayKnown,
  type WoundString,
} from '@becket/core';
import type { ScaleComparison } from '@becket/journal';
import { notesInWords } from '../bass-string-order/to-be-confirmed.ts';
import { lengthText } from '../figures/lengths.ts';
import type { Cell, MachineTable, Table } from '../page-tree.ts';
import { kN } from './plain-words.ts';

/** Each note that gets another wire, with what it had. */
export function changeTable(
  { changed }: ScaleComparison,
  unit: LengthUnit,
  language: Language,
): Table | undefined {
  if (changed.length === 0) return undefined;
  const { say, fixed } = language;
  const [was, is] = [say('[a change] before'), say('[a change] after')];
  return {
    is: 'table',
    title: say('Notes that get another size'),
    remarks: [
      say(
        'Diameters in {unit}, in brackets in {other}. Before is what was read, after what is strung; N is of one string, % of the break load.',
        { unit, other: otherUnit(unit) },
      ),
    ],
    columns: [
      { heading: say('[of the scale] note'), align: 'left', share: 26 },
      { heading: say('strings'), align: 'right', share: 32 },
      { group: say('wire'), heading: was, align: 'left', share: 88, tone: 'quiet' },
      { group: say('wire'), heading: is, align: 'left', share: 88 },
      { group: `${say('tension')}, N`, heading: was, align: 'right', share: 28, tone: 'quiet' },
      {
        group: `${say('tension')}, N`,
        heading: is,
        align: 'right',
        share: 28,
        page: 'core/strings/string-tension',
      },
      { group: say('% of break load'), heading: was, align: 'right', share: 28, tone: 'quiet' },
      {
        group: say('% of break load'),
        heading: is,
        align: 'right',
        share: 28,
        page: 'core/strings/break-share',
      },
      { group: 'B × 10⁴', heading: was, align: 'right', share: 28, tone: 'quiet' },
      { group: 'B × 10⁴', heading: is, align: 'right', share: 28, page: 'core/strings/inharmonicity' },
    ],
    rows: changed.map(({ key, before, after }) => {
      const both = (text: (note: NoteAnalysis) => string): Cell[] =>
        [before, after].map((note) => (note === undefined ? { absent: say('not known') } : text(note)));
      return {
        cells: [
          noteName(key),
          String((after ?? before)?.note.strings ?? ''),
          ...both(({ note }) => wireInBothUnits(note.string, unit, language)),
          ...both(({ tension }) => fixed(tension, 0)),
          ...both(({ breakShare }) => fixed(breakShare * 100, 0)),
          ...both(({ inharmonicity }) => fixed(inharmonicity * 1e4, 2)),
        ],
      };
    }),
  };
}

/** Loads of the whole, of sections and of bridges. */
export function loadTable({ loads }: ScaleComparison, language: Language): Table {
  const { say, fixed, plain } = language;
  return {
    is: 'table',
    title: say('What plate and bridges bear'),
    remarks: [
      say(
        'Loads are of the notes that both scales have; bearing of those at which an angle or a rise was read under load. A proposal is taken to keep the angle.',
      ),
    ],
    columns: [
      { heading: say('[the load] of'), align: 'left', share: 60 },
      { heading: say('[a change] before'), align: 'right', share: 62, tone: 'quiet' },
      { heading: say('[a change] after'), align: 'right', share: 62 },
      { heading: say('uncertainty'), align: 'right', share: 40, tone: 'quiet' },
      { heading: say('bearing, before'), align: 'right', share: 40, tone: 'quiet' },
      { heading: say('bearing, after'), align: 'right', share: 40 },
    ],
    rows: loads.map(({ of, name, before, after }) => {
      const force = (value: number | undefined): Cell =>
        value === undefined
          ? { absent: say('not known') }
          : `${kN(value, language)} (${plain(Math.round(inPoundsForce(newtons(value))))} lbf)`;
      // Of few notes mostly: newtons, where kilonewtons would show nothing.
      const bearing = (sum: LoadShare['bearing']): Cell =>
        sum === undefined
          ? { absent: say('not read') }
          : say('{force} N ({notes} read)', {
              force:
                sum.standardUncertainty === undefined
                  ? fixed(sum.force, 0)
                  : `${fixed(sum.force, 0)} ± ${fixed(sum.standardUncertainty, 0)}`,
              notes: plain(sum.notes),
            });
      return {
        ...(of === 'all' ? { tone: 'sum' as const } : {}),
        cells: [
          of === 'all'
            ? sayKnown(name, language)
            : of === 'section'
              ? say('section {section}', { section: name })
              : say('bridge {bridge}', { bridge: name }),
          force(before?.load),
          force(after?.load),
          after?.loadUncertainty === undefined
            ? { absent: say('not known') }
            : `± ${kN(after.loadUncertainty, language)}`,
          bearing(before?.bearing),
          bearing(after?.bearing),
        ],
      };
    }),
  };
}

/** Thirds over the break, beat by beat. */
export function beatsTable({ beats, tunedBy }: ScaleComparison, language: Language): Table | undefined {
  const { say, fixed } = language;
  const thirds = beats.filter(({ interval }) => interval === 'major third');
  if (thirds.length === 0) return undefined;
  const rate = (value: number | undefined): Cell =>
    value === undefined ? { absent: say('not known') } : fixed(value, 1);
  return {
    is: 'table',
    title: say('Major thirds over the break, beats a second'),
    width: 0.5,
    remarks: [
      tunedBy === 'stretch'
        ? say(
            'Tuned by the stretch of each scale’s own inharmonicity. A row that rises evenly is heard as even.',
          )
        : say('Tuned by equal temperament, as too few notes are known for a stretch.'),
    ],
    columns: [
      { heading: say('notes'), align: 'left', share: 50 },
      { heading: say('[a change] before'), align: 'right', share: 40, tone: 'quiet' },
      { heading: say('[a change] after'), align: 'right', share: 40, page: 'core/pitch/beat-rate' },
    ],
    rows: thirds.map(({ lowerKey, upperKey, before, after }) => ({
      cells: [`${noteName(lowerKey)}–${noteName(upperKey)}`, rate(before), rate(after)],
    })),
  };
}

/** Plain wire by size. */
export function wireTable({ wires }: ScaleComparison, unit: LengthUnit, language: Language): Table {
  const { say } = language;
  return {
    is: 'table',
    title: say('Plain wire it takes'),
    width: 0.6,
    columns: [
      { heading: unit, align: 'right', share: 30 },
      { heading: otherUnit(unit), align: 'right', share: 30, tone: 'quiet' },
      { heading: say('strings'), align: 'right', share: 26 },
      { heading: say('notes'), align: 'left', share: 70 },
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

const wireInBothUnits = (string: PlainString | WoundString, unit: LengthUnit, language: Language): string =>
  `${wireText(string, unit, language)} (${wireText(string, otherUnit(unit), language)})`;

function wireText(string: PlainString | WoundString, unit: LengthUnit, language: Language): string {
  const diameter = (length: number) => lengthText(length, unit, 'diameter', language);
  return string.kind === 'plain'
    ? diameter(string.diameter)
    : `${diameter(string.coreDiameter)} + ${string.layers.map(({ wireDiameter }) => diameter(wireDiameter)).join(' + ')}`;
}
