import { lazy, Suspense } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { Papers } from '../../piano/papers.tsx';
import { SaveJob } from '../../piano/save-job.tsx';

const HandOverPlace = lazy(() =>
  import('./hand-over-place.tsx').then(({ HandOverPlace: place }) => ({ default: place })),
);

/** What is open, the hand-over itself, its papers, and the job as one file. */
export function HandOverPage() {
  const { desk } = useDesk();
  const { say, sayNodes } = useLanguage();
  return (
    <>
      <Suspense fallback={<p>{say('Opening …')}</p>}>
        <HandOverPlace />
      </Suspense>
      <Papers
        offers={[
          {
            paper: 'hand-over-record',
            words: say('Hand-over record'),
            says: say('For the owner and the next technician; a draft until the piano is handed over.'),
          },
          {
            paper: 'settling-log',
            words: say('Settling log'),
            says: say('The passes, and the days to come.'),
          },
        ]}
      />
      <h2>{say('The whole job as one file')}</h2>
      <p>
        {say(
          'The whole job can be saved as one file at any time. Another device with Becket can bring it in.',
        )}
      </p>
      <SaveJob job={desk.id} />
      <p>
        {sayNodes('Passes and follow-ups stand under {place}.', {
          place: <a href={hashOf({ place: 'job', job: desk.id, task: 'settle' })}>{say('Settle')}</a>,
        })}
      </p>
    </>
  );
}
