import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { Papers } from '../../piano/papers.tsx';

/** The papers of what was found: the record itself, and what came to light after the strip. */
export function RecordPapersPlace() {
  const { say } = useLanguage();
  const { job } = useDesk();
  return (
    <Papers
      offers={[
        {
          paper: 'as-found-record',
          words: say('As-found record'),
          says: say('Every reading with its origin, what was seen, the photos, the gaps and the seal.'),
        },
        ...(job.damages.length === 0
          ? []
          : [
              {
                paper: 'change-order',
                words: say('Change order'),
                says: say('What came to light after the strip, and what it costs.'),
              } as const,
            ]),
      ]}
    />
  );
}
