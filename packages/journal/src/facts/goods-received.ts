import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { keySchema, stringNumberSchema } from './place.ts';
import { readUnits } from './read-units.ts';

/** What can be measured on a wound string before it is strung. */
export const receivedQuantities = [
  'core-diameter',
  'inner-layer-diameter',
  'over-all-diameter',
  'winding-length',
  'loop-to-winding',
  'hitch-loop-diameter',
] as const;
export type ReceivedQuantity = (typeof receivedQuantities)[number];

/** One delivery, whole or part of an order, with what was measured of it. */
export const goodsReceivedSchema = z.object({
  kind: z.literal('goods-received'),
  v: z.literal(1),
  order: ulidSchema,
  on: z.iso.date(),
  lines: z
    .array(z.object({ line: z.int().positive().max(5000), quantity: z.int().nonnegative().max(1e6) }))
    .max(5000),
  /** Measured on the strings as they came. A later reading of the same string and quantity stands in place of it. */
  measured: z
    .array(
      z.object({
        key: keySchema,
        string: stringNumberSchema,
        quantity: z.enum(receivedQuantities),
        value_m: z.number().positive().max(3),
        asRead: z.object({ value: z.number(), unit: z.enum(readUnits) }),
      }),
    )
    .max(2000),
  note: z.string().max(1000).optional(),
});
