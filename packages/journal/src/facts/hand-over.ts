import { z } from 'zod';

const sentence = z.string().min(1).max(1000);

/** What was left as it was, and why. */
export const leftAloneSchema = z.object({ what: sentence, because: sentence });

/** Where what was strung is not what was chosen; without a reason nobody gave one. */
export const deviationSchema = z.object({ what: sentence, because: sentence.optional() });

/**
 * The piano is handed over. What was open and what deviates is kept as it was said then: later readings do not change what
 * its owner was told.
 */
export const handedOverSchema = z.object({
  kind: z.literal('handed-over'),
  v: z.literal(1),
  to: z.string().min(1).max(200),
  on: z.iso.date(),
  /** Who answers for it by name. */
  signedBy: z.string().min(1).max(200),
  cautions: z.array(sentence).max(40),
  aftercare: z.object({
    /** The air it should stand in, in words; left out where nothing was said. */
    climate: sentence.optional(),
    /** Days on which it should be tuned. */
    tuneOn: z.array(z.iso.date()).max(20),
    further: sentence.optional(),
  }),
  leftAlone: z.array(leftAloneSchema).max(100),
  deviations: z.array(deviationSchema).max(300),
  /** What was not known or not done on that day, each by name. */
  stillOpen: z.array(sentence).max(300),
  /** Digest of the strings as they were known then: SHA-256, hexadecimal. */
  scaleDigest: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .optional(),
  note: z.string().max(2000).optional(),
});
