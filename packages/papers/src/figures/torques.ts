import {
  inInchPounds,
  inNewtonMetres,
  type Language,
  type LengthUnit,
  type NewtonMetres,
} from '@becket/core';
import type { TableColumn } from '../page-tree.ts';

/** Torque is printed to a tenth of a N·m and a whole in·lbf: a wrench reads no finer. */
const units = [
  { name: 'N·m', text: (torque: NewtonMetres, { fixed }: Language) => fixed(inNewtonMetres(torque), 1) },
  { name: 'in·lbf', text: (torque: NewtonMetres, { fixed }: Language) => fixed(inInchPounds(torque), 0) },
] as const;

/** The unit of torque that goes with the unit of length which stands first, and the other. */
const from = (first: LengthUnit) => (first === 'mm' ? units : ([units[1], units[0]] as const));

export const torqueUnit = (first: LengthUnit): string => from(first)[0].name;

/** A torque in the unit that stands first, without the unit's name. */
export const torqueText = (torque: NewtonMetres, first: LengthUnit, language: Language): string =>
  from(first)[0].text(torque, language);

/** 13.6 N·m (120 in·lbf) */
export function torqueInWords(torque: NewtonMetres, first: LengthUnit, language: Language): string {
  const [one, other] = from(first);
  return `${one.text(torque, language)} ${one.name} (${other.text(torque, language)} ${other.name})`;
}

/** Two columns side by side, the first unit and the other, under one heading. */
export function torqueColumns(group: string, first: LengthUnit, page?: string): TableColumn[] {
  return from(first).map(({ name }, index) => ({
    group,
    heading: name,
    align: 'right',
    share: 36,
    ...(index === 0 ? {} : { tone: 'quiet' as const }),
    ...(page === undefined ? {} : { page }),
  }));
}

/** The two cells that belong under `torqueColumns`. */
export const torqueCells = (torque: NewtonMetres, first: LengthUnit, language: Language): string[] =>
  from(first).map(({ text }) => text(torque, language));
