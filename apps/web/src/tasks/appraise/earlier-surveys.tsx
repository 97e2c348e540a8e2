import { compareSurveys, copyEarlierSurvey, type ListedJob, listJobs } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useDevice } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { SelectField } from '../../parts/select-field.tsx';

/** What became of what earlier surveys of this piano noted: which repairs hold, and what grew. */
export function EarlierSurveys() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const device = useDevice();
  const [others, setOthers] = useState<readonly ListedJob[]>([]);
  const [chosen, setChosen] = useState('');
  const [said, setSaid] = useState('');
  const survey = useMemo(() => compareSurveys(job, { language }), [job, language]);

  useEffect(() => {
    let isCurrent = true;
    void listJobs(device.context()).then((jobs) => {
      if (isCurrent) setOthers(jobs.filter((one) => one.job !== desk.id));
    });
    return () => {
      isCurrent = false;
    };
  }, [device, desk.id]);

  async function copy(): Promise<void> {
    const done = await desk.run((context, id) => copyEarlierSurvey(context, id, chosen));
    if (done === undefined) return;
    const { copied, already, notOnThisPiano } = done;
    setSaid(
      [
        say('{copied, plural, one {# line was} other {# lines were}} copied.', { copied }),
        ...(already > 0 ? [say('{already} stood here already.', { already })] : []),
        ...(notOnThisPiano.length > 0
          ? [say('Not on this piano as described: {things}.', { things: notOnThisPiano.join('; ') })]
          : []),
      ].join(' '),
    );
  }

  return (
    <details className="earlier" open={survey.days.length > 0}>
      <summary>{say('Earlier surveys of this piano')}</summary>
      {others.length === 0 ? (
        <p className="faint">{say('No other job is on this device.')}</p>
      ) : (
        <div className="row-form">
          <SelectField
            label={say('From the job')}
            value={chosen}
            onChange={setChosen}
            options={[
              { value: '', words: say('choose one') },
              ...others.map(({ job: id, title }) => ({ value: id, words: title })),
            ]}
          />
          <button type="button" className="button" disabled={chosen === ''} onClick={once(copy)}>
            {say('Copy its survey here')}
          </button>
        </div>
      )}
      <p role="status">{said}</p>
      {survey.days.length > 0 && (
        <ul aria-label={say('Then and now')}>
          {survey.lines
            .filter(({ earlier }) => earlier !== undefined)
            .map(({ thing, sentence, change, earlier }) => (
              <li
                key={earlier!.entry + thing}
                className={change === 'grew' || change === 'graver' ? 'warn' : undefined}
              >
                {sentence}
              </li>
            ))}
        </ul>
      )}
    </details>
  );
}
