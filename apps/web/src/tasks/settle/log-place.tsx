import { useLanguage } from '../../parts/language.tsx';
import { Papers } from '../../piano/papers.tsx';

/** The settling log as a paper. */
export function LogPlace() {
  const { say } = useLanguage();
  return (
    <Papers
      offers={[
        {
          paper: 'settling-log',
          words: say('Settling log'),
          says: say(
            'Passes, chart, next overpull, follow-ups; its last page has rows to fill in at the piano.',
          ),
        },
      ]}
    />
  );
}
