import {
  type Absence,
  type AsFoundNote,
  type Figure,
  type ReadingQuantityName,
  readingQuantities,
  type StandingReading,
} from '@becket/journal';
import type { Cell } from '../page-tree.ts';
import { type LengthKind, type LengthUnit, lengthCells, lengthInWords, smallLengthText } from './lengths.ts';

/** Letters beside a count of readings that were not measured. */
const originMarks: Readonly<Record<StandingReading['origin'], string>> = {
  measured: '',
  stamped: 's',
  copied: 'c',
  inferred: 'i',
};

export const originLine =
  'Figures are measured, except: s stamped on the piano, c copied from paper, i inferred.';

/**
 * How many readings a figure rests on, by origin: '3' measured, '2+1s' two measured and one stamped.
 */
export function countText(readings: readonly StandingReading[]): string {
  const counts = Object.entries(originMarks).map(
    ([origin, mark]) => [readings.filter((reading) => reading.origin === origin).length, mark] as const,
  );
  return counts
    .filter(([count]) => count > 0)
    .map(([count, mark]) => `${count}${mark}`)
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
): [count: Cell, uncertainty: Cell, spread: Cell] {
  if (figure === undefined) return ['', '', ''];
  const spread = spreadOf(figure);
  const { standardUncertainty } = figure;
  return [
    countText(figure.readings),
    standardUncertainty === undefined ? '' : smallLengthText(standardUncertainty, unit, kind),
    spread === undefined ? '' : smallLengthText(spread, unit, kind),
  ];
}

export const lengthKindOf = (quantity: ReadingQuantityName): LengthKind =>
  quantity.endsWith('-diameter') ? 'diameter' : 'length';

/** What is said where there is no figure: the answer that was given, or that nobody has read it. */
export const noFigureText = (absence: Absence | undefined): string => absence ?? 'not read';

/**
 * One quantity of a note under `lengthColumns`: the figure; or *unknown*, *none*, *does not apply*; or, where a figure is
 * needed and nobody has read it, a blank.
 */
export function quantityCells(note: AsFoundNote, quantity: ReadingQuantityName, first: LengthUnit): Cell[] {
  const figure = note.figures[quantity];
  if (figure !== undefined) return lengthCells(figure.value, lengthKindOf(quantity), first);
  const absence = note.absences[quantity];
  if (absence !== undefined) return [{ absent: absence, across: 2 }];
  return [
    note.needed.includes(quantity) ? { blank: 'not read', across: 2 } : { absent: 'not read', across: 2 },
  ];
}

/** One reading in words with its unit: a length in both units, anything else as it was read. */
export function readingInWords(reading: StandingReading, first: LengthUnit): string {
  const { dimension } = readingQuantities[reading.quantity];
  if (dimension === 'length') return lengthInWords(reading.value_si, lengthKindOf(reading.quantity), first);
  return `${reading.asRead.value} ${reading.asRead.unit}`;
}
