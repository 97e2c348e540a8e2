import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { currencySchema } from './estimate.ts';
import { keySchema, stringNumberSchema } from './place.ts';
import { stockItemSchema } from './stock-item.ts';

/** One line of an order. */
export const orderLineSchema = z.object({
  /** Its number on the paper, from 1. */
  line: z.int().positive().max(5000),
  what: z.string().min(1).max(300),
  item: stockItemSchema.optional(),
  article: z.string().min(1).max(80).optional(),
  /** How many packs, coils or strings; what one is stands in `unit`. */
  quantity: z.int().positive().max(1e6),
  unit: z.string().min(1).max(60),
  /** What one pack holds, in the item's own unit; left out where the line is no item of the stock. */
  packHolds: z.int().positive().max(1e9).optional(),
  priceMinorUnits: z.int().nonnegative().max(1e12).optional(),
});

/** An order as it was written. It never changes: what happens to it are further entries. */
export const orderDraftedSchema = z.object({
  kind: z.literal('order-drafted'),
  v: z.literal(1),
  what: z.enum(['bass strings', 'supplies']),
  supplier: z.string().trim().min(1).max(120),
  currency: currencySchema.optional(),
  lines: z.array(orderLineSchema).min(1).max(5000),
  /** When the goods are needed. */
  neededOn: z.iso.date().optional(),
  /** SHA-256 of the strings it was made from, so that a later change of the scale is noticed. */
  scaleDigest: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .optional(),
  /** What each string was ordered as: what comes is measured against this, whatever the scale has become since. */
  bassStrings: z
    .array(
      z.object({
        key: keySchema,
        string: stringNumberSchema,
        lengths_m: z.record(z.string().min(1).max(60), z.number().nonnegative().max(5)),
      }),
    )
    .max(300)
    .optional(),
  note: z.string().max(1000).optional(),
});

export const orderSteps = ['sent', 'confirmed', 'cancelled'] as const;

/** What became of an order. Deliveries are told by what was received. */
export const orderMovedSchema = z.object({
  kind: z.literal('order-moved'),
  v: z.literal(1),
  order: ulidSchema,
  to: z.enum(orderSteps),
  on: z.iso.date(),
  /** The day the supplier promised. */
  expectedOn: z.iso.date().optional(),
  note: z.string().max(1000).optional(),
});

/** Somebody answers by name for a check that did not pass, or for a difference in what was delivered. */
export const orderCheckSignedSchema = z.object({
  kind: z.literal('order-check-signed'),
  v: z.literal(1),
  /** Which check of which string: 'C1/2/winding-length'. */
  check: z.string().min(1).max(200),
  /** What it said when it was signed: another sentence needs another signature. */
  sentence: z.string().min(1).max(1000),
  name: z.string().min(1).max(200),
  reason: z.string().min(1).max(500),
});
