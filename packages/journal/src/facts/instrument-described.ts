import { z } from 'zod';
import { readUnits } from './read-units.ts';

/** A measuring tool of the shop: the unit it shows and the smallest step it tells apart. */
export const instrumentDescribedSchema = z.object({
  kind: z.literal('instrument-described'),
  v: z.literal(1),
  /** Its name in this shop, which readings carry. */
  instrument: z.string().min(1).max(120),
  unit: z.enum(readUnits),
  /** Smallest step of the display, in `unit`. */
  resolution: z.number().positive(),
});
