import { z } from 'zod';

export const verdicts = ['go', 'go with conditions', 'stop'] as const;
export type Verdict = (typeof verdicts)[number];

/** What was decided about the job, by whom (the entry says), and on what conditions. The latest stands. */
export const decisionMadeSchema = z
  .object({
    kind: z.literal('decision-made'),
    v: z.literal(1),
    verdict: z.enum(verdicts),
    conditions: z.array(z.string().min(1).max(500)).max(40),
    because: z.string().min(1).max(2000),
    /** What the program's own reasons came to when it was decided. */
    advised: z.enum(verdicts),
  })
  .refine(
    ({ verdict, conditions }) => verdict !== 'go with conditions' || conditions.length > 0,
    'a go with conditions needs at least one condition',
  );
