import { z } from 'zod';
import { absences } from './answer.ts';

/** The most that a soft part can measure. Room for a slip of the pen, not for a slip of the unit. */
export const softPartMost = { thickness_m: 0.03, length_m: 3, width_m: 0.2 } as const;

/** A felt, a braid or a set of punchings of one section, or what was found instead of it. */
export const softPartSchema = z.object({
  kind: z.literal('soft-part'),
  v: z.literal(1),
  part: z.enum(['stringing braid', 'felt', 'punchings', 'pin bushings']),
  section: z.string().min(1).max(60),
  answer: z.discriminatedUnion('is', [
    z.object({
      is: z.literal('known'),
      thickness_m: z.number().positive().max(softPartMost.thickness_m).optional(),
      length_m: z.number().positive().max(softPartMost.length_m).optional(),
      width_m: z.number().positive().max(softPartMost.width_m).optional(),
      colour: z.string().max(60).optional(),
      where: z.string().max(300).optional(),
    }),
    z.object({ is: z.enum(absences), reason: z.string().min(1).max(500).optional() }),
  ]),
  /** Why it was said or changed after the seal. */
  reason: z.string().min(1).max(500).optional(),
});
