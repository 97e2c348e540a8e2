import { z } from 'zod';
import { placeSchema } from './place.ts';

/** Positions on a photo are shares of its width and height, from the top left, so that marks survive any scaling. */
const pointSchema = z.object({ x: z.number().min(0).max(1), y: z.number().min(0).max(1) });

export const photoMarkSchema = z.discriminatedUnion('mark', [
  z.object({
    mark: z.literal('arrow'),
    from: pointSchema,
    to: pointSchema,
    text: z.string().max(200).optional(),
  }),
  z.object({ mark: z.literal('label'), at: pointSchema, text: z.string().min(1).max(200) }),
  /** A length in the picture; `known_m` where it was measured, which makes it the scale bar of the photo. */
  z.object({
    mark: z.literal('distance'),
    from: pointSchema,
    to: pointSchema,
    known_m: z.number().positive().optional(),
  }),
]);
export type PhotoMark = z.infer<typeof photoMarkSchema>;

/** As found before the strip; what the strip laid bare; the new work. */
export const photoStages = ['as found', 'after the strip', 'as strung'] as const;
export type PhotoStage = (typeof photoStages)[number];

/**
 * A photo tied to a place. The picture itself is a blob named by its digest, re-encoded on the device without
 * location data; marks lie on top and never change it. A later photo fact of the same digest stands in its place.
 */
export const photoSchema = z.object({
  kind: z.literal('photo'),
  v: z.literal(1),
  /** SHA-256 of the blob, hexadecimal. */
  digest: z.string().regex(/^[0-9a-f]{64}$/),
  mediaType: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  bytes: z.int().positive(),
  width: z.int().positive(),
  height: z.int().positive(),
  place: placeSchema,
  shows: z.string().max(300).optional(),
  marks: z.array(photoMarkSchema).max(100),
  /** What it is a picture of; left out, it is one of the piano as found. */
  stage: z.enum(photoStages).optional(),
  /** Why it was added or changed after the seal. */
  reason: z.string().min(1).max(500).optional(),
});
