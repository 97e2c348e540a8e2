import { english, inKilonewtons, inPoundsForce, type Language, newtons } from '@becket/core';
import type { LengthUnit } from './length-text.ts';

/** Newtons where lengths are in millimetres, pounds-force where they are in inches. */
export const forceUnits = { mm: 'N', in: 'lbf' } as const satisfies Record<LengthUnit, string>;
export const inForceUnit = (force_n: number, unit: LengthUnit): number =>
  unit === 'mm' ? force_n : inPoundsForce(newtons(force_n));

/** '712 N' where lengths are in millimetres, '160 lbf' where they are in inches. */
export function forceText(force_n: number, unit: LengthUnit): string {
  return `${inForceUnit(force_n, unit).toFixed(0)} ${forceUnits[unit]}`;
}

/** A load of many strings: '48.3 kN' or '10 860 lbf'. */
export function loadText(force_n: number, unit: LengthUnit, { fixed }: Language = english): string {
  if (unit === 'mm') return `${fixed(inKilonewtons(newtons(force_n)), 1)} kN`;
  const pounds = Math.round(inPoundsForce(newtons(force_n)) / 10) * 10;
  return `${String(pounds).replace(/\B(?=(\d{3})+$)/g, '\u202f')} lbf`;
}
