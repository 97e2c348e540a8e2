import { z } from 'zod';
import { keySchema, stringNumberSchema } from './place.ts';

/** How a wound string is made, beyond its numbers. Without a string number it speaks for all strings of the note. */
export const windingDescribedSchema = z.object({
  kind: z.literal('winding-described'),
  v: z.literal(1),
  key: keySchema,
  string: stringNumberSchema.optional(),
  loopStyle: z.enum(['single loop', 'double loop', 'twisted loop', 'other', 'unknown']),
  /** Which way the winding runs, seen from the loop. */
  twist: z.enum(['left', 'right', 'unknown']),
  /** Why it was said or changed after the seal. */
  reason: z.string().min(1).max(500).optional(),
});
