import type { PassPlan, Settling } from '@becket/journal';

/** What the settling log prints: the passes as they were recorded, and what the next one should be. */
export interface SettlingFigures {
  readonly settling: Settling;
  readonly plan: PassPlan;
  /** What speaks for care with the figures of the plan, one sentence each. */
  readonly remarks: readonly string[];
  /** YYYY-MM-DD: a follow-up planned for a day before it is late. */
  readonly today: string;
}
