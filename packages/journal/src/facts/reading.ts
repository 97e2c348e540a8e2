import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { placeSchema } from './place.ts';
import { readUnits } from './read-units.ts';
import { readingQuantityNames } from './reading-quantities.ts';

export const origins = ['measured', 'stamped', 'copied', 'inferred'] as const;
export const stages = ['as found', 'as strung'] as const;

/** What the hand feels while a pin turns. Common practice, no source. */
export const pinFeels = ['holds', 'creeps', 'jumpy', 'spongy'] as const;

export const stringStates = ['on', 'let down', 'off', 'unknown'] as const;
/** How the wire lay under the gauge: rust adds to a diameter, rubbing it off takes wire with it. */
export const wireSurfaces = ['bright', 'corroded', 'cleaned'] as const;

export const conditionSchema = z.object({
  strings: z.enum(stringStates),
  surface: z.enum(wireSurfaces).optional(),
  /** For torque: the way the pin was turned. */
  turning: z.enum(['sharp', 'flat']).optional(),
  relativeHumidity_percent: z.number().min(0).max(100).optional(),
  temperature_c: z.number().min(-30).max(60).optional(),
});

/**
 * One measured value, with unit, place, instrument, condition and origin.
 *
 * `replaces` names the entry that this one corrects; `reason` says why. Both stay in the journal.
 * Quantities that a value can be doubted against are in `reading-quantities`.
 */
export const readingSchema = z
  .object({
    kind: z.literal('reading'),
    v: z.literal(1),
    quantity: z.enum(readingQuantityNames),
    place: placeSchema,
    value_si: z.number(),
    asRead: z.object({ value: z.number(), unit: z.enum(readUnits) }),
    origin: z.enum(origins),
    stage: z.enum(stages),
    condition: conditionSchema.optional(),
    instrument: z.string().max(120).optional(),
    /** For bearing and crown: the span the value was read over, and whether the strings were pressing on the board. */
    span_m: z.number().positive().max(3).optional(),
    loaded: z.boolean().optional(),
    /** Standard uncertainty stated for this reading, SI, where the instrument or the reader gave one. */
    uncertainty_si: z.number().positive().optional(),
    /** For torque: what the hand felt. */
    feel: z.enum(pinFeels).optional(),
    replaces: ulidSchema.optional(),
    reason: z.string().min(1).max(500).optional(),
  })
  .refine(
    (reading) => reading.replaces === undefined || reading.reason !== undefined,
    'a correction needs its reason',
  );
