import { type Message, message } from '@becket/core';
import { lazy, Suspense } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { digestOfPart } from '../../photos/photo-place.ts';
import { progressOf } from './grid.ts';
import { GridPlace } from './grid-place.tsx';
import './record.css';

const SizesPlace = lazy(() =>
  import('./sizes-place.tsx').then(({ SizesPlace: place }) => ({ default: place })),
);
const StringsPlace = lazy(() =>
  import('./strings-place.tsx').then(({ StringsPlace: place }) => ({ default: place })),
);
const InstrumentsPlace = lazy(() =>
  import('./instruments-place.tsx').then(({ InstrumentsPlace: place }) => ({ default: place })),
);
const LengthsPlace = lazy(() =>
  import('./lengths-place.tsx').then(({ LengthsPlace: place }) => ({ default: place })),
);
const LoopsPlace = lazy(() =>
  import('./loops-place.tsx').then(({ LoopsPlace: place }) => ({ default: place })),
);
const AfterStripPlace = lazy(() =>
  import('./after-strip-place.tsx').then(({ AfterStripPlace: place }) => ({ default: place })),
);
const SectionsPlace = lazy(() =>
  import('./sections-place.tsx').then(({ SectionsPlace: place }) => ({ default: place })),
);
const SeenPlace = lazy(() => import('./seen-place.tsx').then(({ SeenPlace: place }) => ({ default: place })));
const PhotosPlace = lazy(() =>
  import('../../photos/photos-place.tsx').then(({ PhotosPlace: place }) => ({ default: place })),
);
const BringInPlace = lazy(() =>
  import('./bring-in-place.tsx').then(({ BringInPlace: place }) => ({ default: place })),
);
const StripPlace = lazy(() =>
  import('./strip-place.tsx').then(({ StripPlace: place }) => ({ default: place })),
);

const RecordPapersPlace = lazy(() =>
  import('./record-papers-place.tsx').then(({ RecordPapersPlace: place }) => ({ default: place })),
);

/** The parts of Record: name in the address, words on the screen. */
const parts = {
  readings: message('Readings'),
  strings: message('By string'),
  instruments: message('Instruments'),
  sections: message('Sections'),
  sizes: message('Sizes'),
  lengths: message('Lengths'),
  loops: message('Loops'),
  seen: message('Seen'),
  photos: message('Photos'),
  table: message('Table'),
  strip: message('Strip check'),
  papers: message('Papers'),
  'after-strip': message('After the strip'),
} as const;
type PartName = keyof typeof parts;
/** What a part is called where its word alone says too little. */
const spoken: Partial<Record<PartName, Message>> = { table: message('Bring in a table') };

/** Found after the strip has its place once the record is sealed. */
const partsIn = (isSealed: boolean): PartName[] =>
  (Object.keys(parts) as PartName[]).filter((one) => isSealed || one !== 'after-strip');

export function RecordPage({ part }: { part: string | undefined }) {
  const { say, sayNodes } = useLanguage();
  const { desk, job, record } = useDesk();
  const shownPhoto = digestOfPart(part);
  const wanted = shownPhoto === undefined ? part : 'photos';
  const name: PartName = wanted !== undefined && wanted in parts ? (wanted as PartName) : 'readings';
  const { needed, known, undescribed } = progressOf(record.notes);
  return (
    <>
      <div className="task-head">
        <h2 className="unseen">{say('Record')}</h2>
        <nav aria-label={say('Parts of {task}', { task: say('Record') })} className="part-bar">
          {partsIn(job.seal !== undefined).map((one) => (
            <a
              key={one}
              href={hashOf({
                place: 'job',
                job: desk.id,
                task: 'record',
                ...(one === 'readings' ? {} : { part: one }),
              })}
              aria-label={spoken[one] && say(spoken[one])}
              aria-current={one === name ? 'page' : undefined}
            >
              {say(parts[one])}
            </a>
          ))}
        </nav>
        {job.piano !== undefined && (
          <p className="faint" data-progress>
            {needed === 0
              ? sayNodes('Nothing can be counted until the stringing is described. {link}', {
                  link: (
                    <a href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'sections' })}>
                      {say('Describe it under Sections.')}
                    </a>
                  ),
                })
              : say('{known} of {needed} needed values are there.', { known, needed })}
            {undescribed > 0 && needed > 0
              ? ` ${say('How {undescribed, plural, one {# note is} other {# notes are}} strung is not described yet.', { undescribed })}`
              : ''}
          </p>
        )}
      </div>
      <SealNote />
      <Suspense fallback={<p>{say('Opening …')}</p>}>
        <Part name={name} shownPhoto={shownPhoto} />
      </Suspense>
    </>
  );
}

function Part({ name, shownPhoto }: { name: PartName; shownPhoto: string | undefined }) {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  if (job.piano === undefined && name !== 'table' && name !== 'photos') {
    return (
      <p>
        {say('The piano is not described yet: its compass decides which notes there are.')}{' '}
        <a href={hashOf({ place: 'job', job: desk.id, task: 'appraise' })}>
          {say('Describe it in Appraise.')}
        </a>
      </p>
    );
  }
  switch (name) {
    case 'readings':
      return <GridPlace />;
    case 'sections':
      return <SectionsPlace />;
    case 'sizes':
      return <SizesPlace />;
    case 'strings':
      return <StringsPlace />;
    case 'instruments':
      return <InstrumentsPlace />;
    case 'lengths':
      return <LengthsPlace />;
    case 'loops':
      return <LoopsPlace />;
    case 'seen':
      return <SeenPlace />;
    case 'after-strip':
      return <AfterStripPlace />;
    case 'photos':
      return <PhotosPlace shown={shownPhoto} />;
    case 'table':
      return <BringInPlace />;
    case 'strip':
      return <StripPlace />;
    case 'papers':
      return <RecordPapersPlace />;
  }
}

function SealNote() {
  const { localMoment, say, sayNodes } = useLanguage();
  const { job } = useDesk();
  if (job.seal === undefined) return null;
  const unaware = job.amendments.filter(({ reason }) => reason === undefined);
  return (
    <p className="notice">
      {sayNodes('{sealed} on {moment} by {by}, over {entries} entries.', {
        sealed: <strong>{say('Sealed')}</strong>,
        moment: localMoment(job.seal.at),
        by: job.seal.by,
        entries: job.seal.entries,
      })}{' '}
      {job.amendments.length === 0
        ? say('Every later change is an amendment and needs a reason.')
        : say('{count, plural, one {# amendment} other {# amendments}} since.', {
            count: job.amendments.length,
          })}
      {unaware.length > 0 &&
        ` ${say(
          '{count} of them without a reason, from a device that did not know of the seal ({names}). The as-found record under Papers lists them.',
          {
            count: unaware.length,
            names: [...new Set(unaware.map(({ by }) => by))].join(', '),
          },
        )}`}
    </p>
  );
}
