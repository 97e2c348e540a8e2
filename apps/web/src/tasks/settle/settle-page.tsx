import { message } from '@becket/core';
import { lazy, Suspense } from 'react';
import { PartBar } from '../../desk/part-bar.tsx';
import { useLanguage } from '../../parts/language.tsx';

const PassPlace = lazy(() => import('./pass-place.tsx').then(({ PassPlace: place }) => ({ default: place })));
const CoursePlace = lazy(() =>
  import('./course-place.tsx').then(({ CoursePlace: place }) => ({ default: place })),
);
const FollowUpsPlace = lazy(() =>
  import('./follow-ups-place.tsx').then(({ FollowUpsPlace: place }) => ({ default: place })),
);
const LogPlace = lazy(() => import('./log-place.tsx').then(({ LogPlace: place }) => ({ default: place })));

/** The parts of Settle: name in the address, words on the screen. */
const parts = {
  pass: message('The pass'),
  course: message('How it went'),
  'follow-ups': message('Follow-ups'),
  paper: message('Settling log'),
} as const;
type PartName = keyof typeof parts;

/** Bringing the piano to pitch and keeping it there: passes, what they show, and the days to come. */
export function SettlePage({ part }: { part: string | undefined }) {
  const { say } = useLanguage();
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'pass';
  return (
    <>
      <div className="task-head">
        <h2 className="unseen">{say('Settle')}</h2>
        <PartBar task="settle" parts={parts} shown={name} />
      </div>
      <Suspense fallback={<p>{say('Opening …')}</p>}>
        <Part name={name} />
      </Suspense>
    </>
  );
}

function Part({ name }: { name: PartName }) {
  switch (name) {
    case 'pass':
      return <PassPlace />;
    case 'course':
      return <CoursePlace />;
    case 'follow-ups':
      return <FollowUpsPlace />;
    case 'paper':
      return <LogPlace />;
  }
}
