import {
  inInches,
  inMillimetres,
  type Language,
  type LengthKind,
  type LengthUnit,
  type Metres,
  otherUnit,
} from '@becket/core';
import type { Cell, TableColumn } from '../page-tree.ts';

/* On paper one unit stands first, and so in full ink; the other stands beside it. */

const decimals: Readonly<Record<LengthKind, Readonly<Record<LengthUnit, number>>>> = {
  diameter: { mm: 3, in: 4 },
  length: { mm: 1, in: 2 },
  thin: { mm: 2, in: 3 },
};

/**
 * A length in one unit, without the unit's name.
 * @example lengthText(0.00105, 'mm', 'diameter', english)  // = 1.050
 * @example lengthText(0.00035, 'mm', 'thin', english)  // = 0.35
 */
export function lengthText(length: number, unit: LengthUnit, kind: LengthKind, { fixed }: Language): string {
  // Nine digits first: 1.02175 m is 1021.7499… mm in binary, and should be rounded as the 1021.75 that was read.
  const value = Number(lengthIn(length, unit).toPrecision(9));
  const isTenths = kind === 'thin' && unit === 'mm' && Math.abs(value * 10 - Math.round(value * 10)) < 1e-6;
  return fixed(value, isTenths ? 1 : decimals[kind][unit]);
}

/** A length in both units for running text: '1.050 mm (0.0413 in)'. */
export function lengthInWords(
  length: number,
  kind: LengthKind,
  first: LengthUnit,
  language: Language,
): string {
  const second = otherUnit(first);
  return `${lengthText(length, first, kind, language)} ${first} (${lengthText(length, second, kind, language)} ${second})`;
}

/**
 * A spread or an uncertainty in one unit; what would round to nothing says how small it is instead.
 * @example smallLengthText(0.00001, 'mm', 'length', english)  // = <0.1
 */
export function smallLengthText(
  length: number,
  unit: LengthUnit,
  kind: LengthKind,
  language: Language,
): string {
  const text = lengthText(length, unit, kind, language);
  if (length === 0 || /[1-9]/.test(text)) return text;
  const places = decimals[kind][unit];
  return `<${language.fixed(10 ** -places, places)}`;
}

/** Two columns side by side, the first unit and the other, under one heading. */
export function lengthColumns(
  group: string,
  first: LengthUnit,
  [firstShare, secondShare]: readonly [number, number] = [36, 34],
): TableColumn[] {
  return [
    { group, heading: first, align: 'right', share: firstShare },
    { group, heading: otherUnit(first), align: 'right', share: secondShare, tone: 'quiet' },
  ];
}

/** The two cells that belong under `lengthColumns`. */
export function lengthCells(length: number, kind: LengthKind, first: LengthUnit, language: Language): Cell[] {
  return [lengthText(length, first, kind, language), lengthText(length, otherUnit(first), kind, language)];
}

/** A length as a plain number in this unit. */
export function lengthIn(length: number, unit: LengthUnit): number {
  return unit === 'mm' ? inMillimetres(length as Metres) : inInches(length as Metres);
}
