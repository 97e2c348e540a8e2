import {
  type AsFoundNote,
  type ReadingQuantityName,
  readingQuantities,
  type StandingReading,
} from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { type LengthUnit, lengthCells, lengthColumns, lengthInWords } from '../figures/lengths.ts';
import { countText, lengthKindOf, readingInWords } from '../figures/readings.ts';
import type { Cell, Table } from '../page-tree.ts';
import { quantitiesShown } from './note-tables.ts';

/** As many quantities as a page has room for, each in two units with its count. */
const quantitiesInTable = 5;

/**
 * Readings that have no column of their own in the tables of notes: plain lengths in columns, one row a note; everything
 * that has more to say (which string, at which point, under which condition) one line a reading, never pooled.
 */
export function furtherReadings(
  where: string,
  notes: readonly AsFoundNote[],
  readings: readonly StandingReading[],
  unit: LengthUnit,
): Table[] {
  const isColumned = (note: AsFoundNote, quantity: ReadingQuantityName): boolean =>
    !quantitiesShown(note).includes(quantity) &&
    readingQuantities[quantity].dimension === 'length' &&
    (note.figures[quantity]?.readings ?? []).every(saysNoMore);
  const others = readings.filter((reading) => {
    const { stage, quantity, place } = reading;
    if (stage !== 'as found') return false;
    const note = notes.find(({ key }) => key === place.key);
    if (note === undefined) return true;
    // A figure of the note holds them all; which string and point each belongs to would be lost.
    if (quantitiesShown(note).includes(quantity)) return isOfOneString(reading);
    return !isColumned(note, quantity);
  });
  return [...lengthTables(where, notes, isColumned, unit), ...readingList(where, others, unit)];
}

function lengthTables(
  where: string,
  notes: readonly AsFoundNote[],
  isColumned: (note: AsFoundNote, quantity: ReadingQuantityName) => boolean,
  unit: LengthUnit,
): Table[] {
  const figureOf = (note: AsFoundNote, quantity: ReadingQuantityName) =>
    isColumned(note, quantity) ? note.figures[quantity] : undefined;
  const quantities = (Object.keys(readingQuantities) as ReadingQuantityName[]).filter((quantity) =>
    notes.some((note) => figureOf(note, quantity) !== undefined),
  );
  const tables: Table[] = [];
  for (let first = 0; first < quantities.length; first += quantitiesInTable) {
    const own = quantities.slice(first, first + quantitiesInTable);
    tables.push({
      is: 'table',
      title: `Further lengths, ${where}`,
      remarks: ['Places left empty were not read. n: readings behind the figure.'],
      width: (own.length + 1) / (quantitiesInTable + 1),
      columns: [
        { heading: 'note', align: 'left', share: 30 },
        ...own.flatMap((quantity) => {
          const group = readingQuantities[quantity].label;
          return [
            ...lengthColumns(group, unit),
            { group, heading: 'n', align: 'right', share: 18, tone: 'quiet' } as const,
          ];
        }),
      ],
      rows: notes
        .filter((note) => own.some((quantity) => figureOf(note, quantity) !== undefined))
        .map((note) => ({
          cells: [
            note.note,
            ...own.flatMap((quantity): Cell[] => {
              const figure = figureOf(note, quantity);
              if (figure === undefined) return ['', '', ''];
              return [...lengthCells(figure.value, lengthKindOf(quantity), unit), countText(figure.readings)];
            }),
          ],
        })),
    });
  }
  return tables;
}

function readingList(where: string, readings: readonly StandingReading[], unit: LengthUnit): Table[] {
  if (readings.length === 0) return [];
  const inOrder = [...readings].sort(
    (a, b) =>
      (a.place.key ?? 0) - (b.place.key ?? 0) ||
      readingQuantities[a.quantity].label.localeCompare(readingQuantities[b.quantity].label, 'en'),
  );
  return [
    {
      is: 'table',
      title: `Further readings, ${where}`,
      columns: [
        { heading: 'where', align: 'left', share: 110 },
        { heading: 'quantity', align: 'left', share: 130 },
        { heading: 'reading', align: 'left', share: 130 },
        { heading: 'condition', align: 'left', share: 110 },
        { heading: 'n', align: 'right', share: 20, tone: 'quiet' },
      ],
      rows: inOrder.map((reading) => ({
        cells: [
          placeInWords(reading.place),
          readingQuantities[reading.quantity].label,
          readingInWords(reading, unit),
          conditionInWords(reading, unit),
          countText([reading]),
        ],
      })),
    },
  ];
}

/** True when a reading says which string it is of, at which point, or how its wire lay under the gauge. */
const isOfOneString = ({ place, condition }: StandingReading): boolean =>
  place.string !== undefined || place.point !== undefined || condition?.surface !== undefined;

/** True when a reading has nothing to say but its value. */
const saysNoMore = (reading: StandingReading): boolean =>
  reading.place.string === undefined &&
  reading.place.point === undefined &&
  conditionInWords(reading, 'mm') === '';

function conditionInWords(
  { condition, instrument, span_m, loaded }: StandingReading,
  unit: LengthUnit,
): string {
  const parts = [
    span_m === undefined ? undefined : `over a span of ${lengthInWords(span_m, 'length', unit)}`,
    loaded === undefined ? undefined : loaded ? 'board under load' : 'board not under load',
    condition === undefined || condition.strings === 'unknown' ? undefined : `strings ${condition.strings}`,
    condition?.surface === undefined ? undefined : `wire ${condition.surface}`,
    condition?.turning === undefined ? undefined : `turning ${condition.turning}`,
    condition?.relativeHumidity_percent === undefined
      ? undefined
      : `${condition.relativeHumidity_percent} % RH`,
    condition?.temperature_c === undefined ? undefined : `${condition.temperature_c} °C`,
    instrument,
  ];
  return parts.filter((part) => part !== undefined).join(', ');
}
