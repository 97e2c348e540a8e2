import { pinChoice } from '@becket/tasks';
import { useDeferredValue, useMemo } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { PinCounts } from './pin-counts.tsx';
import { PinLimits } from './pin-limits.tsx';
import { PinRule } from './pin-rule.tsx';
import { PinsAsFound } from './pins-as-found.tsx';
import { PinsDriven } from './pins-driven.tsx';
import { SinglePins } from './single-pins.tsx';
import { TestPins } from './test-pins.tsx';

/** Which pins go in: as found, the rule, the limits, test pins, and what single pins need. */
export function PinsPlace() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const settled = useDeferredValue(job);
  const choice = useMemo(() => pinChoice(settled, { language }), [settled, language]);
  return (
    <section aria-labelledby="pins">
      <h2 id="pins">{say('Tuning pins')}</h2>
      <ul className="notice cautions">
        {choice.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <PinsAsFound choice={choice} unit={unit} />
      <PinRule choice={choice} />
      <PinLimits choice={choice} unit={unit} />
      <TestPins choice={choice} unit={unit} />
      <SinglePins choice={choice} unit={unit} />
      <PinCounts choice={choice} unit={unit} />
      <PinsDriven choice={choice} unit={unit} />
    </section>
  );
}
