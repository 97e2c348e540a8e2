import { english, inKilonewtons, inPoundsForce, type Language, newtons } from '@becket/core';
import type { LengthUnit } from './length-text.ts';

/** '712 N' where lengths are in millimetres, '160 lbf' where they are in inches. */
export function forceText(force_n: number, unit: LengthUnit): string {
  return unit === 'mm' ? `${force_n.toFixed(0)} N` : `${inPoundsForce(newtons(force_n)).toFixed(0)} lbf`;
}

/** A load of many strings: '48.3 kN' or '10 860 lbf'. */
export function loadText(force_n: number, unit: LengthUnit, { fixed }: Language = english): string {
  if (unit === 'mm') return `${fixed(inKilonewtons(newtons(force_n)), 1)} kN`;
  const pounds = Math.round(inPoundsForce(newtons(force_n)) / 10) * 10;
  return `${String(pounds).replace(/\B(?=(\d{3})+$)/g, '\u202f')} lbf`;
}
