import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';

/** One gap of the strip check, accepted by name and with a reason. */
export const gapAcceptedSchema = z.object({
  kind: z.literal('gap-accepted'),
  v: z.literal(1),
  /** The gap's own name, as the strip check gives it: 'wire-diameter/C#3'. */
  gap: z.string().min(1).max(200),
  reason: z.string().min(1).max(500),
});

/** Fixes the as-found record before the strip: digest over its canonical JSON, and how many entries it covers. */
export const sealedSchema = z.object({
  kind: z.literal('sealed'),
  v: z.literal(1),
  /** SHA-256 of the canonical JSON (RFC 8785) of the as-found facts, hexadecimal. */
  digest: z.string().regex(/^[0-9a-f]{64}$/),
  entries: z.int().positive(),
  /** Ids of the entries it covers, in journal order, so that a late entry from another device cannot pass as sealed. */
  covers: z.array(ulidSchema),
});
