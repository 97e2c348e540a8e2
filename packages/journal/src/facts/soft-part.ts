import { z } from 'zod';
import { absences } from './answer.ts';

/** A felt, a braid or a set of punchings of one section, or what was found instead of it. */
export const softPartSchema = z.object({
  kind: z.literal('soft-part'),
  v: z.literal(1),
  part: z.enum(['stringing braid', 'felt', 'punchings', 'pin bushings']),
  section: z.string().min(1).max(60),
  answer: z.discriminatedUnion('is', [
    z.object({
      is: z.literal('known'),
      thickness_m: z.number().positive().max(0.03).optional(),
      length_m: z.number().positive().max(3).optional(),
      width_m: z.number().positive().max(0.2).optional(),
      colour: z.string().max(60).optional(),
      where: z.string().max(300).optional(),
    }),
    z.object({ is: z.enum(absences), reason: z.string().min(1).max(500).optional() }),
  ]),
  /** Why it was said or changed after the seal. */
  reason: z.string().min(1).max(500).optional(),
});
