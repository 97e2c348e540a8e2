import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { NotYet } from '../../parts/not-yet.tsx';

export function StringPage() {
  const { desk } = useDesk();
  return (
    <NotYet
      task="String"
      missing={[
        'what goes on next: size, cut length, looped or tied, pins',
        'ticking off strings, torque spot checks, mishaps',
        'stringing sheets and the cut list',
      ]}
    >
      <p>
        The sizes and lengths as they were found stand in{' '}
        <a href={hashOf({ place: 'job', job: desk.id, task: 'record' })}>Record</a>, and can be downloaded
        from <a href={hashOf({ place: 'job', job: desk.id, task: 'order' })}>Order</a>.
      </p>
      <p className="notice">
        A string under tension that breaks or slips can blind. Wear eye protection, keep faces out of the line
        of the wire, and bring the whole piano up evenly.
      </p>
    </NotYet>
  );
}
