import type { InferredWireSizes } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { inferSizesAway } from '../../worker/sizes-away.ts';

export type Sizes =
  | { readonly is: 'on the way' }
  | { readonly is: 'there'; readonly sizes: InferredWireSizes | undefined };

/** The sizes that the old wire most probably had, worked out away from the screen. */
export function useInferredSizes(): Sizes {
  const { job } = useDesk();
  const [answered, setAnswered] = useState<{ of: typeof job; sizes: InferredWireSizes | undefined }>();
  const language = useLanguage();
  useEffect(
    () => inferSizesAway(job, undefined, (sizes) => setAnswered({ of: job, sizes }), language),
    [job, language],
  );
  return useMemo(
    () => (answered?.of === job ? { is: 'there', sizes: answered.sizes } : { is: 'on the way' }),
    [answered, job],
  );
}
