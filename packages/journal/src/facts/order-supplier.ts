import { z } from 'zod';
import { currencySchema } from './estimate.ts';
import { stockItemSchema } from './stock-item.ts';

const leadTime_days = z.int().nonnegative().max(730);

/** Somebody the shop buys from. A later description of the same name stands in place of an earlier one. */
export const supplierDescribedSchema = z.object({
  kind: z.literal('supplier-described'),
  v: z.literal(1),
  supplier: z.string().trim().min(1).max(120),
  /** Calendar days from order to delivery; left out while nobody has said. */
  leadTime_days: leadTime_days.optional(),
  contact: z.string().max(500).optional(),
  note: z.string().max(500).optional(),
});

/** One thing a supplier sells, as it is sold. */
export const priceLineSchema = z.object({
  /** The supplier's own number for it. */
  article: z.string().min(1).max(80),
  item: stockItemSchema,
  /** What one pack holds: wire by mass or by length, everything else in the unit of its item. */
  pack: z.discriminatedUnion('by', [
    z.object({ by: z.literal('coil mass'), mass_kg: z.number().positive().max(1000) }),
    z.object({ by: z.literal('coil length'), length_m: z.number().positive().max(1e5) }),
    z.object({ by: z.literal('piece'), length_m: z.number().positive().max(100) }),
    z.object({ by: z.literal('count'), count: z.int().positive().max(1e6) }),
  ]),
  /** Of one pack, whole minor units of the list's currency. */
  priceMinorUnits: z.int().nonnegative().max(1e12),
  /** Where it differs from the supplier's. */
  leadTime_days: leadTime_days.optional(),
});
export type PriceLine = z.infer<typeof priceLineSchema>;

/** A supplier's price list, whole. A later list of the same supplier stands in place of an earlier one. */
export const priceListKeptSchema = z.object({
  kind: z.literal('price-list-kept'),
  v: z.literal(1),
  supplier: z.string().trim().min(1).max(120),
  currency: currencySchema,
  file: z.string().min(1).max(300),
  /** SHA-256 of the file's bytes, hexadecimal. */
  digest: z.string().regex(/^[0-9a-f]{64}$/),
  lines: z.array(priceLineSchema).min(1).max(5000),
});
