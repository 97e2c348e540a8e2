import { foldOrders, type Orders } from '@becket/journal';
import { useEffect, useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { countSuppliesAway, type SuppliesAnswer } from '../../worker/supplies-away.ts';

/** What the job needs, once the worker has counted it; what was counted before stands until then. */
export function useSupplies(): SuppliesAnswer | undefined {
  const { job } = useDesk();
  const [answer, setAnswer] = useState<SuppliesAnswer>();
  useEffect(() => countSuppliesAway(job, setAnswer), [job]);
  return answer;
}

/** The orders of the open job. */
export function useOrders(): Orders {
  const { entries } = useDesk();
  return useMemo(() => foldOrders(entries), [entries]);
}
