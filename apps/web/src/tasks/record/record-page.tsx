import { lazy } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { progressOf } from './grid.ts';
import { GridPlace } from './grid-place.tsx';
import './record.css';

const SectionsPlace = lazy(() =>
  import('./sections-place.tsx').then(({ SectionsPlace: place }) => ({ default: place })),
);
const SeenPlace = lazy(() => import('./seen-place.tsx').then(({ SeenPlace: place }) => ({ default: place })));
const BringInPlace = lazy(() =>
  import('./bring-in-place.tsx').then(({ BringInPlace: place }) => ({ default: place })),
);
const StripPlace = lazy(() =>
  import('./strip-place.tsx').then(({ StripPlace: place }) => ({ default: place })),
);

/** The parts of Record: name in the address, words on the screen. */
const parts = {
  readings: 'Readings',
  sections: 'Sections',
  seen: 'Things seen',
  table: 'Bring in a table',
  strip: 'Strip check',
} as const;
type PartName = keyof typeof parts;

export function RecordPage({ part }: { part: string | undefined }) {
  const { desk, job, record } = useDesk();
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'readings';
  const { needed, known, undescribed } = progressOf(record.notes);
  return (
    <>
      <div className="task-head">
        <h2 className="unseen">Record</h2>
        <nav aria-label="Parts of Record" className="part-bar">
          {(Object.keys(parts) as PartName[]).map((one) => (
            <a
              key={one}
              href={hashOf({
                place: 'job',
                job: desk.id,
                task: 'record',
                ...(one === 'readings' ? {} : { part: one }),
              })}
              aria-current={one === name ? 'page' : undefined}
            >
              {parts[one]}
            </a>
          ))}
        </nav>
        {job.piano !== undefined && (
          <p className="faint" data-progress>
            {needed === 0
              ? 'Nothing can be counted until the stringing is described.'
              : `${known} of ${needed} needed values are there.`}
            {undescribed > 0 && needed > 0
              ? ` How ${undescribed} notes are strung is not described yet.`
              : ''}
          </p>
        )}
      </div>
      <SealNote />
      <Part name={name} />
    </>
  );
}

function Part({ name }: { name: PartName }) {
  const { desk, job } = useDesk();
  if (job.piano === undefined && name !== 'table') {
    return (
      <p>
        The piano is not described yet: its compass decides which notes there are.{' '}
        <a href={hashOf({ place: 'job', job: desk.id, task: 'appraise' })}>Describe it in Appraise.</a>
      </p>
    );
  }
  switch (name) {
    case 'readings':
      return <GridPlace />;
    case 'sections':
      return <SectionsPlace />;
    case 'seen':
      return <SeenPlace />;
    case 'table':
      return <BringInPlace />;
    case 'strip':
      return <StripPlace />;
  }
}

function SealNote() {
  const { job } = useDesk();
  if (job.seal === undefined) return null;
  return (
    <p className="notice">
      <strong>Sealed</strong> on{' '}
      {new Date(job.seal.at).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })} by {job.seal.by}
      , over {job.seal.entries} entries.{' '}
      {job.amendments.length === 0
        ? 'Every later change is an amendment and needs a reason.'
        : `${job.amendments.length} ${job.amendments.length === 1 ? 'amendment' : 'amendments'} since.`}
    </p>
  );
}
