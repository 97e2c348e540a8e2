import {
  english,
  inInches,
  inMicrometres,
  inMillimetres,
  inMils,
  type Language,
  type LengthKind,
  type LengthUnit,
  type Metres,
  metres,
  otherUnit,
} from '@becket/core';
import type { ReadUnit } from '@becket/journal';

export { type LengthKind, type LengthUnit, otherUnit };

/** Every unit that an instrument may show a length in. */
export type ShownUnit = LengthUnit | 'mil' | 'um' | 'm';

const numbersIn: Record<ShownUnit, (length: Metres) => number> = {
  mm: inMillimetres,
  in: inInches,
  mil: inMils,
  um: inMicrometres,
  m: (length) => length,
};

/** The same fineness in each unit, as near as whole digits come. */
const digits: Record<LengthKind, Record<ShownUnit, number>> = {
  diameter: { mm: 3, in: 4, mil: 1, um: 0, m: 6 },
  length: { mm: 1, in: 3, mil: 0, um: 0, m: 4 },
  thin: { mm: 2, in: 3, mil: 0, um: 0, m: 5 },
};

/** A unit as it stands beside a number or at the head of a column. */
export const unitSign = (unit: ReadUnit): string => (unit === 'um' ? 'µm' : unit);

/** A length in a unit, every digit of it. */
export const lengthIn = (length_m: number, unit: ShownUnit): number => numbersIn[unit](metres(length_m));

/** The number alone, without its unit. */
export function lengthNumber(
  length_m: number,
  unit: ShownUnit,
  kind: LengthKind,
  { fixed }: Language = english,
): string {
  const value = lengthIn(length_m, unit);
  // A felt of 3.0 mm was read to a tenth; a punching of 0.35 mm was not.
  const isTenths = kind === 'thin' && unit === 'mm' && Math.abs(value * 10 - Math.round(value * 10)) < 1e-6;
  return fixed(value, isTenths ? 1 : digits[kind][unit]);
}

/** '1.025 mm' */
export function lengthText(
  length_m: number,
  unit: ShownUnit,
  kind: LengthKind,
  language: Language = english,
): string {
  return `${lengthNumber(length_m, unit, kind, language)} ${unitSign(unit)}`;
}

/** '± 0.004 mm'; never '± 0.000', and nothing where no uncertainty can be stated. */
export function uncertaintyText(
  uncertainty_m: number | undefined,
  unit: ShownUnit,
  kind: LengthKind,
  { fixed }: Language = english,
): string {
  if (uncertainty_m === undefined || uncertainty_m <= 0) return '';
  const value = lengthIn(uncertainty_m, unit);
  const places = digits[kind][unit];
  const finest = 10 ** -places;
  if (value < finest / 2) return `± < ${fixed(finest, places)} ${unitSign(unit)}`;
  return `± ${fixed(value, places)} ${unitSign(unit)}`;
}
