import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { NotYet } from '../../parts/not-yet.tsx';
import { Papers } from '../../piano/papers.tsx';

/** The sheets a piano is strung by; ticking off on the screen is not there yet. */
export function StringPage() {
  const { desk } = useDesk();
  return (
    <>
      <p className="notice">
        A string under tension that breaks or slips can blind. Wear eye protection, keep faces out of the line
        of the wire, and bring the whole piano up evenly.
      </p>
      <Papers
        offers={[
          { paper: 'stringing-sheets', words: 'Stringing sheets' },
          { paper: 'cut-list', words: 'Loop plan and cut list' },
        ]}
      />
      <NotYet
        task="Stringing on the screen"
        missing={['what goes on next, and ticking it off', 'torque spot checks on the way, and mishaps']}
      >
        <p>
          The sheets above are worked out from the{' '}
          <a href={hashOf({ place: 'job', job: desk.id, task: 'scale' })}>scale</a> that was chosen, or else
          as it was found. Pins are logged as they go in under{' '}
          <a href={hashOf({ place: 'job', job: desk.id, task: 'appraise', part: 'pins' })}>Tuning pins</a>,
          and torque after stringing under{' '}
          <a href={hashOf({ place: 'job', job: desk.id, task: 'appraise', part: 'torque' })}>Pin torque</a>.
        </p>
      </NotYet>
    </>
  );
}
