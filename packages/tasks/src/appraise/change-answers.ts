import type { Job } from '@becket/journal';
import { type ChangeOrderTotals, changeOrderTotals } from '../found-after-strip.ts';

/** The change order by what the customer said: agreed, declined, and what still waits for an answer. */
export interface ChangeOrderByAnswer {
  readonly agreed: ChangeOrderTotals;
  readonly declined: ChangeOrderTotals;
  readonly waiting: ChangeOrderTotals;
}

/** Sums of the change order by answer. A line without an answer waits: silence is not agreement. */
export function changeOrderByAnswer({ damages, changeAnswers }: Job): ChangeOrderByAnswer {
  const answerTo = new Map(changeAnswers.map(({ damage, answer }) => [damage, answer]));
  const totalsOf = (wanted: 'agreed' | 'declined' | undefined) =>
    changeOrderTotals(damages.filter(({ entry }) => answerTo.get(entry) === wanted));
  return { agreed: totalsOf('agreed'), declined: totalsOf('declined'), waiting: totalsOf(undefined) };
}
