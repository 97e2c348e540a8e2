import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { NotYet } from '../../parts/not-yet.tsx';
import { SaveJob } from '../../piano/save-job.tsx';

export function HandOverPage() {
  const { desk } = useDesk();
  return (
    <NotYet
      task="Hand over"
      missing={[
        'the record as strung, final torque and bearing',
        'cautions and aftercare for the owner',
        'the hand-over paper',
      ]}
    >
      <p>The whole job can be saved as one file at any time. Another device with Becket can bring it in.</p>
      <SaveJob job={desk.id} />
      <p>
        The as-found record can be downloaded from{' '}
        <a href={hashOf({ place: 'job', job: desk.id, task: 'order' })}>Order</a>.
      </p>
    </NotYet>
  );
}
