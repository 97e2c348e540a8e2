import { chosenScaleOf, type WhichScale } from '@becket/journal';
import { comparedScales } from '@becket/tasks';
import { useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { Problem } from '../../parts/problem.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { Papers } from '../../piano/papers.tsx';
import {
  comparisonCharts,
  pairOf,
  scaleChoices,
  standingPair,
  summarySentences,
  tableOfPair,
} from './compare-state.ts';
import { ComparisonChart } from './comparison-chart.tsx';
import { Beats, Changes, Loads, Wires } from './comparison-tables.tsx';
import { NoStringYet } from './no-string-yet.tsx';
import { ScaleCost } from './scale-cost.tsx';
import { useAnalysed } from './use-analysed.ts';

/** Two scales of this piano side by side: what changes, what it does, and what wire it takes. */
export function ComparePlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const [selected, select] = useSelectedKey();
  const pair = pairOf(desk.id);
  const { before: first, after: second, beside: third } = standingPair(job, useObservable(pair), language);
  const table = tableOfPair(job, { before: first, after: second });
  const before = useAnalysed(job, first, table);
  const after = useAnalysed(job, second, table);
  const beside = useAnalysed(job, third ?? second, table);
  const comparison = useMemo(() => comparedScales(job, before, after), [job, before, after]);
  const charts = useMemo(
    () => comparisonCharts(before, after, unit, third === undefined ? undefined : beside, language),
    [before, after, unit, third, beside, language],
  );
  const choices = scaleChoices(job, language);
  const { piano } = job;

  if (piano === undefined || before.notes.length === 0) return <NoStringYet title={say('Compare')} />;
  if (choices.length === 1) {
    return (
      <>
        <h2>{say('Compare')}</h2>
        <p>
          {sayNodes('There is only the scale as it was found. {link}', {
            link: (
              <a href={hashOf({ place: 'job', job: desk.id, task: 'scale', part: 'propose' })}>
                {say('Make a proposal first.')}
              </a>
            ),
          })}
        </p>
      </>
    );
  }
  return (
    <>
      <h2>{say('Compare')}</h2>
      <ChosenLine />
      <div className="fields">
        <SelectField<WhichScale>
          label={say('Before')}
          value={first}
          onChange={(value) => pair.update({ before: value })}
          options={choices}
        />
        <SelectField<WhichScale>
          label={say('After')}
          value={second}
          onChange={(value) => pair.update({ after: value })}
          options={choices}
        />
        {choices.length > 2 && (
          <SelectField
            label={say('Beside them, in the charts')}
            value={third ?? 'none'}
            onChange={(value) => pair.update({ beside: value === 'none' ? undefined : value })}
            options={[{ value: 'none', words: say('none') }, ...choices]}
          />
        )}
      </div>
      <ul className="summary">
        {summarySentences(comparison, before, after, unit, language).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <div className="charts">
        {charts.map((chart) => (
          <ComparisonChart
            key={chart.name}
            {...chart}
            firstKey={piano.firstKey}
            lastKey={piano.lastKey}
            sections={job.sections}
            selected={selected}
            onSelect={select}
          />
        ))}
      </div>
      <Loads comparison={comparison} unit={unit} />
      <Beats comparison={comparison} />
      <Changes comparison={comparison} unit={unit} onSelect={select} />
      {second !== 'as strung' && (
        <ScaleCost
          name={after.name}
          notes={job.proposals.find(({ entry }) => entry === second)?.notes}
          comparison={comparison}
        />
      )}
      <Wires comparison={comparison} unit={unit} />
      <Papers offers={[{ paper: 'scale-comparison', words: say('Scale comparison') }]} level={3} />
      <p className="faint">
        {say(
          'The paper compares the scale as found with the one that is chosen, or with the latest proposal.',
        )}
      </p>
    </>
  );
}

/** Which scale is to be strung, and whether it still is what was chosen. */
export function ChosenLine() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { job } = useDesk();
  const chosen = chosenScaleOf(job, language);
  if (chosen === undefined) return <p className="faint">{say('No scale is chosen for stringing yet.')}</p>;
  if (chosen.changedSince !== undefined) return <Problem says={chosen.changedSince} />;
  return (
    <p>
      {sayNodes('Chosen for stringing: {strong}, because “{reason}”.', {
        strong: <strong>{chosen.name}</strong>,
        reason: chosen.reason,
      })}
    </p>
  );
}
