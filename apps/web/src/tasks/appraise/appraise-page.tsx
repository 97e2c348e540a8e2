import { message } from '@becket/core';
import { lazy } from 'react';
import { PartFrame } from '../../desk/part-frame.tsx';
import { PianoPlace } from './piano-place.tsx';
import './appraise.css';

const SurveyPlace = lazy(() =>
  import('./survey-place.tsx').then(({ SurveyPlace: place }) => ({ default: place })),
);
const AirPlace = lazy(() => import('./air-place.tsx').then(({ AirPlace: place }) => ({ default: place })));
const TorquePlace = lazy(() =>
  import('./torque-place.tsx').then(({ TorquePlace: place }) => ({ default: place })),
);
const PinsPlace = lazy(() => import('./pins-place.tsx').then(({ PinsPlace: place }) => ({ default: place })));
const DecisionPlace = lazy(() =>
  import('./decision-place.tsx').then(({ DecisionPlace: place }) => ({ default: place })),
);
const EstimatePlace = lazy(() =>
  import('./estimate-place.tsx').then(({ EstimatePlace: place }) => ({ default: place })),
);

/** The parts of Appraise: name in the address, words on the screen; in the order of a visit. */
const parts = {
  piano: message('The piano'),
  survey: message('Survey'),
  air: message('Pitch and air'),
  torque: message('Pin torque'),
  pins: message('Tuning pins'),
  decision: message('Decision'),
  estimate: message('Estimate'),
} as const;
type PartName = keyof typeof parts;

/** Should this piano be restrung, on which pins, and for how much: the visit and the decision after it. */
export function AppraisePage({ part }: { part: string | undefined }) {
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'piano';
  return (
    <PartFrame task="appraise" parts={parts} shown={name}>
      <Part name={name} />
    </PartFrame>
  );
}

function Part({ name }: { name: PartName }) {
  switch (name) {
    case 'piano':
      return <PianoPlace />;
    case 'survey':
      return <SurveyPlace />;
    case 'air':
      return <AirPlace />;
    case 'torque':
      return <TorquePlace />;
    case 'pins':
      return <PinsPlace />;
    case 'decision':
      return <DecisionPlace />;
    case 'estimate':
      return <EstimatePlace />;
  }
}
