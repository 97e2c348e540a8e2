import { foldSettling, type PassPlan, passPlan, type Settling, settlingLimits } from '@becket/journal';
import { useMemo, useRef } from 'react';
import { useDesk } from '../../desk/use-desk.ts';

/** How this piano settles, and what the next pass should be. The limits are worked out anew only when a string changes. */
export function useSettling(): { readonly settling: Settling; readonly plan: PassPlan } {
  const { job, entries } = useDesk();
  const settling = useMemo(() => foldSettling(entries), [entries]);
  const strings = useSame([
    job.piano,
    job.chosenScale,
    settling.limit,
    ...job.sections,
    ...job.readings,
    ...job.absences,
    ...job.proposals,
    ...[...job.unisons.values()].map(({ entry }) => entry),
  ]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: of the job only its strings have a part in the limits
  const limits = useMemo(() => settlingLimits(job, settling.limit), [strings]);
  return { settling, plan: useMemo(() => passPlan(job, settling, limits), [job, settling, limits]) };
}

/** The list that was there before, as long as it holds the same things. */
function useSame(list: readonly unknown[]): readonly unknown[] {
  const kept = useRef(list);
  const isSame =
    kept.current.length === list.length && kept.current.every((one, index) => one === list[index]);
  if (!isSame) kept.current = list;
  return kept.current;
}
