import { message } from '@becket/core';
import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { placeSchema } from './place.ts';
import { readingQuantityNames } from './reading-quantities.ts';

/**
 * What was found where a number cannot be had. The three are different things:
 * *unknown* (it is there, nobody could read it), *none* (it is not there), *does not apply*.
 */
export const absences = ['unknown', 'none', 'does not apply'] as const;

/** Said of a quantity at a place where there is no reading. */
export const readingAbsentSchema = z.object({
  kind: z.literal('reading-absent'),
  v: z.literal(1),
  quantity: z.enum(readingQuantityNames),
  place: placeSchema,
  answer: z.enum(absences),
  reason: z.string().min(1).max(500).optional(),
});

/** Things of the as-found record that are described in words, section by section. */
export const observedThings = {
  felts: message('felts and braid'),
  punchings: message('punchings'),
  bars: message('bars and rests'),
  loops: message('loops and ties'),
  'hitch-pins': message('hitch pins'),
  dampers: message('damper order'),
  bearing: message('bearing'),
  spacing: message('string spacing'),
  stamps: message('size stamps on plate and bridge'),
  remarks: message('remarks'),
} as const;
export type ObservedThing = keyof typeof observedThings;
export const observedThingNames = Object.keys(observedThings) as [ObservedThing, ...ObservedThing[]];

/** One thing looked at, in words; or what was found instead of it. */
export const observationSchema = z.object({
  kind: z.literal('observation'),
  v: z.literal(1),
  thing: z.enum(observedThingNames),
  place: placeSchema,
  answer: z.discriminatedUnion('is', [
    z.object({ is: z.literal('known'), text: z.string().min(1).max(2000) }),
    z.object({ is: z.enum(absences), reason: z.string().min(1).max(500).optional() }),
  ]),
  replaces: ulidSchema.optional(),
  reason: z.string().min(1).max(500).optional(),
});
