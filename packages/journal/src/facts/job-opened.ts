import { z } from 'zod';

/** The first entry of every job. A later one stands in place of it, so that a name can be put right. */
export const jobOpenedSchema = z.object({
  kind: z.literal('job-opened'),
  v: z.literal(1),
  title: z.string().min(1).max(200),
  customer: z.string().max(200).optional(),
  /** What the customer asked for, in her own words. */
  asks: z.string().min(1).max(1000).optional(),
});
