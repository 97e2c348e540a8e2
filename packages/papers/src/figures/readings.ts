import { type Language, type LengthKind, type LengthUnit, message, newtonMetres } from '@becket/core';
import {
  type Absence,
  type AsFoundNote,
  type Figure,
  lengthKindOf,
  type ReadingQuantityName,
  readingQuantities,
  type StandingReading,
} from '@becket/journal';
import type { Cell } from '../page-tree.ts';
import { lengthCells, lengthInWords, smallLengthText } from './lengths.ts';
import { torqueText, torqueUnit } from './torques.ts';

/** Letters beside a count of readings that were not measured. */
const originMarks = {
  measured: undefined,
  stamped: message('[mark of a reading] s'),
  copied: message('[mark of a reading] c'),
  inferred: message('[mark of a reading] i'),
} as const satisfies Record<StandingReading['origin'], unknown>;

export const originLine = message(
  'Figures are measured, except: s stamped on the piano, c copied from paper, i inferred.',
);

/**
 * How many readings a figure rests on, by origin: '3' measured, '2+1s' two measured and one stamped.
 */
export function countText(readings: readonly StandingReading[], { say }: Language): string {
  const counts = Object.entries(originMarks).map(
    ([origin, mark]) => [readings.filter((reading) => reading.origin === origin).length, mark] as const,
  );
  return counts
    .filter(([count]) => count > 0)
    .map(([count, mark]) => `${count}${mark === undefined ? '' : say(mark)}`)
    .join('+');
}

/** Highest less lowest reading, SI; undefined for a single one, which has no spread. */
export function spreadOf({ readings }: Figure): number | undefined {
  if (readings.length < 2) return undefined;
  const values = readings.map((reading) => reading.value_si);
  return Math.max(...values) - Math.min(...values);
}

/** Count, standard uncertainty and spread of a figure, as three cells; the lengths in the first unit. */
export function evidenceCells(
  figure: Figure | undefined,
  kind: LengthKind,
  unit: LengthUnit,
  language: Language,
): [count: Cell, uncertainty: Cell, spread: Cell] {
  if (figure === undefined) return ['', '', ''];
  const spread = spreadOf(figure);
  const { standardUncertainty } = figure;
  return [
    countText(figure.readings, language),
    standardUncertainty === undefined ? '' : smallLengthText(standardUncertainty, unit, kind, language),
    spread === undefined ? '' : smallLengthText(spread, unit, kind, language),
  ];
}

/** What is said where there is no figure: the answer that was given, or that nobody has read it. */
export const noFigureText = (absence: Absence | undefined, { say }: Language): string =>
  say(absence ?? 'not read');

/**
 * One quantity of a note under `lengthColumns`: the figure; or *unknown*, *none*, *does not apply*; or, where a figure is
 * needed and nobody has read it, a blank.
 */
export function quantityCells(
  note: AsFoundNote,
  quantity: ReadingQuantityName,
  first: LengthUnit,
  language: Language,
): Cell[] {
  const figure = note.figures[quantity];
  if (figure !== undefined) return lengthCells(figure.value, lengthKindOf(quantity), first, language);
  const absence = note.absences[quantity];
  const isBlank = absence === undefined && note.needed.includes(quantity);
  return [
    isBlank
      ? { blank: language.say('[beside a line to write on] not read'), across: 2 }
      : { absent: noFigureText(absence, language), across: 2 },
  ];
}

/** One reading in words with its unit: a length in both units, a torque as it was read with the other unit, the rest as read. */
export function readingInWords(reading: StandingReading, first: LengthUnit, language: Language): string {
  const { dimension } = readingQuantities[reading.quantity];
  if (dimension === 'length')
    return lengthInWords(reading.value_si, lengthKindOf(reading.quantity), first, language);
  const { value, unit } = reading.asRead;
  // Of all units only this one is a word.
  const asRead = `${language.plain(value)} ${unit === 'cents' ? language.say('cents') : unit}`;
  if (dimension !== 'torque') return asRead;
  const goesWith = unit === 'N·m' ? 'in' : 'mm';
  const torque = torqueText(newtonMetres(reading.value_si), goesWith, language);
  return `${asRead} (${torque} ${torqueUnit(goesWith)})`;
}
