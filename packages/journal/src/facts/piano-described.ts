import { z } from 'zod';
import { keySchema } from './place.ts';

/** The instrument. A later description stands in place of an earlier one. A field left out is unknown. */
export const pianoDescribedSchema = z
  .object({
    kind: z.literal('piano-described'),
    v: z.literal(1),
    form: z.enum(['grand', 'vertical']),
    /** Length of a grand, height of a vertical, as measured over the case. */
    size_m: z.number().positive().max(4).optional(),
    firstKey: keySchema,
    lastKey: keySchema,
    maker: z.string().max(200).optional(),
    model: z.string().max(200).optional(),
    serialNumber: z.string().max(100).optional(),
    year: z.int().min(1700).max(2200).optional(),
    /** The pitch the strings are meant for, A4. */
    referencePitch_hz: z.number().min(380).max(480),
    /** Why it was said or changed after the seal. */
    reason: z.string().min(1).max(500).optional(),
  })
  .refine((piano) => piano.firstKey < piano.lastKey, 'the compass needs its first key below its last key');
