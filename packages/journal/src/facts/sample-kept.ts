import { z } from 'zod';
import { placeSchema } from './place.ts';

/** A piece of the old stringing kept in a labelled bag: the last witness. */
export const sampleKeptSchema = z.object({
  kind: z.literal('sample-kept'),
  v: z.literal(1),
  what: z.string().min(1).max(200),
  place: placeSchema,
  label: z.string().min(1).max(80),
  /** Why it was said or changed after the seal. */
  reason: z.string().min(1).max(500).optional(),
});
