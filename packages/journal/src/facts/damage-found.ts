import { z } from 'zod';
import { placeSchema } from './place.ts';

/** How much a damage weighs for the work. Common practice, no source. */
export const damageGravities = ['keep an eye on it', 'mend before stringing', 'stop the work'] as const;

/**
 * Damage that could not be seen before the strip, with what it would take to mend it: one line of a change order.
 * The customer decides; nothing of it is agreed until they have said so.
 */
export const damageFoundSchema = z
  .object({
    kind: z.literal('damage-found'),
    v: z.literal(1),
    place: placeSchema,
    what: z.string().min(1).max(1000),
    gravity: z.enum(damageGravities),
    whatToDo: z.string().min(1).max(1000),
    /** SHA-256 of a photo of this job, hexadecimal. */
    photo: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .optional(),
    /** Whole minor units of `currency`; left out while nobody has priced it, which is not the same as 0. */
    priceMinorUnits: z.int().nonnegative().optional(),
    /** ISO 4217, such as 'EUR'. */
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/)
      .optional(),
    /** Working days it adds; left out while nobody has said. */
    days: z.number().nonnegative().max(1000).optional(),
    /** Why it did not show before the strip. */
    reason: z.string().min(1).max(500),
  })
  .refine(
    ({ priceMinorUnits, currency }) => (priceMinorUnits === undefined) === (currency === undefined),
    'a price needs its currency, and a currency its price',
  );
