import { useLanguage } from '../../parts/language.tsx';
import { Problem } from '../../parts/problem.tsx';
import type { Planning } from './propose-state.ts';

interface Props {
  readonly planning: Planning;
  /** Whether the sizes of the old wire are still being found. */
  readonly isFindingSizes: boolean;
}

/** How far the planning is, and why there is no scale where there is none. */
export function PlanningProgress({ planning, isFindingSizes }: Props) {
  const { say } = useLanguage();
  return (
    <>
      <div role="status">
        {isFindingSizes && <p>{say('Finding the sizes that the old wire most probably had …')}</p>}
        {planning.is === 'beginning' && <p>{say('Working out what each note may have …')}</p>}
        {planning.is === 'step' && (
          <p>
            <progress max={planning.of} value={planning.done} />{' '}
            {say('{done} of {of} steps', { done: planning.done, of: planning.of })}
          </p>
        )}
        {planning.is === 'stopped' && <p>{say('Stopped. Nothing was changed.')}</p>}
      </div>
      {(planning.is === 'clash' || planning.is === 'failed') && <Problem says={planning.sentence} />}
    </>
  );
}
