import { z } from 'zod';
import { readUnits, siFromRead } from './read-units.ts';

/** The ways in which a maker or a certificate states how far a gauge may be off, and its standard uncertainty as a share of that. */
const shareOfStated = {
  /** A limit, ±a: rectangular, u = a/√3. Source: JCGM 100:2008, 4.3.7. */
  limit: 1 / Math.sqrt(3),
  /** An expanded uncertainty of a certificate, U = 2u. Source: JCGM 100:2008, 4.3.3. */
  'expanded, k = 2': 1 / 2,
  /** The standard uncertainty itself. */
  standard: 1,
} as const;
export type StatedAs = keyof typeof shareOfStated;
export const waysOfStating = Object.keys(shareOfStated) as [StatedAs, ...StatedAs[]];

/**
 * A measuring tool of the shop: the unit it shows, the smallest step it tells apart, and how far it may be off.
 * A later description of the same name stands in place of an earlier one.
 */
export const instrumentDescribedSchema = z.object({
  kind: z.literal('instrument-described'),
  v: z.literal(1),
  /** Its name in this shop, which readings carry. */
  instrument: z.string().min(1).max(120),
  unit: z.enum(readUnits),
  /** Smallest step of the display, in `unit`. */
  resolution: z.number().positive(),
  /** What it is used for here, in words: 'wire, over the winding'. */
  usedFor: z.string().min(1).max(200).optional(),
  /** How far it may be off, in `unit`, as its maker or its certificate states it. */
  stated: z.object({ value: z.number().positive(), as: z.enum(waysOfStating) }).optional(),
});

/**
 * What one reading of an instrument is worth by what is stated of it.
 *
 *     limit ±a:  u = a/√3        expanded, k = 2:  u = U/2        standard:  u
 *
 * @returns standard uncertainty, SI of what it shows; 0 where nothing is stated, which is not the same as exact
 *
 * Source: JCGM 100:2008, 4.3.3 and 4.3.7.
 * @example instrumentUncertainty({ unit: 'mm', stated: { value: 0.003, as: 'limit' } })  // ≈ 0.00000173
 */
export function instrumentUncertainty({
  unit,
  stated,
}: Pick<z.infer<typeof instrumentDescribedSchema>, 'unit' | 'stated'>): number {
  if (stated === undefined) return 0;
  return siFromRead(stated.value, unit) * shareOfStated[stated.as];
}
