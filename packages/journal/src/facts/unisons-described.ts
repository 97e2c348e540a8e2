import { z } from 'zod';
import { keySchema } from './place.ts';
import { windings } from './section-described.ts';

/** How the notes of a run of keys are strung: strings to the note, plain or wound, layers of winding. */
export const unisonsDescribedSchema = z
  .object({
    kind: z.literal('unisons-described'),
    v: z.literal(1),
    firstKey: keySchema,
    lastKey: keySchema,
    strings: z.int().min(1).max(3),
    winding: z.enum(windings),
    /** Layers of winding; 0 for a plain string. */
    layers: z.int().min(0).max(2),
    reason: z.string().min(1).max(500).optional(),
  })
  .refine((run) => run.firstKey <= run.lastKey, 'a run of notes needs its first key at or below its last key')
  .refine(
    (run) => (run.winding === 'plain') === (run.layers === 0),
    'a plain string has 0 layers, a wound string 1 or 2',
  );
