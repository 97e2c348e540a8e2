import { z } from 'zod';

/**
 * A figure of the shop's own in place of a starting one: how much more is bought than is strung, or by how much a delivery
 * may differ. The name says which, and its unit: 'becket_m', 'wire-spoilage-share'. A later one of the same name stands in
 * place of an earlier one. A name this program does not know is kept and has no effect.
 */
export const allowanceSetSchema = z.object({
  kind: z.literal('allowance-set'),
  v: z.literal(1),
  name: z.string().min(1).max(60),
  value: z.number().nonnegative().max(1e4),
  /** Where the figure comes from, in the shop's own words. */
  source: z.string().trim().min(1).max(300),
});
