import { english, type Language, type LengthUnit, message } from '@becket/core';
import {
  type AsFoundNote,
  lengthKindOf,
  type ReadingQuantityName,
  readingQuantities,
  type StandingReading,
} from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { lengthCells, lengthColumns, lengthInWords } from '../figures/lengths.ts';
import { countText, readingInWords } from '../figures/readings.ts';
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
  language: Language,
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
  return [
    ...lengthTables(where, notes, isColumned, unit, language),
    ...readingList(where, others, unit, language),
  ];
}

function lengthTables(
  where: string,
  notes: readonly AsFoundNote[],
  isColumned: (note: AsFoundNote, quantity: ReadingQuantityName) => boolean,
  unit: LengthUnit,
  language: Language,
): Table[] {
  const { say } = language;
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
      title: say('Further lengths, {where}', { where }),
      remarks: [say('Places left empty were not read. n: readings behind the figure.')],
      width: (own.length + 1) / (quantitiesInTable + 1),
      columns: [
        { heading: say('[of the scale] note'), align: 'left', share: 30 },
        ...own.flatMap((quantity) => {
          const group = say(readingQuantities[quantity].label);
          return [
            ...lengthColumns(group, unit),
            {
              group,
              heading: say('[number of readings] n'),
              align: 'right',
              share: 18,
              tone: 'quiet',
            } as const,
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
              return [
                ...lengthCells(figure.value, lengthKindOf(quantity), unit, language),
                countText(figure.readings, language),
              ];
            }),
          ],
        })),
    });
  }
  return tables;
}

function readingList(
  where: string,
  readings: readonly StandingReading[],
  unit: LengthUnit,
  language: Language,
): Table[] {
  const { say } = language;
  if (readings.length === 0) return [];
  const inOrder = [...readings].sort(
    (a, b) =>
      (a.place.key ?? 0) - (b.place.key ?? 0) ||
      say(readingQuantities[a.quantity].label).localeCompare(
        say(readingQuantities[b.quantity].label),
        language.locale,
      ),
  );
  return [
    {
      is: 'table',
      title: say('Further readings, {where}', { where }),
      columns: [
        { heading: say('where'), align: 'left', share: 110 },
        { heading: say('[what is read] quantity'), align: 'left', share: 105 },
        { heading: say('reading'), align: 'left', share: 110 },
        { heading: say('[of a reading] condition'), align: 'left', share: 155 },
        { heading: say('[number of readings] n'), align: 'right', share: 20, tone: 'quiet' },
      ],
      rows: inOrder.map((reading) => ({
        cells: [
          placeInWords(reading.place, language),
          say(readingQuantities[reading.quantity].label),
          readingInWords(reading, unit, language),
          conditionInWords(reading, unit, language),
          countText([reading], language),
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
  conditionInWords(reading, 'mm', english) === '';

const stringsWords = {
  on: message('strings on'),
  'let down': message('strings let down'),
  off: message('strings off'),
} as const;
const surfaceWords = {
  bright: message('wire bright'),
  corroded: message('wire corroded'),
  cleaned: message('wire cleaned'),
} as const;
const turningWords = { sharp: message('turning sharp'), flat: message('turning flat') } as const;

function conditionInWords(
  { condition, instrument, span_m, loaded }: StandingReading,
  unit: LengthUnit,
  language: Language,
): string {
  const { say, plain } = language;
  const parts = [
    span_m === undefined
      ? undefined
      : say('over a span of {length}', { length: lengthInWords(span_m, 'length', unit, language) }),
    loaded === undefined ? undefined : loaded ? say('board under load') : say('board not under load'),
    condition === undefined || condition.strings === 'unknown'
      ? undefined
      : say(stringsWords[condition.strings]),
    condition?.surface === undefined ? undefined : say(surfaceWords[condition.surface]),
    condition?.turning === undefined ? undefined : say(turningWords[condition.turning]),
    condition?.relativeHumidity_percent === undefined
      ? undefined
      : say('{percent} % RH', { percent: plain(condition.relativeHumidity_percent) }),
    condition?.temperature_c === undefined ? undefined : `${plain(condition.temperature_c)} °C`,
    instrument,
  ];
  return parts.filter((part) => part !== undefined).join(', ');
}
