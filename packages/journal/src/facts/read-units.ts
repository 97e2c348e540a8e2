import {
  degrees,
  hertz,
  inches,
  inchPounds,
  kilogramForceCentimetres,
  metres,
  micrometres,
  millimetres,
  mils,
  newtonMetres,
} from '@becket/core';
import type { ReadingQuantity } from './reading-quantities.ts';

/** Units a value can be read in. The SI value stands beside the value as read. */
export const readUnits = [
  'mm',
  'in',
  'mil',
  'um',
  'm',
  'N·m',
  'in·lbf',
  'kgf·cm',
  'Hz',
  'deg',
  'rad',
  'turns',
  'cents',
  '%',
  '°C',
] as const;
export type ReadUnit = (typeof readUnits)[number];

const conversions: Record<
  ReadUnit,
  { dimension: ReadingQuantity['dimension']; toSi: (value: number) => number }
> = {
  mm: { dimension: 'length', toSi: millimetres },
  in: { dimension: 'length', toSi: inches },
  mil: { dimension: 'length', toSi: mils },
  um: { dimension: 'length', toSi: micrometres },
  m: { dimension: 'length', toSi: metres },
  N·m: { dimension: 'torque', toSi: newtonMetres },
  in·lbf: { dimension: 'torque', toSi: inchPounds },
  kgf·cm: { dimension: 'torque', toSi: kilogramForceCentimetres },
  Hz: { dimension: 'frequency', toSi: hertz },
  deg: { dimension: 'angle', toSi: degrees },
  rad: { dimension: 'angle', toSi: (value) => value },
  turns: { dimension: 'count', toSi: (value) => value },
  cents: { dimension: 'pitch offset', toSi: (value) => value },
  '%': { dimension: 'relative humidity', toSi: (value) => value },
  '°C': { dimension: 'temperature', toSi: (value) => value },
};

/** The SI value of a value as read. */
export const siFromRead = (value: number, unit: ReadUnit): number => conversions[unit].toSi(value);

/** What a unit measures. */
export const dimensionOfUnit = (unit: ReadUnit): ReadingQuantity['dimension'] => conversions[unit].dimension;

/** The units in which a quantity of this dimension can be read. */
export function unitsForDimension(dimension: ReadingQuantity['dimension']): ReadUnit[] {
  return readUnits.filter((unit) => conversions[unit].dimension === dimension);
}
