import {
  english,
  inInches,
  inMillimetres,
  type Language,
  type LengthKind,
  type LengthUnit,
  metres,
  otherUnit,
} from '@becket/core';

export { type LengthKind, type LengthUnit, otherUnit };

const digits: Record<LengthKind, Record<LengthUnit, number>> = {
  diameter: { mm: 3, in: 4 },
  length: { mm: 1, in: 3 },
  thin: { mm: 2, in: 3 },
};

/** The number alone, without its unit. */
export function lengthNumber(
  length_m: number,
  unit: LengthUnit,
  kind: LengthKind,
  { fixed }: Language = english,
): string {
  const length = metres(length_m);
  const value = unit === 'mm' ? inMillimetres(length) : inInches(length);
  // A felt of 3.0 mm was read to a tenth; a punching of 0.35 mm was not.
  const isTenths = kind === 'thin' && unit === 'mm' && Math.abs(value * 10 - Math.round(value * 10)) < 1e-6;
  return fixed(value, isTenths ? 1 : digits[kind][unit]);
}

/** '1.025 mm' */
export function lengthText(
  length_m: number,
  unit: LengthUnit,
  kind: LengthKind,
  language: Language = english,
): string {
  return `${lengthNumber(length_m, unit, kind, language)} ${unit}`;
}

/** '± 0.004 mm'; never '± 0.000', and nothing where no uncertainty can be stated. */
export function uncertaintyText(
  uncertainty_m: number | undefined,
  unit: LengthUnit,
  kind: LengthKind,
  { fixed }: Language = english,
): string {
  if (uncertainty_m === undefined || uncertainty_m <= 0) return '';
  const length = metres(uncertainty_m);
  const value = unit === 'mm' ? inMillimetres(length) : inInches(length);
  const places = digits[kind][unit];
  const finest = 10 ** -places;
  if (value < finest / 2) return `± < ${fixed(finest, places)} ${unit}`;
  return `± ${fixed(value, places)} ${unit}`;
}
