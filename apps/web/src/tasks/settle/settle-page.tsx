import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { NotYet } from '../../parts/not-yet.tsx';

export function SettlePage() {
  const { desk } = useDesk();
  return (
    <NotYet
      task="Settle"
      missing={[
        'passes with pitch before and after',
        'how far to raise each section over its pitch, and the stop at the break limit',
        'follow-up dates and the settling log',
      ]}
    >
      <p>
        The share of the break load of every string stands in{' '}
        <a href={hashOf({ place: 'job', job: desk.id, task: 'scale' })}>Scale</a>: look there before a string
        is raised above its pitch.
      </p>
    </NotYet>
  );
}
