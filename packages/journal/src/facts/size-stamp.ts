import { z } from 'zod';
import { keySchema } from './place.ts';

/** A wire size stamped or written on the bridge or the plate. It says where a size begins or ends, in one lattice. */
export const sizeStampSchema = z.object({
  kind: z.literal('size-stamp'),
  v: z.literal(1),
  key: keySchema,
  on: z.enum(['bridge', 'plate', 'elsewhere']),
  /** As it stands there: '14½', '15', '0.95'. */
  text: z.string().min(1).max(40),
  /** Which lattice its number belongs to; 'unknown' leaves it to the readings. */
  lattice: z.enum(['US', 'metric', 'unknown']),
  says: z.enum(['starts here', 'ends here']),
  /** Why it was said or changed after the seal. */
  reason: z.string().min(1).max(500).optional(),
});
