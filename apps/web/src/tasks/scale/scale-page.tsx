import { message } from '@becket/core';
import { lazy, Suspense } from 'react';
import { PartBar } from '../../desk/part-bar.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { AsFoundPlace } from './as-found-place.tsx';
import './scale.css';
import './proposals.css';

const ComparePlace = lazy(() =>
  import('./compare-place.tsx').then(({ ComparePlace: place }) => ({ default: place })),
);
const HearPlace = lazy(() => import('./hear-place.tsx').then(({ HearPlace: place }) => ({ default: place })));
const LoopsPlace = lazy(() =>
  import('./loops-place.tsx').then(({ LoopsPlace: place }) => ({ default: place })),
);
const ProposePlace = lazy(() =>
  import('./propose-place.tsx').then(({ ProposePlace: place }) => ({ default: place })),
);

/** The parts of Scale: name in the address, words on the screen; in the order of the work. */
const parts = {
  'as-found': message('As found'),
  propose: message('Propose'),
  compare: message('Compare'),
  hear: message('Hear'),
  loops: message('Loops and cuts'),
} as const;
type PartName = keyof typeof parts;

/** Whether to keep the scale that was found, and what to string instead: looked at, weighed, compared and heard. */
export function ScalePage({ part }: { part: string | undefined }) {
  const { say } = useLanguage();
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'as-found';
  return (
    <>
      <PartBar task="scale" parts={parts} shown={name} />
      <Suspense fallback={<p>{say('Opening …')}</p>}>
        <Part name={name} />
      </Suspense>
    </>
  );
}

function Part({ name }: { name: PartName }) {
  switch (name) {
    case 'as-found':
      return <AsFoundPlace />;
    case 'propose':
      return <ProposePlace />;
    case 'compare':
      return <ComparePlace />;
    case 'hear':
      return <HearPlace />;
    case 'loops':
      return <LoopsPlace />;
  }
}
