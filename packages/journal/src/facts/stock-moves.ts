import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { stockItemSchema } from './stock-item.ts';

const quantity = z.int().positive().max(1e9);
const note = z.string().min(1).max(500).optional();

/** What lay on the shelf when somebody counted or weighed it. Stands in place of everything before it. */
export const stockCountedSchema = z.object({
  kind: z.literal('stock-counted'),
  v: z.literal(1),
  item: stockItemSchema,
  quantity: z.int().nonnegative().max(1e9),
  note,
});

/** What came in. */
export const stockReceivedSchema = z.object({
  kind: z.literal('stock-received'),
  v: z.literal(1),
  item: stockItemSchema,
  quantity,
  supplier: z.string().min(1).max(120).optional(),
  /** The order it came with. */
  order: ulidSchema.optional(),
  /** The entry of the delivery, so that both are taken back together. */
  delivery: ulidSchema.optional(),
  note,
});

/** What was taken from the shelf. Taken for a job, it uses up what was reserved for that job. */
export const stockUsedSchema = z.object({
  kind: z.literal('stock-used'),
  v: z.literal(1),
  item: stockItemSchema,
  quantity,
  job: ulidSchema.optional(),
  note,
});

/** What is set aside for a job. Nothing leaves the shelf by it. */
export const stockReservedSchema = z.object({
  kind: z.literal('stock-reserved'),
  v: z.literal(1),
  item: stockItemSchema,
  quantity,
  job: ulidSchema,
  /** As it was called then: another device may not have that job. */
  jobTitle: z.string().min(1).max(200),
  note,
});

/** Ends a reservation. */
export const reservationReleasedSchema = z.object({
  kind: z.literal('reservation-released'),
  v: z.literal(1),
  reservation: ulidSchema,
  reason: z.string().min(1).max(500),
});

/** Below this the item is bought again. 0 says that it need not be kept. */
export const stockMinimumSetSchema = z.object({
  kind: z.literal('stock-minimum-set'),
  v: z.literal(1),
  item: stockItemSchema,
  minimum: z.int().nonnegative().max(1e9),
});
