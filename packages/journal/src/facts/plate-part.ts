import { z } from 'zod';

/** A bar, a rest or a movable piece, with its distances from named points so that it can be put back. */
export const platePartSchema = z.object({
  kind: z.literal('plate-part'),
  v: z.literal(1),
  /** Its own name in this job: 'bar 2', 'string rest'. */
  part: z.string().min(1).max(80),
  section: z.string().min(1).max(60),
  isMovable: z.boolean(),
  distances: z.array(
    z.object({ from: z.string().min(1).max(120), distance_m: z.number().nonnegative().max(3) }),
  ),
  note: z.string().max(500).optional(),
  /** Why it was said or changed after the seal. */
  reason: z.string().min(1).max(500).optional(),
});
