import { z } from 'zod';

/** The first entry of every job. */
export const jobOpenedSchema = z.object({
  kind: z.literal('job-opened'),
  v: z.literal(1),
  title: z.string().min(1).max(200),
  customer: z.string().max(200).optional(),
});
