import {
  type Language,
  type LengthUnit,
  type Metres,
  message,
  metres,
  noteName,
  type ScaleNote,
} from '@becket/core';
import { asFoundRecord, type Job, type StrungNote } from '@becket/journal';
import { lengthCells, lengthColumns } from '../figures/lengths.ts';
import type { Block, Cell, MachineCell, MachineTable, TableRow } from '../page-tree.ts';
import type { HandOverFigures } from './hand-over-figures.ts';

type Strung = Pick<HandOverFigures, 'scale' | 'wanted'>;

const fromWords = {
  measured: message('[of a size] measured'),
  chosen: message('[of a size] as chosen'),
  'as found': message('[of a size] as found'),
} as const satisfies Record<StrungNote['from'], string>;

/** Every note with its sizes, section by section; a note that nobody knows has a row that says so. */
export function stringsTable(
  job: Job,
  { scale, wanted }: Strung,
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say } = language;
  const { notes } = asFoundRecord(job);
  if (notes.length === 0)
    return [{ is: 'paragraph', text: say('The piano is not described: none of its strings is known.') }];
  const strung = new Map(scale.notes.map((note) => [note.key, note]));
  const rows: TableRow[] = [];
  let before: string | undefined;
  for (const { key, section, strings } of notes) {
    const name = section?.section ?? say('in no section');
    if (name !== before) rows.push({ band: name });
    before = name;
    rows.push({
      cells: noteCells(
        { key, strings, strung: strung.get(key), measured: measuredWire(job, key), wanted: wanted.get(key) },
        unit,
        language,
      ),
    });
  }
  return [
    {
      is: 'table',
      remarks: [
        say(
          'Wire: the plain wire, or the core of a wound string. Measured: read on the new wire. As chosen, as found: not measured on the new wire.',
        ),
      ],
      columns: [
        { heading: say('[of the scale] note'), align: 'left', share: 30 },
        { heading: say('[number of] strings'), align: 'right', share: 34 },
        ...lengthColumns(say('wire'), unit),
        ...lengthColumns(say('over all'), unit),
        ...lengthColumns(say('speaking length'), unit, [42, 38]),
        { heading: say('[of a size] from'), align: 'left', share: 56 },
      ],
      rows,
    },
  ];
}

/** The wire of a note that cannot be computed, where it was measured on the new strings all the same: the mean. */
function measuredWire({ readings }: Job, key: number): Metres | undefined {
  const values = readings
    .filter(
      ({ stage, quantity, place }) =>
        stage === 'as strung' &&
        (quantity === 'wire-diameter' || quantity === 'core-diameter') &&
        place.key === key,
    )
    .map(({ value_si }) => value_si);
  return values.length === 0
    ? undefined
    : metres(values.reduce((sum, value) => sum + value, 0) / values.length);
}

interface NoteToPrint {
  readonly key: number;
  readonly strings: number | undefined;
  readonly strung: StrungNote | undefined;
  readonly measured: Metres | undefined;
  readonly wanted: Metres | undefined;
}

function noteCells(
  { key, strings, strung, measured, wanted }: NoteToPrint,
  unit: LengthUnit,
  language: Language,
): Cell[] {
  const { say } = language;
  const count: Cell = strings === undefined ? { absent: say('unknown') } : String(strings);
  if (strung === undefined) {
    return measured === undefined
      ? [noteName(key), count, { absent: say('unknown'), across: 7 }]
      : [
          noteName(key),
          count,
          ...lengthCells(measured, 'diameter', unit, language),
          { absent: say('unknown'), across: 4 },
          say(fromWords.measured),
        ];
  }
  const { note, from } = strung;
  const { wire, overAll } = sizesOf(note, from === 'chosen' ? wanted : undefined);
  return [
    noteName(key),
    count,
    ...lengthCells(wire, 'diameter', unit, language),
    ...(overAll === undefined
      ? [{ absent: say('plain'), across: 2 }]
      : lengthCells(overAll, 'diameter', unit, language)),
    ...lengthCells(note.string.speakingLength, 'length', unit, language),
    say(fromWords[from]),
  ];
}

/** A plain note has the wire that was to be strung, where the new one was not measured: not that of the worn one. */
function sizesOf(
  { string }: ScaleNote,
  wanted: Metres | undefined,
): { wire: Metres; overAll: Metres | undefined } {
  if (string.kind === 'plain') return { wire: wanted ?? string.diameter, overAll: undefined };
  const overAll = string.layers.reduce(
    (sum, { wireDiameter }) => sum + 2 * wireDiameter,
    string.coreDiameter as number,
  );
  return { wire: string.coreDiameter, overAll: metres(overAll) };
}

/** One row a note. */
export function stringsForMachines(job: Job, { scale, wanted }: Strung): MachineTable {
  const strung = new Map(scale.notes.map((note) => [note.key, note]));
  return {
    columns: [
      'key',
      'note',
      'section',
      'strings',
      'kind',
      'wire_m',
      'over_all_m',
      'speaking_length_m',
      'from',
    ],
    rows: asFoundRecord(job).notes.map(({ key, section, strings }) => {
      const known = strung.get(key);
      const sizes =
        known === undefined
          ? undefined
          : sizesOf(known.note, known.from === 'chosen' ? wanted.get(key) : undefined);
      return [
        String(key),
        noteName(key),
        section?.section,
        strings === undefined ? undefined : String(strings),
        known?.note.string.kind,
        plainNumber(sizes?.wire ?? measuredWire(job, key)),
        plainNumber(sizes?.overAll),
        plainNumber(known?.note.string.speakingLength),
        known?.from ?? (measuredWire(job, key) === undefined ? 'unknown' : 'measured'),
      ];
    }),
  };
}

const plainNumber = (value: number | undefined): MachineCell =>
  value === undefined ? undefined : String(Number(value.toPrecision(7)));
