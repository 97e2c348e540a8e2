import { foldJob } from '@becket/journal';
import { type LearnedHours, learnedHours, recordHours, startingLabourSteps } from '@becket/tasks';
import { useEffect, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useDevice } from '../../desk/use-device.ts';
import { todayHere } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { hoursText, minutesOf } from './estimate-state.ts';

/** What steps took in the jobs on this device; empty until they are read. */
export function useLearnedHours(): readonly LearnedHours[] {
  const { store } = useDevice();
  const { job } = useDesk();
  const [learned, setLearned] = useState<readonly LearnedHours[]>([]);
  const noted = job.hoursWorked.length;
  // biome-ignore lint/correctness/useExhaustiveDependencies: read again once further hours are noted here
  useEffect(() => {
    let isCurrent = true;
    void (async () => {
      const jobs = [];
      for (const { job: id } of await store.jobs()) {
        const { entries } = await store.entries(id);
        if (entries.length > 0) jobs.push(foldJob(entries));
      }
      if (isCurrent) setLearned(learnedHours(jobs));
    })();
    return () => {
      isCurrent = false;
    };
  }, [store, noted]);
  return learned;
}

/** Time that steps really took: the next estimate learns from it. */
export function HoursWorked({ learned }: { learned: readonly LearnedHours[] }) {
  const language = useLanguage();
  const { fixed, say } = language;
  const { desk, job } = useDesk();
  const starting = startingLabourSteps(language);
  const steps = [
    ...starting.map(({ id, what }) => ({ id, what })),
    ...(job.estimates.at(-1)?.lines ?? [])
      .filter(({ group, id }) => group === 'labour' && !starting.some((step) => step.id === id))
      .map(({ id, what }) => ({ id, what })),
  ];
  const [step, setStep] = useState(steps[0]!.id);
  const [hours, setHours] = useState('');
  const [isFinished, setFinished] = useState(true);
  const [problem, setProblem] = useState<string>();

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const minutes = minutesOf(hours, language);
      await desk.runHere((context, id) =>
        recordHours(context, id, { labourStep: step, minutes, isFinished, on: todayHere() }),
      );
      setHours('');
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <section aria-labelledby="hours">
      <h3 id="hours">{say('Hours worked')}</h3>
      <p className="faint">
        {say(
          'What steps really take here is what the next estimate starts from: the middle of the finished jobs on this device.',
        )}
      </p>
      <form className="row-form" onSubmit={once(keep)} aria-label={say('Hours worked')}>
        <SelectField
          label={say('Step')}
          value={step}
          onChange={setStep}
          options={steps.map(({ id, what }) => ({ value: id, words: what }))}
        />
        <TextField
          label={say('Hours')}
          hint={say('such as 2.5 or 2:30')}
          isNumber
          value={hours}
          onChange={setHours}
        />
        <label className="tick">
          <input
            type="checkbox"
            checked={isFinished}
            onChange={(event) => setFinished(event.target.checked)}
          />
          {say('this step is finished')}
        </label>
        <button type="submit" className="button">
          {say('Keep the hours')}
        </button>
      </form>
      <Problem says={problem} />
      {job.hoursWorked.length > 0 && (
        <ul aria-label={say('Hours kept for this job')}>
          {job.hoursWorked.map(({ entry, labourStep, minutes, isFinished: done, by }) => (
            <li key={entry}>
              {say('{step}: {hours} hours, {by}{is, select, finished {, finished} other {}}', {
                step: steps.find(({ id }) => id === labourStep)?.what ?? labourStep,
                hours: hoursText(minutes, language),
                by,
                is: done ? 'finished' : 'open',
              })}
            </li>
          ))}
        </ul>
      )}
      {learned.length > 0 && (
        <ul aria-label={say('Learned from finished jobs')}>
          {learned.map(({ step: id, per, median_minutes, low_minutes, high_minutes, jobs }) => (
            <li key={id}>
              {say(
                '{step}: {median} minutes a {per, select, job {job} string {string} other {note}} ({low} to {high}; {jobs, plural, one {# job} other {# jobs}})',
                {
                  step: steps.find((one) => one.id === id)?.what ?? id,
                  median: fixed(median_minutes, 1),
                  per,
                  low: fixed(low_minutes, 1),
                  high: fixed(high_minutes, 1),
                  jobs,
                },
              )}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
