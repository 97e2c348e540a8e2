import { message } from '@becket/core';
import { lazy } from 'react';
import { PartFrame } from '../../desk/part-frame.tsx';

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
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'pass';
  return (
    <PartFrame task="settle" parts={parts} shown={name}>
      <Part name={name} />
    </PartFrame>
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
