import { lazy, Suspense } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { NotYet } from '../../parts/not-yet.tsx';
import { Papers } from '../../piano/papers.tsx';

const BassStrings = lazy(() =>
  import('./bass-strings.tsx').then(({ BassStrings: part }) => ({ default: part })),
);

/** Which bass strings may go on, and the sheets a piano is strung by; ticking off on the screen is not there yet. */
export function StringPage() {
  const { desk } = useDesk();
  const { say, sayNodes } = useLanguage();
  const link = (task: 'scale' | 'appraise', words: string, part?: string) => (
    <a href={hashOf({ place: 'job', job: desk.id, task, ...(part === undefined ? {} : { part }) })}>
      {words}
    </a>
  );
  return (
    <>
      <p className="notice">
        {say(
          'A string under tension that breaks or slips can blind. Wear eye protection, keep faces out of the line of the wire, and bring the whole piano up evenly.',
        )}
      </p>
      <Suspense fallback={<p>{say('Opening …')}</p>}>
        <BassStrings />
      </Suspense>
      <Papers
        offers={[
          { paper: 'stringing-sheets', words: say('Stringing sheets') },
          { paper: 'cut-list', words: say('Loop plan and cut list') },
        ]}
      />
      <NotYet
        task={say('Stringing on the screen')}
        missing={[
          say('what goes on next, and ticking it off'),
          say('torque spot checks on the way, and mishaps'),
        ]}
      >
        <p>
          {sayNodes(
            'The sheets above are worked out from the {scale} that was chosen, or else as it was found. Pins are logged as they go in under {pins}, and torque after stringing under {torque}.',
            {
              scale: link('scale', say('[of the piano] scale')),
              pins: link('appraise', say('Tuning pins'), 'pins'),
              torque: link('appraise', say('Pin torque'), 'torque'),
            },
          )}
        </p>
      </NotYet>
    </>
  );
}
