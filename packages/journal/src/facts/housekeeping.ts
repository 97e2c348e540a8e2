import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';

/** Takes an earlier entry out of the state. The entry itself stays in the journal. Undo is a withdrawal. */
export const withdrawnSchema = z.object({
  kind: z.literal('withdrawn'),
  v: z.literal(1),
  entry: ulidSchema,
  reason: z.string().min(1).max(500),
});

/** Where a batch of readings came from, and which cells were left out and why. */
export const readingsImportedSchema = z.object({
  kind: z.literal('readings-imported'),
  v: z.literal(1),
  file: z.string().min(1).max(300),
  /** SHA-256 of the file's bytes, hexadecimal. */
  digest: z.string().regex(/^[0-9a-f]{64}$/),
  rows: z.int().nonnegative(),
  readings: z.int().nonnegative(),
  /** Cells that were changed or left out by the person who brought the file in. */
  changedCells: z.array(
    z.object({
      row: z.int().positive(),
      column: z.string(),
      found: z.string(),
      used: z.string().nullable(),
      reason: z.string(),
    }),
  ),
});
