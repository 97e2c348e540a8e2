import { z } from 'zod';
import { keySchema } from './place.ts';

export const frontTerminations = ['agraffe', 'capo', 'pressure bar', 'plate edge', 'unknown'] as const;
export const windings = ['plain', 'wound'] as const;

/**
 * A run of notes between plate struts, on one bridge, with one kind of termination.
 * A later description of the same name stands in place of an earlier one.
 */
export const sectionDescribedSchema = z
  .object({
    kind: z.literal('section-described'),
    v: z.literal(1),
    section: z.string().min(1).max(60),
    firstKey: keySchema,
    lastKey: keySchema,
    /** The bridge's name in this job: 'bass', 'treble'; 'unknown' until somebody has looked. */
    bridge: z.string().min(1).max(60),
    frontTermination: z.enum(frontTerminations),
    reason: z.string().min(1).max(500).optional(),
  })
  .refine(
    (section) => section.firstKey <= section.lastKey,
    'a section needs its first key at or below its last key',
  );
