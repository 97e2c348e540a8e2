import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';

const minorUnits = z.int().min(-1e12).max(1e12);
export const currencySchema = z.string().regex(/^[A-Z]{3}$/);

/** One line of an estimate. Prices are in whole minor units; quantities in whole thousandths, so that sums are exact. */
export const estimateLineSchema = z.object({
  /** Stays the same from one version to the next: 'stringing', 'bass-set'. */
  id: z.string().min(1).max(80),
  group: z.enum(['labour', 'materials', 'other']),
  what: z.string().min(1).max(300),
  amount: z.discriminatedUnion('by', [
    z.object({
      by: z.literal('time'),
      minutes: z.int().nonnegative().max(100_000),
      hourlyRateMinorUnits: minorUnits,
    }),
    z.object({
      by: z.literal('quantity'),
      quantity_thousandths: z.int().nonnegative().max(1e9),
      unit: z.string().min(1).max(30),
      unitPriceMinorUnits: minorUnits,
    }),
  ]),
  /** Hundredths of a per cent: 1900 is 19 %. */
  taxRate_basisPoints: z.int().min(0).max(10_000),
  /** Set for a conditional line: it is only done if this is found. */
  ifFound: z.string().min(1).max(300).optional(),
});
export type EstimateLine = z.infer<typeof estimateLineSchema>;

/** A whole version of the estimate. Nothing of an earlier version is changed. */
export const estimateMadeSchema = z.object({
  kind: z.literal('estimate-made'),
  v: z.literal(1),
  version: z.int().positive(),
  currency: currencySchema,
  pricesIncludeTax: z.boolean(),
  lines: z.array(estimateLineSchema).min(1).max(300),
  validUntil: z.iso.date().optional(),
  workingDays: z.number().nonnegative().max(1000).optional(),
  note: z.string().max(2000).optional(),
});

/** What the customer said to one version. */
export const estimateAnsweredSchema = z.object({
  kind: z.literal('estimate-answered'),
  v: z.literal(1),
  estimate: ulidSchema,
  answer: z.enum(['accepted', 'declined']),
  name: z.string().min(1).max(200),
  on: z.iso.date(),
  /** Ids of the conditional lines that may be done without asking again. */
  conditionalLines: z.array(z.string()).max(300),
  note: z.string().max(1000).optional(),
});

/** What the customer said to one line of the change order. */
export const changeAnsweredSchema = z.object({
  kind: z.literal('change-answered'),
  v: z.literal(1),
  damage: ulidSchema,
  answer: z.enum(['agreed', 'declined']),
  name: z.string().min(1).max(200),
  on: z.iso.date(),
  note: z.string().max(1000).optional(),
});

/** Time that a step of labour really took: what the shop's next estimate learns from. */
export const hoursWorkedSchema = z.object({
  kind: z.literal('hours-worked'),
  v: z.literal(1),
  /** Id of the labour line. Not `step`: an entry has its own. */
  labourStep: z.string().min(1).max(80),
  minutes: z.int().positive().max(100_000),
  on: z.iso.date().optional(),
  /** True when the step is finished: only then is its time learned from. */
  isFinished: z.boolean(),
  note: z.string().max(500).optional(),
});
