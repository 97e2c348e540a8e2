import { z } from 'zod';
import { keySchema, stringNumberSchema } from './place.ts';

/** One string of one note. */
export const stringPlaceSchema = z.object({ key: keySchema, string: stringNumberSchema });
export type StringPlace = z.infer<typeof stringPlaceSchema>;

/**
 * One wire as it was found: which strings it makes, and on which hitch pin it turns.
 *
 * *Looped*: one wire round a hitch pin serving two pins, so two strings. *Tied*: one wire with its own hitch loop.
 * A later path that names a string stands in place of an earlier one that named it.
 */
export const wirePathSchema = z
  .object({
    kind: z.literal('wire-path'),
    v: z.literal(1),
    strings: z.array(stringPlaceSchema).min(1).max(2),
    joined: z.enum(['looped', 'tied', 'unknown']),
    /** The hitch pin's own name, where it matters: a number along the section. */
    hitchPin: z.string().min(1).max(40).optional(),
    /** The second pin, where the wire lies round two. */
    otherHitchPin: z.string().min(1).max(40).optional(),
    note: z.string().max(300).optional(),
    /** Why it was said or changed after the seal. */
    reason: z.string().min(1).max(500).optional(),
  })
  .refine(({ strings, joined }) => joined === 'unknown' || strings.length === (joined === 'looped' ? 2 : 1), {
    message: 'a looped wire serves two strings, a tied wire one',
  })
  .refine(
    ({ hitchPin, otherHitchPin }) => otherHitchPin === undefined || hitchPin !== undefined,
    'a second hitch pin needs the first',
  );
