import { z } from 'zod';

/** Key numbers run from 1 (A0) to 88 (C8); a piano may have fewer. */
export const keySchema = z.int().min(1).max(88);

/** Which string of a unison, counted from the bass side: 1, 2 or 3. */
export const stringNumberSchema = z.int().min(1).max(3);

/** Where on the piano a fact belongs. Everything is optional; a string needs its key. */
export const placeSchema = z
  .object({
    key: keySchema.optional(),
    string: stringNumberSchema.optional(),
    section: z.string().min(1).max(60).optional(),
    /** A named point along a string or a part: 'near the agraffe', 'at the strut'. */
    point: z.string().min(1).max(120).optional(),
  })
  .refine(
    (place) => place.string === undefined || place.key !== undefined,
    'a string needs the key it belongs to',
  );

export type Place = z.infer<typeof placeSchema>;
