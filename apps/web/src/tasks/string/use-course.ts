import { foldJob, foldOrders, foldStringing, type Stringing } from '@becket/journal';
import {
  orderPolicyOf,
  receivedTolerancesOf,
  type StringingCourse,
  stringingCourse,
  stringingFigures,
  stringsToGoOn,
} from '@becket/tasks';
import { useMemo } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useShop } from '../../desk/use-shop.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useSame } from '../../parts/use-same.ts';

/** What is noted while stringing, and what it changes nothing of: the plan is not worked out again for it. */
const isPlanned = (kind: string) => kind !== 'wire-on' && kind !== 'stringing-mishap';

/** The plan of the open job beside what is on, and what was noted while stringing. */
export function useCourse(): { readonly course: StringingCourse; readonly stringing: Stringing } {
  const { entries } = useDesk();
  const { allowances } = useShop();
  const language = useLanguage();
  const planned = useSame(entries.filter(({ fact }) => isPlanned(fact.kind)));
  const plan = useMemo(() => {
    const job = foldJob(planned);
    return {
      job,
      figures: stringingFigures(job, orderPolicyOf(allowances), language),
      bass: stringsToGoOn(foldOrders(planned), receivedTolerancesOf(allowances), language),
    };
  }, [planned, allowances, language]);
  return useMemo(() => {
    const { job, figures, bass } = plan;
    const stringing = foldStringing(entries);
    return { course: stringingCourse(job, { figures, bass, stringing }, language), stringing };
  }, [plan, entries, language]);
}
