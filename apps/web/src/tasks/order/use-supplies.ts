import { foldOrders, type Orders } from '@becket/journal';
import { orderPolicyOf } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useShop } from '../../desk/use-shop.ts';
import { useLanguage } from '../../parts/language.tsx';
import { countSuppliesAway, type SuppliesAnswer } from '../../worker/supplies-away.ts';

/** What the job needs, once the worker has counted it; what was counted before stands until then. */
export function useSupplies(): SuppliesAnswer | undefined {
  const { job } = useDesk();
  const language = useLanguage();
  const { allowances } = useShop();
  // The same figures are the same policy, however often the shop is read: nothing is counted again for it.
  const figures = JSON.stringify([...allowances].map(([name, { value, source }]) => [name, value, source]));
  // biome-ignore lint/correctness/useExhaustiveDependencies: the figures are what the allowances say
  const policy = useMemo(() => orderPolicyOf(allowances), [figures]);
  const [answer, setAnswer] = useState<SuppliesAnswer>();
  useEffect(() => countSuppliesAway({ job, policy }, setAnswer, language), [job, policy, language]);
  return answer;
}

/** The orders of the open job. */
export function useOrders(): Orders {
  const { entries } = useDesk();
  return useMemo(() => foldOrders(entries), [entries]);
}
